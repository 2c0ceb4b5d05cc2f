using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Shells;

/// <summary>Height above the finished lower edge on a face: linear, for the face is plane.</summary>
/// <param name="AtOrigin">Height at the chart's origin, millimetres.</param>
/// <param name="Slope">By how much it grows along the chart's x and y, as ratios.</param>
internal readonly record struct FaceHeight(double AtOrigin, Point2 Slope)
{
    /// <summary>The height on a face, from three of its corners.</summary>
    internal static FaceHeight Of(Shell shell, ShellFace face)
    {
        double At(int corner) => shell.Nodes[face.Nodes[corner]].AboveHem;
        var (u, v) = (face.Chart[1] - face.Chart[0], face.Chart[^1] - face.Chart[0]);
        var (du, dv) = (At(1) - At(0), At(face.Nodes.Length - 1) - At(0));
        var area = Point2.Cross(u, v);
        var slope = new Point2(((du * v.Y) - (dv * u.Y)) / area, ((dv * u.X) - (du * v.X)) / area);
        return new FaceHeight(At(0) - Point2.Dot(slope, face.Chart[0]), slope);
    }

    /// <summary>The height at a place in the chart, millimetres.</summary>
    internal double At(Point2 point) => AtOrigin + Point2.Dot(Slope, point);
}
