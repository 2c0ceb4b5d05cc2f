using System.Collections.Generic;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What an opening leaves of a true face, as it has to be cut.</summary>
/// <param name="Face">Its corners on the face's border: those of the face that are left, and where the rim crosses it.</param>
/// <param name="Area">Cloth in it, square millimetres.</param>
/// <param name="Plane">The whole face in the plane of the opening, corner by corner; empty where the opening does not reach it.</param>
/// <param name="Whole">The whole face.</param>
internal sealed record TrueCell(TrueFace Face, double Area, IReadOnlyList<FlatPoint> Plane, TrueFace Whole)
{
    /// <summary>Sine of the flattest angle under which the rim crosses the face's border; 1 where it does not.</summary>
    internal double Steepness { get; init; } = 1;

    /// <summary>A point of the face in the plane of the opening.</summary>
    internal FlatPoint ToPlane(SpacePoint point)
    {
        // Two sides of the face span it: what the point is of them in space, it is of them in the plane.
        var (u, v, step) = (Whole.Corners[1] - Whole.Corners[0], Whole.Corners[^1] - Whole.Corners[0], point - Whole.Corners[0]);
        var (uu, uv, vv) = (u.Dot(u), u.Dot(v), v.Dot(v));
        var determinant = (uu * vv) - (uv * uv);
        var a = ((vv * step.Dot(u)) - (uv * step.Dot(v))) / determinant;
        var b = ((uu * step.Dot(v)) - (uv * step.Dot(u))) / determinant;
        return Plane[0] + (a * (Plane[1] - Plane[0])) + (b * (Plane[^1] - Plane[0]));
    }
}
