using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using System.Text;
using CoverPattern.Files.Drawings;

namespace CoverPattern.Files.Pdf;

/// <summary>The font of our PDF papers: one of the fourteen that every reader has, so that none need be put into the file.</summary>
/// <remarks>
/// Widths are those of the font's public metrics (from memory; the tests hold each against another library's).
/// Letters that it has neither in Latin-1 nor in <see cref="EastLetters"/> are written as their number in braces, so that two names that differ still differ.
/// </remarks>
internal static class Helvetica
{
    /// <summary>Height of capitals over the size of the font.</summary>
    internal const double CapitalHeight = 0.718;

    /// <summary>Name of the font on a page.</summary>
    internal const string First = "F1";

    /// <summary>Name of the font with the further letters.</summary>
    internal const string Second = "F2";

    private const int FirstLetter = ' ';

    private static readonly ImmutableArray<int> Ascii =
    [
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278,
        556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556,
        1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778,
        667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556,
        333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556,
        556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
    ];

    private static readonly ImmutableArray<int> Latin =
    [
        278, 333, 556, 556, 556, 556, 260, 556, 333, 737, 370, 556, 584, 333, 737, 333,
        400, 584, 333, 333, 333, 556, 537, 278, 333, 333, 365, 556, 834, 834, 834, 611,
        667, 667, 667, 667, 667, 667, 1000, 722, 667, 667, 667, 667, 278, 278, 278, 278,
        722, 722, 778, 778, 778, 778, 778, 584, 778, 722, 722, 722, 722, 667, 667, 611,
        556, 556, 556, 556, 556, 556, 889, 500, 556, 556, 556, 556, 278, 278, 278, 278,
        556, 556, 556, 556, 556, 556, 556, 584, 611, 556, 556, 556, 556, 500, 556, 500,
    ];

    /// <summary>The text in letters that the font has.</summary>
    internal static string Known(string text) => string.Concat(PlainWords.Of(text).EnumerateRunes().Select(letter => Width(letter) > 0
        ? letter.ToString()
        : "{" + letter.Value.ToString("X4", CultureInfo.InvariantCulture) + "}"));

    /// <summary>How wide a known text is drawn, in heights of its capitals.</summary>
    internal static double Width(string known) => known.EnumerateRunes().Sum(Width) / 1000.0 / CapitalHeight;

    /// <summary>The operators that show a known text at the present place: from the first font, and from the second where letters are beyond Latin-1.</summary>
    /// <param name="known">Text in letters that the font has.</param>
    /// <param name="size">The font's size, as the file says it.</param>
    internal static string Show(string known, string size)
    {
        var shown = new StringBuilder();
        for (var from = 0; from < known.Length;)
        {
            var isEast = IsEast(known[from]);
            var run = string.Concat(known[from..].TakeWhile(letter => IsEast(letter) == isEast));
            shown.Append(CultureInfo.InvariantCulture, $"/{(isEast ? Second : First)} {size} Tf {Literal(isEast ? string.Concat(run.Select(EastLetters.Code)) : run)} Tj ");
            from += run.Length;
        }

        return shown.ToString();
    }

    /// <summary>A text of codes up to 255 as a PDF string of one byte a letter, all in ASCII.</summary>
    internal static string Literal(string known)
    {
        var literal = new StringBuilder("(");
        foreach (var letter in known)
        {
            _ = letter switch
            {
                '(' or ')' or '\\' => literal.Append('\\').Append(letter),
                > '~' => literal.Append('\\').Append(System.Convert.ToString(letter, 8).PadLeft(3, '0')),
                _ => literal.Append(letter),
            };
        }

        return literal.Append(')').ToString();
    }

    /// <summary>All letters it has.</summary>
    internal static IEnumerable<char> Letters() => Enumerable.Range(FirstLetter, Ascii.Length).Concat(Enumerable.Range(0xA0, Latin.Length)).Select(code => (char)code).Concat(EastLetters.Letters);

    private static bool IsEast(char letter) => letter > 0xFF;

    private static int Width(Rune letter) => letter.Value switch
    {
        >= FirstLetter and <= '~' => Ascii[letter.Value - FirstLetter],
        >= 0xA0 and <= 0xFF => Latin[letter.Value - 0xA0],
        _ => EastLetters.Width(letter.Value),
    };
}
