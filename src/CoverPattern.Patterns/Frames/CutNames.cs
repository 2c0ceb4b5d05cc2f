using System;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>What the trade calls the cuts of a frame: fractions of the whole ball.</summary>
/// <remarks>
/// A ball of frequency n has 3n rows of facets. An exact name counts rows, "4/9" being four rows of nine; any equal
/// fraction names the same cut. Frequencies 1 and 3 have no cut at the half, and three names there are not row counts:
/// "3/4" counts facets (15 of 20), "3/8" and "5/8" are the old names of four and five rows of nine
/// [Prenis 1973, p. 94, author from memory; else common practice, no source].
/// </remarks>
public static class CutNames
{
    private const int RowsPerDivision = 3;

    // In the order of rows; common practice, no source.
    private static readonly ImmutableArray<ImmutableArray<CutName>> CustomaryByFrequency =
    [
        [new("3/4", 2)],
        [new("1/2", 3)],
        [new("3/8", 4), new("5/8", 5)],
        [new("5/12", 5), new("1/2", 6), new("7/12", 7)],
        [new("7/15", 7), new("8/15", 8)],
        [new("4/9", 8), new("1/2", 9), new("5/9", 10)],
        [new("10/21", 10), new("11/21", 11)],
        [new("11/24", 11), new("1/2", 12), new("13/24", 13)],
        [new("13/27", 13), new("14/27", 14)],
        [new("1/2", 15)],
        [new("16/33", 16), new("17/33", 17)],
        [new("1/2", 18)],
    ];

    /// <summary>Names in use for a frequency, fewest rows first.</summary>
    /// <param name="frequency">Parts of an edge of the solid, 1 to 12.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not 1 to 12.</exception>
    public static ImmutableArray<CutName> Customary(int frequency)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(frequency, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(frequency, CustomaryByFrequency.Length);
        return CustomaryByFrequency[frequency - 1];
    }

    /// <summary>Finds the rows that a fraction names on any ball.</summary>
    /// <param name="wish">Its family, frequency, division and what is up are read; an icosahedron with a corner up has customary names.</param>
    /// <param name="mostRows">All rows of the ball but the lowest.</param>
    /// <param name="name">A customary name, or a fraction of the ball's rows.</param>
    /// <param name="rows">Rows kept, from the top; 0 when the fraction names no cut.</param>
    /// <returns>Whether the fraction names a cut.</returns>
    public static bool TryFindRows(FrameWish wish, int mostRows, string name, out int rows)
    {
        ArgumentNullException.ThrowIfNull(wish);
        if (IsCustomary(wish))
        {
            return TryFindRows(wish.Frequency, name, out rows);
        }

        rows = TryReadFraction(name, out var parts, out var whole) && parts * (mostRows + 1) % whole == 0 ? parts * (mostRows + 1) / whole : 0;
        rows = rows > mostRows ? 0 : rows;
        return rows > 0;
    }

    /// <summary>Whether the customary names hold: three times as many rows as the frequency, cut by cut as the icosahedron's class I.</summary>
    public static bool IsCustomary(FrameWish wish) =>
        wish is { Family: FrameFamily.Icosahedron, Up: FrameUp.Vertex } && wish.Division != FrameDivision.ClassTwo;

    /// <summary>Most rows that a cut of the icosahedron with a corner up may keep: all but the lowest of the ball.</summary>
    /// <param name="frequency">Parts of an edge of the solid, 1 or more.</param>
    public static int MostRows(int frequency) => (RowsPerDivision * frequency) - 1;

    /// <summary>Finds the rows that a fraction names.</summary>
    /// <param name="frequency">Parts of an edge of the solid, 1 to 12.</param>
    /// <param name="name">A customary name, or a fraction equal to rows / (3 x frequency), such as "8/18" at frequency 3.</param>
    /// <param name="rows">Rows kept, from the top; 0 when the fraction names no cut.</param>
    /// <returns>Whether the fraction names a cut of this frequency.</returns>
    public static bool TryFindRows(int frequency, string name, out int rows)
    {
        rows = Customary(frequency).FirstOrDefault(cut => string.Equals(cut.Name, name, StringComparison.Ordinal))?.Rows ?? 0;
        if (rows == 0 && TryReadFraction(name, out var parts, out var whole)
            && parts * RowsPerDivision * frequency % whole == 0)
        {
            rows = parts * RowsPerDivision * frequency / whole;
            rows = rows > MostRows(frequency) ? 0 : rows;
        }

        return rows > 0;
    }

    /// <summary>The name of a cut: the customary one, else the exact fraction in lowest terms.</summary>
    /// <param name="frequency">Parts of an edge of the solid, 1 to 12.</param>
    /// <param name="rows">Rows kept, from the top, 1 to 3 x frequency - 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such cut.</exception>
    public static CutName Of(int frequency, int rows)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(rows, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(rows, MostRows(frequency));
        return Customary(frequency).FirstOrDefault(cut => cut.Rows == rows) ?? new CutName(ExactName(frequency, rows), rows);
    }

    /// <summary>Cuts worth offering to somebody whose words name none: the customary ones and the nearest above and below.</summary>
    /// <param name="frequency">Parts of an edge of the solid, 1 to 12.</param>
    /// <param name="said">What was said; when it is no fraction, only the customary names come back.</param>
    /// <returns>Fewest rows first, each once.</returns>
    public static ImmutableArray<CutName> Near(int frequency, string said)
    {
        var rows = Customary(frequency).Select(cut => cut.Rows);
        if (TryReadFraction(said, out var parts, out var whole))
        {
            var meant = parts * RowsPerDivision * frequency / whole;
            rows = rows.Concat([Math.Clamp(meant, 1, MostRows(frequency)), Math.Clamp(meant + 1, 1, MostRows(frequency))]);
        }

        return [.. rows.Distinct().Order().Select(count => Of(frequency, count))];
    }

    private static string ExactName(int frequency, int rows)
    {
        var whole = RowsPerDivision * frequency;
        var common = Enumerable.Range(1, rows).Last(divisor => rows % divisor == 0 && whole % divisor == 0);
        return FormattableString.Invariant($"{rows / common}/{whole / common}");
    }

    /// <summary>Reads "5/9": two whole numbers of one to four digits, the second not 0.</summary>
    private static bool TryReadFraction(string name, out int parts, out int whole)
    {
        (parts, whole) = (0, 0);
        var halves = name.Split('/');
        return halves.Length == 2
            && halves.All(half => half.Length is >= 1 and <= 4)
            && int.TryParse(halves[0], NumberStyles.None, CultureInfo.InvariantCulture, out parts)
            && int.TryParse(halves[1], NumberStyles.None, CultureInfo.InvariantCulture, out whole)
            && whole > 0;
    }
}
