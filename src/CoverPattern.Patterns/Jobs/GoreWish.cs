using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Jobs;

/// <summary>A roof of equal gores round an upright axis; its plan is a regular polygon.</summary>
/// <param name="Sides">Gores, 3 to 64.</param>
/// <param name="Meridian">The line of a seam.</param>
/// <param name="Chords">Straight parts of that line between top and eaves.</param>
/// <param name="Radius">From the axis to an eaves hub.</param>
/// <param name="Height">Of the top over the eaves.</param>
public sealed record GoreWish(int Sides, GoreMeridian Meridian, int Chords, Measure Radius, Measure Height)
{
    /// <summary>Radius of the ring left open at the top, as given; null for a closed top.</summary>
    public Measure? Crown { get; init; }

    /// <summary>Radius and height over the eaves of each ring from the top down, where the meridian is given by points; a first radius of 0 is a closed top.</summary>
    public ImmutableArray<Point2> Points { get; init; } = [];
}
