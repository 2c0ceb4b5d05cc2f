using System;
using System.Linq;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>The blows that put a lay out of order on purpose.</summary>
internal static class Shaking
{
    /// <summary>Makes the strip shorter: what lies right of a cut moves left by the lost length, so that overlaps are many and small.</summary>
    /// <param name="strip">Holds a lay of the given length.</param>
    /// <param name="scene">Tells which copies stay where they lie.</param>
    /// <param name="lengths">Length now and length to come, steps.</param>
    /// <param name="chance">Draws the cut.</param>
    public static void Shorten(Strip strip, SearchScene scene, (int From, int To) lengths, Chance chance)
    {
        var (from, to) = lengths;
        var cut = chance.Below(to);
        strip.Length = to;
        for (var i = 0; i < strip.Count; i++)
        {
            if (scene.Locked[i])
            {
                continue;
            }

            var spot = strip.At(i);
            var box = spot.Shape.TrueBox;
            if (strip.IsRound)
            {
                // What is wider than the way round would meet itself: it takes its narrowest turn.
                var shape = strip.Fits(spot.Shape) ? spot.Shape : scene.Shapes[scene.Copies[i]].Where(strip.Fits).MinBy(turn => turn.Box.Width)!;
                strip.Place(i, strip.Kept(shape, spot.X >= cut ? spot.X - (from - to) : spot.X, spot.Y));
                continue;
            }

            if (spot.X + ((box.Left + (long)box.Right) / 2) >= cut)
            {
                strip.Place(i, spot with { X = Math.Max(-box.Left, spot.X - (from - to)) });
            }
            else if (spot.X + box.Right > to)
            {
                strip.Place(i, spot with { X = to - box.Right });
            }
        }
    }

    /// <summary>Swaps the places of two bulky copies of different items, middle on middle.</summary>
    public static void SwapTwo(Strip strip, SearchScene scene, Chance chance)
    {
        var bulky = scene.Bulky;
        if (bulky.IsEmpty)
        {
            return;
        }

        var first = bulky[chance.Below(bulky.Length)];
        var others = bulky.Where(copy => scene.Copies[copy] != scene.Copies[first]).ToArray();
        if (others.Length == 0)
        {
            Throw(strip, first, chance);
            return;
        }

        var second = others[chance.Below(others.Length)];
        var (one, two) = (strip.At(first), strip.At(second));
        strip.Place(first, OnMiddle(strip, one, two));
        strip.Place(second, OnMiddle(strip, two, one));
    }

    /// <summary>Lays one copy anywhere.</summary>
    private static void Throw(Strip strip, int copy, Chance chance)
    {
        var spot = strip.At(copy);
        var box = spot.Shape.TrueBox;
        var (x, y) = (chance.Between(-box.Left, strip.Length - box.Right), chance.Between(-box.Bottom, strip.Width - box.Top));
        strip.Place(copy, strip.Kept(spot.Shape, x, y));
    }

    private static Spot OnMiddle(Strip strip, in Spot moved, in Spot there)
    {
        var (box, goal) = (moved.Shape.TrueBox, there.Shape.TrueBox);
        var x = there.X + ((goal.Left + goal.Right - box.Left - box.Right) / 2);
        var y = there.Y + ((goal.Bottom + goal.Top - box.Bottom - box.Top) / 2);
        return strip.Kept(moved.Shape, x, y);
    }
}
