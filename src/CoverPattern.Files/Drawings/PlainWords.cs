using System.Globalization;
using System.Linq;
using System.Text;

namespace CoverPattern.Files.Drawings;

/// <summary>Text as a paper may carry it: nothing in it acts instead of being read.</summary>
/// <remarks>
/// A sign that turns the direction of reading makes a label read as another one: "P1.02" typed behind U+202E shows as
/// "20.1P". Such signs and all other control signs become the sign for "not a letter", so that somebody asks.
/// The two joiners stay: several scripts cannot be written without them.
/// </remarks>
public static class PlainWords
{
    private const int NonJoiner = 0x200C;
    private const int Joiner = 0x200D;

    /// <summary>The text on one line: breaks and tabs become spaces, other signs that are no writing become U+FFFD.</summary>
    public static string Of(string text) => string.Concat(text.EnumerateRunes().Select(letter => Plain(letter).ToString()));

    private static Rune Plain(Rune letter) => letter.Value switch
    {
        '\t' or '\n' or '\v' or '\f' or '\r' or 0x85 or 0x2028 or 0x2029 => new Rune(' '),
        NonJoiner or Joiner => letter,
        0xFFFE or 0xFFFF => Rune.ReplacementChar,
        _ => Rune.GetUnicodeCategory(letter) is UnicodeCategory.Control or UnicodeCategory.Format ? Rune.ReplacementChar : letter,
    };
}
