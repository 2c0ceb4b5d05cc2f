using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Openings;

/// <summary>The part of a region's rim on one face, what is taken out on its left.</summary>
/// <param name="Face">Index of the face.</param>
/// <param name="Points">Polyline in the face's chart; where it enters and leaves the face it begins and ends on the line it crosses. Of a rim that stays inside, the ring, first point not repeated.</param>
/// <param name="Enter">Where it enters; null inside one face.</param>
/// <param name="Leave">Where it leaves; null inside one face.</param>
public sealed record RimStretch(int Face, ImmutableArray<Point2> Points, LinePoint? Enter, LinePoint? Leave)
{
    /// <summary>Whether the rim lies in this face all round.</summary>
    public bool IsRing => Enter is null;

    /// <summary>Its length, millimetres.</summary>
    public double Length => IsRing ? Rings.Perimeter(Points) : Points.Skip(1).Select((point, i) => Point2.Distance(Points[i], point)).Sum();

    /// <summary>The same line the other way.</summary>
    internal RimStretch Reversed => new(Face, [.. Points.Reverse()], Leave, Enter);
}
