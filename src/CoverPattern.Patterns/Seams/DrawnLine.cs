using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Openings;

namespace CoverPattern.Patterns.Seams;

/// <summary>A line that is drawn on a patch.</summary>
/// <param name="Patch">Index of the patch.</param>
/// <param name="Path">Its corners in the face's chart.</param>
/// <param name="Purpose">What it shows, for people.</param>
public sealed record DrawnLine(int Patch, ImmutableArray<Point2> Path, string Purpose)
{
    /// <summary>Label of the opening it belongs to; empty where it belongs to a region, see <see cref="RegionMark"/>.</summary>
    public string Opening { get; init; } = string.Empty;

    /// <summary>A line laid face by face, where it lies on patches: from its first point well inside one to its last there.</summary>
    /// <param name="patches">The patches.</param>
    /// <param name="mark">The line.</param>
    internal static IEnumerable<DrawnLine> On(ImmutableArray<Patch> patches, RegionMark mark) => patches.SelectMany((patch, i) => mark.Line
        .Where(stretch => stretch.Face == patch.Face)
        .SelectMany(stretch => Parts(stretch.IsRing ? [.. stretch.Points, stretch.Points[0]] : stretch.Points, patch))
        .Select(path => new DrawnLine(i, path, mark.Purpose)));

    private static IEnumerable<ImmutableArray<Point2>> Parts(ImmutableArray<Point2> line, Patch patch)
    {
        var border = Rings.ToSteps(patch.Corners);
        ImmutableArray<ImmutableArray<GridPoint>> holes = [.. patch.Holes.Select(hole => Rings.ToSteps(hole.Ring.Reverse()))];
        bool IsOn(Point2 point) => ExactPredicates.Locate(border, Grid.ToSteps(point)) > 0 && holes.All(hole => ExactPredicates.Locate(hole, Grid.ToSteps(point)) < 0);
        var part = ImmutableArray.CreateBuilder<Point2>();
        foreach (var point in line)
        {
            if (IsOn(point))
            {
                part.Add(point);
                continue;
            }

            if (part.Count > 1)
            {
                yield return part.ToImmutable();
            }

            part.Clear();
        }

        if (part.Count > 1)
        {
            yield return part.ToImmutable();
        }
    }
}
