using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What openings leave of a true face, as it has to be cut.</summary>
/// <param name="Face">Its corners on the face's border: those of the face that are left, and where rims cross it.</param>
/// <param name="Area">Cloth in it, square millimetres.</param>
/// <param name="Seen">The whole face in the plane of each opening that may reach it.</param>
/// <param name="Whole">The whole face.</param>
internal sealed record TrueCell(TrueFace Face, double Area, IReadOnlyList<SeenFace> Seen, TrueFace Whole)
{
    /// <summary>Sine of the flattest angle under which a rim crosses the face's border; 1 where none does.</summary>
    internal double Steepness { get; init; } = 1;

    /// <summary>Distance of a point of the face from the outline of the opening that an arc belongs to; infinite where that is not seen from here.</summary>
    internal double OffOutline(SpacePoint point, string arc) =>
        Seen.Where(seen => seen.Order.Owns(arc)).Select(seen => Math.Abs(seen.Order.Beyond(seen.ToPlane(point)))).DefaultIfEmpty(double.PositiveInfinity).Min();
}

/// <summary>A true face in the plane of an opening.</summary>
/// <param name="Order">The opening.</param>
/// <param name="Plane">The face's corners there.</param>
/// <param name="Face">The face.</param>
internal sealed record SeenFace(OpeningOrder Order, IReadOnlyList<FlatPoint> Plane, TrueFace Face)
{
    /// <summary>Area in the plane over area on the cover.</summary>
    internal double Squeeze => FlatPoint.AreaOf(Plane) / Face.Area;

    /// <summary>A point of the face in the plane of the opening.</summary>
    internal FlatPoint ToPlane(SpacePoint point)
    {
        // Two sides of the face span it: what the point is of them in space, it is of them in the plane.
        var (u, v, step) = (Face.Corners[1] - Face.Corners[0], Face.Corners[^1] - Face.Corners[0], point - Face.Corners[0]);
        var (uu, uv, vv) = (u.Dot(u), u.Dot(v), v.Dot(v));
        var determinant = (uu * vv) - (uv * uv);
        var a = ((vv * step.Dot(u)) - (uv * step.Dot(v))) / determinant;
        var b = ((uu * step.Dot(v)) - (uv * step.Dot(u))) / determinant;
        return Plane[0] + (a * (Plane[1] - Plane[0])) + (b * (Plane[^1] - Plane[0]));
    }

    /// <summary>A point of the plane on the face.</summary>
    internal SpacePoint ToSpace(FlatPoint point)
    {
        var (u, v, step) = (Plane[1] - Plane[0], Plane[^1] - Plane[0], point - Plane[0]);
        var determinant = u.Cross(v);
        return Face.Corners[0] + (step.Cross(v) / determinant * (Face.Corners[1] - Face.Corners[0])) + (u.Cross(step) / determinant * (Face.Corners[^1] - Face.Corners[0]));
    }
}
