using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Patterns.Frames;

/// <summary>Labels of things that stand in rows: letter, row, position, padded so that they sort as text.</summary>
internal static class RowLabels
{
    /// <summary>Makes one label an entry, positions counted from 1 in the order given.</summary>
    /// <param name="letter">What the label begins with.</param>
    /// <param name="rows">Row of each thing.</param>
    internal static ImmutableArray<string> Make(string letter, IReadOnlyList<int> rows)
    {
        var counts = new Dictionary<int, int>();
        var positions = rows.Select(row => counts[row] = counts.GetValueOrDefault(row) + 1).ToArray();
        var rowForm = Form(rows.Max());
        var positionForm = Form(positions.Max());
        return
        [
            .. rows.Select((row, i) => letter
                + row.ToString(rowForm, CultureInfo.InvariantCulture)
                + "."
                + positions[i].ToString(positionForm, CultureInfo.InvariantCulture)),
        ];
    }

    private static string Form(int largest) => "D" + largest.ToString(CultureInfo.InvariantCulture).Length.ToString(CultureInfo.InvariantCulture);
}
