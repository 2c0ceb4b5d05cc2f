using System;
using System.Buffers.Binary;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;

namespace CoverPattern.Files.Tests.Surveys;

/// <summary>Frames of triangles as mesh files in millimetres.</summary>
internal static class Meshes
{
    internal static byte[] Stl(Frame frame, bool isBinary)
    {
        var triangles = frame.Facets.Select(facet => facet.Hubs.Select(hub => frame.Hubs[hub].Position).ToArray()).ToArray();
        if (!isBinary)
        {
            var text = triangles.Select(triangle => "facet normal 0 0 0\nouter loop\n" + string.Concat(triangle.Select(corner => "vertex " + Numbers(corner) + "\n")) + "endloop\nendfacet\n");
            return Encoding.UTF8.GetBytes("solid dome\n" + string.Concat(text) + "endsolid dome\n");
        }

        using var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream);
        writer.Write(new byte[80]);
        writer.Write(triangles.Length);
        foreach (var triangle in triangles)
        {
            writer.Write(new byte[12]);
            foreach (var number in triangle.SelectMany(corner => new[] { corner.X, corner.Y, corner.Z }))
            {
                writer.Write((float)number);
            }

            writer.Write((short)0);
        }

        return stream.ToArray();
    }

    /// <summary>Text, or binary with the high byte first; a colour a corner that readers must pass over.</summary>
    internal static byte[] Ply(Frame frame, bool isBinary)
    {
        var head = FormattableString.Invariant($"ply\nformat {(isBinary ? "binary_big_endian" : "ascii")} 1.0\ncomment a dome\nelement vertex {frame.Hubs.Length}\nproperty float x\nproperty float y\nproperty float z\nproperty uchar red\nelement face {frame.Facets.Length}\nproperty list uchar int vertex_indices\nend_header\n");
        if (!isBinary)
        {
            var corners = frame.Hubs.Select(hub => Numbers(hub.Position) + " 255\n");
            var faces = frame.Facets.Select(facet => "3 " + string.Join(' ', facet.Hubs) + "\n");
            return Encoding.UTF8.GetBytes(head + string.Concat(corners) + string.Concat(faces));
        }

        using var stream = new MemoryStream();
        stream.Write(Encoding.UTF8.GetBytes(head));
        var four = new byte[4];
        foreach (var hub in frame.Hubs)
        {
            foreach (var number in new[] { hub.Position.X, hub.Position.Y, hub.Position.Z })
            {
                BinaryPrimitives.WriteSingleBigEndian(four, (float)number);
                stream.Write(four);
            }

            stream.WriteByte(255);
        }

        foreach (var facet in frame.Facets)
        {
            stream.WriteByte(3);
            foreach (var corner in facet.Hubs)
            {
                BinaryPrimitives.WriteInt32BigEndian(four, corner);
                stream.Write(four);
            }
        }

        return stream.ToArray();
    }

    private static string Numbers(Point3 point) => string.Create(CultureInfo.InvariantCulture, $"{point.X:R} {point.Y:R} {point.Z:R}");
}
