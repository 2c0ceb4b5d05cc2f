using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Openings;

/// <summary>Divides the rim of an opening that comes from the finished edge into jambs and head, and breaks it where its joins change.</summary>
internal static class RimSides
{
    // What bends more is a corner, radians: steps of curves bend by 15 degrees at most.
    internal const double Corner = 20 * Math.PI / 180;

    // Where no corner is, a jamb ends where its curve begins; rounding bends less, radians.
    private const double Curve = 1e-5;

    // A point this near to where a rim is to be broken is that place, millimetres: two grid steps would be no edge.
    private const double SamePlace = 1;

    /// <summary>Where the right jamb ends and the left one begins, along the rim, millimetres.</summary>
    /// <param name="line">A rim from hem to hem.</param>
    /// <param name="region">Its region.</param>
    internal static (double Right, double Left) Jambs(RimLine line, Region region)
    {
        var inner = Enumerable.Range(1, line.Points.Length - 2).ToArray();
        var corners = inner.Where(i => Math.Abs(line.Bends[i]) >= Corner).ToArray();
        var ends = corners.Length > 0 ? corners : [.. inner.Where(i => Math.Abs(line.Bends[i]) > Curve && IsOfOutline(region, line.Where[i]))];
        return ends.Length > 0 ? (line.At[ends[0]], line.At[ends[^1]]) : (line.Length / 2, line.Length / 2);
    }

    /// <summary>The region with its rim broken between jambs and head, and in the middle of the head where two leaves meet.</summary>
    internal static Region Broken(ClippedShell surface, Region region, OpeningWish wish)
    {
        if (!region.ReachesHem || wish.Kind == OpeningKind.Window)
        {
            return region;
        }

        var line = RimLine.Of(surface, region);
        var (right, left) = Jambs(line, region);
        var places = new SortedSet<double> { right, left };
        if (wish.Opens == OpensAt.Middle)
        {
            places.Add((right + left) / 2);
            region = region with { Middle = (right + left) / 2 };
        }

        // From the end back, so that the numbers of earlier points stay.
        return places.Reverse().Aggregate(region, (broken, place) => BrokenAt(broken, line, place));
    }

    private static Region BrokenAt(Region region, RimLine line, double place)
    {
        var near = Enumerable.Range(0, line.Points.Length).MinBy(i => Math.Abs(line.At[i] - place));
        if (Math.Abs(line.At[near] - place) <= SamePlace)
        {
            return With(region, line.Where[near].Stretch, stretch => stretch with { Breaks = [line.Where[near].Index, .. stretch.Breaks] });
        }

        var before = line.At.Count(at => at < place) - 1;
        var (number, index) = line.Where[before];
        var share = (place - line.At[before]) / (line.At[before + 1] - line.At[before]);
        return With(region, number, stretch => stretch with
        {
            Points = stretch.Points.Insert(index + 1, Point2.Between(stretch.Points[index], stretch.Points[index + 1], share)),
            Breaks = [index + 1, .. stretch.Breaks.Select(later => later + 1)],
        });
    }

    private static Region With(Region region, int stretch, Func<RimStretch, RimStretch> change) =>
        region with { Rim = region.Rim.SetItem(stretch, change(region.Rim[stretch])) };

    /// <summary>Whether a point is one of the outline, not only where the rim crosses a line.</summary>
    private static bool IsOfOutline(Region region, (int Stretch, int Index) where) => where.Index > 0 && where.Index < region.Rim[where.Stretch].Points.Length - 1;
}
