using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Lays.Nesting;

/// <summary>How one item stands in a row: every other copy may be turned and may hang from the row's upper edge.</summary>
/// <param name="Even">Outline of the first, third, ... copy; it stands on the row's lower edge.</param>
/// <param name="Odd">Outline of the second, fourth, ... copy.</param>
/// <param name="IsOddHanging">Whether the odd copies hang from the upper edge.</param>
internal sealed record RowStyle(TurnedOutline Even, TurnedOutline Odd, bool IsOddHanging)
{
    // The pitch of a pair is steady after the first few copies.
    private const int TrialCopies = 8;

    /// <summary>The style with the least length a copy in a row of a height; null when the item does not fit it in any turn.</summary>
    public static RowStyle? Densest(OutlineTable table, int item, long height) =>
        Possible(table.ByItem[item])
            .Where(style => style.Even.Height <= height && style.Odd.Height <= height)
            .OrderBy(style => Pitch(table, style, height))
            .FirstOrDefault();

    private static IEnumerable<RowStyle> Possible(IReadOnlyList<TurnedOutline> turns)
    {
        foreach (var even in turns)
        {
            foreach (var odd in turns.Where(turn => turn == even || IsHalfTurn(even, turn)))
            {
                yield return new RowStyle(even, odd, IsOddHanging: true);
                yield return new RowStyle(even, odd, IsOddHanging: false);
            }
        }
    }

    private static bool IsHalfTurn(TurnedOutline even, TurnedOutline odd) =>
        Math.Abs(TurnChoices.Normal(odd.TurnDegrees - even.TurnDegrees) - 180) < 1e-9;

    private static long Pitch(OutlineTable table, RowStyle style, long height)
    {
        var row = new Row(table, 0, height);
        for (var i = 0; i < TrialCopies; i++)
        {
            row.Add(row.Next(style, i % 2 == 1), i % 2 == 1);
        }

        return row.Placed[TrialCopies - 1].Right - row.Placed[1].Right;
    }
}
