using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using System.Text;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Plots;

/// <summary>Letters of single strokes for pens, which cannot fill an outline; shapes of our own.</summary>
/// <remarks>
/// Each letter stands on a grid 4 wide with its base line at 2 and its top at 8; a point is two digits, a blank goes on
/// drawing, a semicolon lifts the pen. Nought is crossed, so that labels cannot be misread. A letter with an accent is drawn
/// without it; what is not listed is drawn as a box.
/// </remarks>
public static class PenLetters
{
    private const double BaseLine = 2;
    private const double CapitalHeight = 6;
    private const double Advance = 6;
    private const string Unknown = "02 08 48 42 02";

    private static readonly ImmutableDictionary<char, string> Shapes = new Dictionary<char, string>
    {
        ['A'] = "02 28 42;15 35",
        ['B'] = "02 08 38 47 46 35 05;35 44 43 32 02",
        ['C'] = "47 38 18 07 03 12 32 43",
        ['D'] = "02 08 28 46 44 22 02",
        ['E'] = "48 08 02 42;05 35",
        ['F'] = "48 08 02;05 35",
        ['G'] = "47 38 18 07 03 12 32 43 45 25",
        ['H'] = "02 08;42 48;05 45",
        ['I'] = "12 32;18 38;22 28",
        ['J'] = "48 43 32 12 03",
        ['K'] = "02 08;48 05 42",
        ['L'] = "08 02 42",
        ['M'] = "02 08 25 48 42",
        ['N'] = "02 08 42 48",
        ['O'] = "12 03 07 18 38 47 43 32 12",
        ['P'] = "02 08 38 47 46 35 05",
        ['Q'] = "12 03 07 18 38 47 43 32 12;24 42",
        ['R'] = "02 08 38 47 46 35 05;25 42",
        ['S'] = "47 38 18 07 06 15 35 44 43 32 12 03",
        ['T'] = "08 48;28 22",
        ['U'] = "08 03 12 32 43 48",
        ['V'] = "08 22 48",
        ['W'] = "08 12 25 32 48",
        ['X'] = "02 48;08 42",
        ['Y'] = "08 25 48;25 22",
        ['Z'] = "08 48 02 42",
        ['a'] = "43 32 12 03 05 16 36 45;46 42",
        ['b'] = "08 02;05 16 36 45 43 32 12 03",
        ['c'] = "45 36 16 05 03 12 32 43",
        ['d'] = "48 42;45 36 16 05 03 12 32 43",
        ['e'] = "04 44 45 36 16 05 03 12 32 43",
        ['f'] = "38 27 22;16 36",
        ['g'] = "45 36 16 05 03 12 32 43;46 41 30 10 01",
        ['h'] = "08 02;05 16 36 45 42",
        ['i'] = "26 22;28 27",
        ['j'] = "26 21 10;28 27",
        ['k'] = "08 02;46 04 42",
        ['l'] = "28 23 32",
        ['m'] = "02 06;05 16 25 22;25 36 45 42",
        ['n'] = "02 06;05 16 36 45 42",
        ['o'] = "12 03 05 16 36 45 43 32 12",
        ['p'] = "00 06;05 16 36 45 43 32 12 03",
        ['q'] = "40 46;45 36 16 05 03 12 32 43",
        ['r'] = "02 06;05 16 36",
        ['s'] = "46 16 05 14 34 43 32 02",
        ['t'] = "18 13 22 32;06 36",
        ['u'] = "06 03 12 32 43;46 42",
        ['v'] = "06 22 46",
        ['w'] = "06 12 25 32 46",
        ['x'] = "02 46;06 42",
        ['y'] = "06 22;46 22 10 00",
        ['z'] = "06 46 02 42",
        ['0'] = "12 03 07 18 38 47 43 32 12;13 37",
        ['1'] = "16 28 22;12 32",
        ['2'] = "07 18 38 47 46 02 42",
        ['3'] = "07 18 38 47 46 35 15;35 44 43 32 12 03",
        ['4'] = "32 38 04 44",
        ['5'] = "48 08 05 35 44 43 32 02",
        ['6'] = "47 38 18 07 03 12 32 43 44 35 05",
        ['7'] = "08 48 12",
        ['8'] = "15 06 07 18 38 47 46 35 15 04 03 12 32 43 44 35",
        ['9'] = "45 15 06 07 18 38 47 43 32 12 03",
        ['.'] = "22 23",
        [','] = "22 11",
        [':'] = "22 23;25 26",
        [';'] = "22 11;25 26",
        ['-'] = "15 35",
        ['+'] = "15 35;24 26",
        ['='] = "14 34;16 36",
        ['/'] = "02 48",
        ['\\'] = "08 42",
        ['('] = "38 17 13 32",
        [')'] = "18 37 33 12",
        ['['] = "38 18 12 32",
        [']'] = "18 38 32 12",
        ['\''] = "28 27",
        ['"'] = "18 17;38 37",
        ['_'] = "02 42",
        ['#'] = "12 18;32 38;04 44;06 46",
        ['%'] = "02 48;17 18 08 07 17;33 43 42 32 33",
        ['*'] = "25 27;16 36",
        ['!'] = "28 24;22 23",
        ['?'] = "07 18 38 47 46 25 24;22 23",
        ['<'] = "46 05 44",
        ['>'] = "06 45 04",
        ['&'] = "42 07 18 27 04 03 12 22 44",
        ['\u00d7'] = "13 35;15 33",
        ['\u00b0'] = "17 18 28 27 17",
        [' '] = string.Empty,
    }.ToImmutableDictionary();

    /// <summary>How wide a text is written, millimetres.</summary>
    /// <param name="text">The text.</param>
    /// <param name="height">Height of its capitals, millimetres.</param>
    public static double Width(string text, double height) => Plain(text) is { Length: > 0 } plain
        ? ((plain.Length * Advance) - 2) * height / CapitalHeight
        : 0;

    /// <summary>The strokes of a text, its base line on +x from the origin, capitals <paramref name="height"/> high.</summary>
    /// <param name="text">The text.</param>
    /// <param name="height">Height of its capitals, millimetres.</param>
    /// <returns>Lines of at least two points, in writing order.</returns>
    public static IEnumerable<ImmutableArray<Point2>> Write(string text, double height)
    {
        var scale = height / CapitalHeight;
        foreach (var (letter, at) in Plain(text).Select((letter, at) => (letter, at)))
        {
            foreach (var stroke in Shapes.GetValueOrDefault(letter, Unknown).Split(';', StringSplitOptions.RemoveEmptyEntries))
            {
                yield return [.. stroke.Split(' ').Select(point => scale * new Point2(point[0] - '0' + (Advance * at), point[1] - '0' - BaseLine))];
            }
        }
    }

    /// <summary>The letters without accents, and without what has no width.</summary>
    private static string Plain(string text) => string.Concat(text.Normalize(NormalizationForm.FormD)
        .Where(letter => CharUnicodeInfo.GetUnicodeCategory(letter) is not (UnicodeCategory.NonSpacingMark or UnicodeCategory.Format or UnicodeCategory.Control)));
}
