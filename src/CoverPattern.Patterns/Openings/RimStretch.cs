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
    /// <summary>Indexes of points, rising, at which the rim's join changes: an arc ends there though no seam is crossed.</summary>
    public ImmutableArray<int> Breaks { get; init; } = [];

    /// <summary>Whether the rim lies in this face all round.</summary>
    public bool IsRing => Enter is null;

    /// <summary>Its length, millimetres.</summary>
    public double Length => IsRing ? Rings.Perimeter(Points) : Points.Skip(1).Select((point, i) => Point2.Distance(Points[i], point)).Sum();

    /// <summary>Which part between breaks a step belongs to, 0 the first; what begins with a break at the very start is the first too.</summary>
    /// <param name="step">Index of the point at which the step begins.</param>
    internal int PartOf(int step) => Breaks.Count(at => at > 0 && at <= step);

    /// <summary>Length of the steps of one part, millimetres.</summary>
    internal double LengthOf(int part) => Breaks.IsEmpty ? Length : Points.Skip(1).Select((point, i) => PartOf(i) == part ? Point2.Distance(Points[i], point) : 0).Sum();

    /// <summary>The same line the other way; it has no breaks yet.</summary>
    internal RimStretch Reversed => new(Face, [.. Points.Reverse()], Leave, Enter);
}
