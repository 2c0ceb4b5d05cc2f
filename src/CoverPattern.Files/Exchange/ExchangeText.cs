using System.Globalization;
using System.Linq;
using CoverPattern.Files.Drawings;

namespace CoverPattern.Files.Exchange;

/// <summary>Texts of exchange files, which have seven bits a letter.</summary>
internal static class ExchangeText
{
    /// <summary>The text with each letter beyond ASCII as its number in braces, so that names that differ still differ.</summary>
    internal static string Ascii(string text) => string.Concat(PlainWords.Of(text).EnumerateRunes().Select(letter => letter.Value is >= ' ' and <= '~'
        ? letter.ToString()
        : "{" + letter.Value.ToString("X4", CultureInfo.InvariantCulture) + "}"));
}
