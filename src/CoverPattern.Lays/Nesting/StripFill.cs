using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Lays.Nesting;

/// <summary>A strip being filled: each outline goes to the leftmost, then lowest place that keeps the spacing to all before it.</summary>
/// <remarks>
/// Places are sought on sweep lines: even steps across the strip, and heights at which the outline is level with one
/// placed before or rests on it. The best few are then slid along what they touch. A place is taken only when it lies
/// in no keep-out, so no overlap can arise.
/// </remarks>
/// <param name="table">Outlines and keep-outs.</param>
/// <param name="rule">How places of different turns are compared.</param>
/// <param name="floor">No place further left is looked for, steps.</param>
internal sealed class StripFill(OutlineTable table, PlaceRule rule, long floor = 0)
{
    // Own choices, measured on dome sets: more lines or more slides lengthen the work more than they shorten the lay.
    private const int EvenLines = 24;
    private const int MostLines = 96;
    private const int Slides = 3;

    private readonly List<Placed> placed = [.. table.Flaws, .. table.Fixed];
    private readonly List<SweepLine>?[] lines = new List<SweepLine>?[table.Outlines.Length];
    private readonly HashSet<(int Outline, long Y)> heights = [];
    private readonly int[] levelled = new int[table.Outlines.Length];
    private readonly List<(KeepOut KeepOut, Placed Still)> near = [];

    /// <summary>What lies on the strip but for flawed areas, in the order in which it was placed.</summary>
    public IReadOnlyList<Placed> Placed => placed[table.Flaws.Length..];

    /// <summary>Rightmost x, steps.</summary>
    public long Right { get; private set; } = table.Fixed.Select(piece => piece.Right).DefaultIfEmpty(0).Max();

    /// <summary>Lays an outline where the caller says.</summary>
    public void Put(Placed item)
    {
        placed.Add(item);
        Right = Math.Max(Right, item.Right);
    }

    /// <summary>Lays one copy of an item, in whichever turn goes best.</summary>
    public void Add(int item) => TryAdd(item, long.MaxValue);

    /// <summary>Lays one copy of an item where it ends within a limit.</summary>
    /// <returns>False, and nothing laid, when no place is found that does.</returns>
    public bool TryAdd(int item, long mostRight)
    {
        var places = table.ByItem[item].SelectMany(Places).OrderBy(Key).ThenBy(place => place.Y).ThenBy(place => place.Outline.Index);
        var slid = places.Take(Slides).Select(Slide).Where(place => place.Right <= mostRight).OrderBy(Key).ThenBy(place => place.Y).ThenBy(place => place.Outline.Index).ToArray();
        if (slid.Length == 0)
        {
            return false;
        }

        Put(slid[0]);
        return true;
    }

    private long Key(Placed place) => rule switch
    {
        PlaceRule.LeastRight => place.Right,
        PlaceRule.LeastMiddle => place.X + (place.Outline.Width / 2),
        _ => place.X,
    };

    private IEnumerable<Placed> Places(TurnedOutline outline)
    {
        foreach (var line in LinesOf(outline))
        {
            for (; line.Seen < placed.Count; line.Seen++)
            {
                Block(line, outline, placed[line.Seen]);
            }

            yield return new Placed(outline, line.FirstFree(), line.Y);
        }
    }

    private void Block(SweepLine line, TurnedOutline outline, Placed still)
    {
        foreach (var keepOut in table.Between(still.Outline, outline))
        {
            if (keepOut.TrySpan(line.Y - still.Y, out var from, out var to))
            {
                line.Block(from + still.X, to + still.X);
            }
        }
    }

    private List<SweepLine> LinesOf(TurnedOutline outline)
    {
        var room = table.Width - outline.Height;
        var known = lines[outline.Index];
        if (known is null)
        {
            known = lines[outline.Index] = [];
            for (var i = 0; i < EvenLines; i++)
            {
                AddLine(known, outline, room * i / (EvenLines - 1));
            }
        }

        for (; levelled[outline.Index] < placed.Count && known.Count < MostLines; levelled[outline.Index]++)
        {
            var still = placed[levelled[outline.Index]];
            AddLine(known, outline, still.Y);
            AddLine(known, outline, still.Y + still.Outline.Height - outline.Height);
            AddLine(known, outline, still.Y + still.Outline.Height + table.Spacing);
            AddLine(known, outline, still.Y - outline.Height - table.Spacing);
            foreach (var hole in still.Outline.Holes)
            {
                // Keep-outs with spacing are rounded outward by up to a step at each rim.
                AddLine(known, outline, still.Y + hole.Min(point => point.Y) + table.Spacing + (table.Spacing > 0 ? 2 : 0));
            }
        }

        return known;
    }

    private void AddLine(List<SweepLine> known, TurnedOutline outline, long y)
    {
        if (y >= 0 && y <= table.Width - outline.Height && heights.Add((outline.Index, y)))
        {
            known.Add(new SweepLine(y, floor));
        }
    }

    /// <summary>Moves a place up or down in ever smaller steps while that brings it further left.</summary>
    private Placed Slide(Placed place)
    {
        var reach = Math.Max(place.Outline.Height, place.Outline.Width) / 2;
        var leftmost = Math.Max(floor, place.X - reach);
        CollectNear(place, leftmost, reach);
        for (var step = reach / 4; step > 0; step /= 2)
        {
            var up = At(place, place.Y + step, leftmost);
            var down = At(place, place.Y - step, leftmost);
            var better = down.X <= up.X ? down : up;
            place = better.X < place.X || (better.X == place.X && better.Y < place.Y) ? better : place;
        }

        return place;
    }

    private void CollectNear(Placed place, long leftmost, long reach)
    {
        near.Clear();
        foreach (var still in placed)
        {
            foreach (var keepOut in table.Between(still.Outline, place.Outline))
            {
                if (keepOut.HighX + still.X > leftmost && keepOut.LowX + still.X < place.X
                    && keepOut.HighY + still.Y > place.Y - reach && keepOut.LowY + still.Y < place.Y + reach)
                {
                    near.Add((keepOut, still));
                }
            }
        }
    }

    private Placed At(Placed place, long y, long leftmost)
    {
        if (y < 0 || y > table.Width - place.Outline.Height)
        {
            return place with { X = long.MaxValue };
        }

        var x = leftmost;
        for (var moved = true; moved && x <= place.X;)
        {
            moved = false;
            foreach (var (keepOut, still) in near)
            {
                if (keepOut.TrySpan(y - still.Y, out var from, out var to) && from + still.X < x && x < to + still.X)
                {
                    x = to + still.X;
                    moved = true;
                }
            }
        }

        // Right of the old place the near keep-outs do not tell the whole truth.
        return x <= place.X ? place with { X = x, Y = y } : place with { X = long.MaxValue };
    }
}
