using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;

namespace CoverPattern.Lays.Nesting;

/// <summary>Makes a whole layout of one that may miss copies, hold too many, or is no longer right everywhere.</summary>
internal static class EarlierLayout
{
    /// <summary>What is right stays; what is not is laid anew behind or between it.</summary>
    /// <param name="task">The task; its fixed copies are among the places.</param>
    /// <param name="places">Where copies lay.</param>
    public static NestingLayout Of(NestingTask task, ImmutableArray<NestingPlacement> places)
    {
        var kept = Right(task, places);
        if (kept.Count == task.Items.Sum(item => item.Quantity))
        {
            ImmutableArray<NestingPlacement> ordered = [.. kept.OrderBy(place => place.Item)];
            var length = ordered.Max(place => place.Apply(task.Items[place.Item].Outline).Max(point => point.X));
            return new NestingLayout(length, ordered, "earlier");
        }

        return BottomLeftFill.Fill(task with { Fixed = [.. kept], Effort = 1 }, CancellationToken.None);
    }

    /// <summary>The places that are right together; of two that clash the later goes, unless it is fixed.</summary>
    private static List<NestingPlacement> Right(NestingTask task, ImmutableArray<NestingPlacement> places)
    {
        var kept = places.OrderByDescending(place => task.Fixed.Contains(place)).ToList();
        while (true)
        {
            var counted = task with { Items = [.. task.Items.Select((item, i) => item with { Quantity = kept.Count(place => place.Item == i) })] };
            var wrong = LayoutCheck.Check(counted, new NestingLayout(0, [.. kept], "earlier"))
                .Where(fault => fault.Fault is not (NestingFault.WrongLength or NestingFault.Moved))
                .Select(fault => fault.Second >= 0 ? fault.Second : fault.First)
                .ToHashSet();
            if (wrong.Count == 0)
            {
                return kept;
            }

            kept = [.. kept.Where((_, i) => !wrong.Contains(i))];
        }
    }
}
