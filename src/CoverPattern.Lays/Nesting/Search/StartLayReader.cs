using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Reads a given lay as spots of copies, in order of item.</summary>
internal static class StartLayReader
{
    /// <summary>A given lay: a spot for each copy, and which copies stay where they lie.</summary>
    internal sealed record Given(ImmutableArray<Spot> Spots, ImmutableArray<bool> Locked);

    /// <param name="scene">Shapes of the task and of the lay.</param>
    /// <param name="layout">The lay.</param>
    /// <param name="locked">Indexes into its placements.</param>
    /// <exception cref="ArgumentException">Copies are missing or too many, or locked ones lie off the strip or on each other.</exception>
    public static Given Read(SearchScene scene, NestingLayout layout, ImmutableArray<int> locked)
    {
        var order = Enumerable.Range(0, layout.Placements.Length).OrderBy(i => layout.Placements[i].Item).ToArray();
        if (!order.Select(i => layout.Placements[i].Item).SequenceEqual(scene.Copies.Take(scene.Pieces)))
        {
            throw new ArgumentException("The start lay must hold every copy of every item, and no other.", nameof(layout));
        }

        var spots = order.Select(i => ToSpot(scene, layout.Placements[i])).Concat(scene.Flaws).ToImmutableArray();
        var stay = order.Select(i => locked.Contains(i)).Concat(scene.Flaws.Select(_ => true)).ToImmutableArray();
        RequireRoom(scene, [.. spots.Where((_, copy) => stay[copy])]);
        return new Given(spots, stay);
    }

    private static Spot ToSpot(SearchScene scene, NestingPlacement placement)
    {
        var shift = Grid.ToSteps(placement.Shift);
        return new Spot(scene.ShapeOf(placement), (int)shift.X, (int)shift.Y);
    }

    private static void RequireRoom(SearchScene scene, ImmutableArray<Spot> locked)
    {
        for (var i = 0; i < locked.Length; i++)
        {
            var box = locked[i].Shape.TrueBox.Moved(locked[i].X, locked[i].Y);
            var clash = locked.Take(i).Any(other => scene.Tables.Overlap(locked[i].Shape, other.Shape, other.X - locked[i].X, other.Y - locked[i].Y));
            var isOff = box.Left < 0 || box.Bottom < 0 || box.Top > scene.Width;
            if (clash || (isOff && locked[i].Shape.LeastGrade == int.MaxValue))
            {
                throw new ArgumentException(
                    FormattableString.Invariant($"Locked copies contradict each other or the strip: a copy of item {locked[i].Shape.Item} lies on another one, nearer than the spacing, or off the strip."),
                    nameof(locked));
            }
        }
    }
}
