using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Shells;

/// <summary>Which way a face of a shell looks.</summary>
internal static class FaceNormal
{
    /// <summary>Outward, square to the face, length 1.</summary>
    internal static Point3 Of(Shell shell, ShellFace face)
    {
        Point3 At(int corner) => shell.Nodes[face.Nodes[corner]].Position;
        return Point3.Cross(At(1) - At(0), At(2) - At(0)).Unit();
    }
}
