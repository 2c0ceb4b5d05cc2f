using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>Proof of a layout that trusts no placing method: every item is laid again from its outline and tested in whole numbers.</summary>
/// <remarks>Overlap means that two insides share a point; touching is allowed. An item may lie in another's hole.</remarks>
public static class LayoutCheck
{
    // Turns come from arithmetic on angles; this is a hundredth of a step on the grid at 100 m.
    private const double TurnTolerance = 1e-9;

    /// <summary>Everything wrong with a layout; empty when it is proved.</summary>
    public static ImmutableArray<NestingFinding> Check(NestingTask task, NestingLayout layout)
    {
        var findings = ImmutableArray.CreateBuilder<NestingFinding>();
        findings.AddRange(WrongCounts(task, layout));
        var known = Enumerable.Range(0, layout.Placements.Length).Where(i => IsInReach(task, layout.Placements[i])).ToImmutableArray();
        var regions = known.Select(i => Lay(task.Items[layout.Placements[i].Item], layout.Placements[i])).ToImmutableArray();
        for (var k = 0; k < known.Length; k++)
        {
            findings.AddRange(WrongPlaces(task, known[k], layout.Placements[known[k]], regions[k]));
        }

        findings.AddRange(known.SelectMany((index, k) => WrongCloth(task, index, layout.Placements[index], regions[k])));
        findings.AddRange(Moved(task, layout));
        findings.AddRange(RegionSweep.Clashes(regions, task.Spacing).Select(clash => Clash(task, known, clash)));
        var length = regions.Length > 0 ? regions.Max(region => region.High.ToPoint().X) : 0;
        if (length != layout.Length)
        {
            findings.Add(Finding(NestingFault.WrongLength, -1, $"The layout says it is {layout.Length:F4} mm long; its items end at {length:F4} mm."));
        }

        return findings.ToImmutable();
    }

    private static bool IsKnown(NestingTask task, NestingPlacement placement) => placement.Item >= 0 && placement.Item < task.Items.Length;

    /// <summary>Whether the item lies where the exact tests hold; NaN is nowhere.</summary>
    private static bool IsInReach(NestingTask task, NestingPlacement placement) =>
        IsKnown(task, placement)
        && double.IsFinite(placement.TurnDegrees)
        && placement.Apply(task.Items[placement.Item].Outline).All(p => Math.Abs(p.X) <= Grid.LargestMillimetres && Math.Abs(p.Y) <= Grid.LargestMillimetres);

    private static GridRegion Lay(NestingItem item, NestingPlacement placement) =>
        GridRegion.Of(placement.Apply(item.Outline), item.Holes.Select(hole => (IEnumerable<Point2>)placement.Apply(hole)));

    private static IEnumerable<NestingFinding> WrongCounts(NestingTask task, NestingLayout layout)
    {
        var counts = new int[task.Items.Length];
        for (var i = 0; i < layout.Placements.Length; i++)
        {
            if (!IsKnown(task, layout.Placements[i]))
            {
                yield return Finding(NestingFault.WrongCount, i, $"Placement {i} is of item {layout.Placements[i].Item}, which is not asked for.");
                continue;
            }

            counts[layout.Placements[i].Item]++;
            if (!IsInReach(task, layout.Placements[i]))
            {
                yield return Finding(NestingFault.Outside, i, $"Placement {i} lies beyond {Grid.LargestMillimetres / 1000:F0} m or nowhere; it was not tested further.");
            }
        }

        for (var item = 0; item < counts.Length; item++)
        {
            if (counts[item] != task.Items[item].Quantity)
            {
                yield return Finding(NestingFault.WrongCount, item, $"Item {item} is placed {counts[item]} times; {task.Items[item].Quantity} are asked for.");
            }
        }
    }

    private static IEnumerable<NestingFinding> WrongPlaces(NestingTask task, int index, NestingPlacement placement, GridRegion region)
    {
        if (!IsAllowed(task.Items[placement.Item].Turns, placement.TurnDegrees))
        {
            yield return Finding(NestingFault.WrongTurn, index, $"Placement {index} is turned by {placement.TurnDegrees:R} degrees, which item {placement.Item} may not take.");
        }

        if (placement.Mirrored && !task.Items[placement.Item].MayMirror)
        {
            yield return Finding(NestingFault.WrongFace, index, $"Placement {index} lies turned over, which item {placement.Item} may not.");
        }

        if (Grid.Snap(placement.Shift) != placement.Shift)
        {
            yield return Finding(NestingFault.OffGrid, index, $"Placement {index} is shifted by {placement.Shift.X:R}, {placement.Shift.Y:R} mm, which is not on the grid.");
        }

        var (low, high) = (region.Low.ToPoint(), region.High.ToPoint());
        if (low.X < 0 || low.Y < 0 || high.Y > task.Width)
        {
            yield return Finding(NestingFault.Outside, index, $"Placement {index} begins at {low.X:F4} mm and lies from {low.Y:F4} to {high.Y:F4} mm across; the strip begins at 0 and is {task.Width:F4} mm wide.");
        }
    }

    private static IEnumerable<NestingFinding> WrongCloth(NestingTask task, int index, NestingPlacement placement, GridRegion region)
    {
        for (var k = 0; k < task.Flaws.Length; k++)
        {
            if (task.Items[placement.Item].Grade < task.Flaws[k].LeastGrade && RegionPairs.InteriorsMeet(GridRegion.Of(task.Flaws[k].Outline, []), region))
            {
                yield return Finding(NestingFault.OnFlaw, index, $"Placement {index} lies on flawed area {k}, which item {placement.Item} may not.");
            }
        }
    }

    private static IEnumerable<NestingFinding> Moved(NestingTask task, NestingLayout layout) => task.Fixed
        .GroupBy(placement => placement)
        .Where(same => layout.Placements.Count(placement => placement == same.Key) < same.Count())
        .Select(same => Finding(NestingFault.Moved, -1, $"A copy of item {same.Key.Item} is to stay at {same.Key.Shift.X:F4}, {same.Key.Shift.Y:F4} mm and lies elsewhere."));

    private static bool IsAllowed(AllowedTurns turns, double degrees) =>
        double.IsFinite(degrees) && (turns.IsFree || turns.Degrees.Any(turn => Math.Abs(Math.IEEERemainder(turn - degrees, 360)) <= turns.Within + TurnTolerance));

    private static NestingFinding Clash(NestingTask task, ImmutableArray<int> known, (int First, int Second, double Distance) clash)
    {
        var (first, second) = (known[clash.First], known[clash.Second]);
        return clash.Distance < 0
            ? Finding(NestingFault.Overlap, first, $"Placements {first} and {second} overlap.") with { Second = second }
            : Finding(NestingFault.TooClose, first, $"Placements {first} and {second} are {clash.Distance:F4} mm apart; {task.Spacing:F4} mm are asked for.") with { Second = second };
    }

    private static NestingFinding Finding(NestingFault fault, int first, FormattableString text) =>
        new(fault, first, -1, FormattableString.Invariant(text));
}
