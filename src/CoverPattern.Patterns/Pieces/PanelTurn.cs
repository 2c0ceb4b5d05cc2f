using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Turns a panel so that its warp runs along +x and up the cover is +y.</summary>
internal static class PanelTurn
{
    // A panel whose main face rises less steeply than this (sine) from its long side lies along the meridian: its upper end comes to +x.
    private const double LeastRise = 0.1;

    /// <summary>The turn from the panel's plane.</summary>
    /// <remarks>
    /// A single facet, with or without skirt, keeps its ring edge on the warp. Panels of several lie with the long side of the
    /// narrowest box round them along it; of boxes equally narrow the one nearest to the main face's own x is taken, so that equal panels turn alike.
    /// </remarks>
    internal static RigidMap Find(Shell shell, Subdivision subdivision, Panel panel)
    {
        var faces = panel.Patches.Select(patch => shell.Faces[subdivision.Patches[patch].Face]).ToArray();
        if (faces[0].Kind == FaceKind.Facet && faces.Count(face => face.Kind == FaceKind.Facet) == 1)
        {
            return RigidMap.FromDegrees(IsUpsideDown(shell, faces[0]) ? 180 : 0, default, mirrored: false);
        }

        var angle = -LeastBox.Round(panel.Outline.Select(edge => edge.From)).Angle;
        var turn = new RigidMap(Math.Cos(angle), Math.Sin(angle), default, Mirrored: false);
        var up = turn.Apply(Up(shell, faces[0]));
        var isUpright = Math.Abs(up.Y) > LeastRise * up.Length ? up.Y > 0 : up.X > 0;
        return isUpright ? turn : new RigidMap(-turn.Cosine, -turn.Sine, default, Mirrored: false);
    }

    /// <summary>Charts begin with the ring edge on +x; where the face hangs below that edge, up the cover is down the chart.</summary>
    private static bool IsUpsideDown(Shell shell, ShellFace face)
    {
        var nodes = face.Nodes.Select(node => shell.Nodes[node].Position.Z).ToArray();
        return nodes.Average() < (nodes[0] + nodes[1]) / 2;
    }

    /// <summary>The way up in a face's chart.</summary>
    private static Point2 Up(Shell shell, ShellFace face)
    {
        Point3 At(int corner) => shell.Nodes[face.Nodes[corner]].Position;
        var along = (At(1) - At(0)).Unit();
        var across = Point3.Cross(Point3.Cross(along, At(face.Nodes.Length - 1) - At(0)).Unit(), along);
        return new Point2(along.Z, across.Z);
    }
}
