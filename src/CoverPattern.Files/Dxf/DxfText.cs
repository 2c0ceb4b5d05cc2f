using System;
using System.Globalization;
using System.Text;
using CoverPattern.Files.Drawings;

namespace CoverPattern.Files.Dxf;

/// <summary>Texts as DXF files before 2007 hold them: plain ASCII, other letters as \U+XXXX.</summary>
/// <remarks>
/// Readers take "%%", "^" and "\" for the beginning of a code, so these are written such that they are read as themselves
/// (from memory; checked with two readers). Letters beyond the first plane are written as their two surrogates.
/// </remarks>
internal static class DxfText
{
    /// <returns>One line without control signs, see <see cref="PlainWords"/>.</returns>
    public static string Write(string text)
    {
        var percent = text.Contains("%%", StringComparison.Ordinal) ? "%%%" : "%";
        var written = new StringBuilder();
        foreach (var letter in PlainWords.Of(text))
        {
            _ = letter switch
            {
                '%' => written.Append(percent),
                '^' => written.Append("^ "),
                '\\' or > '~' => written.Append(CultureInfo.InvariantCulture, $"\\U+{(int)letter:X4}"),
                _ => written.Append(letter),
            };
        }

        return written.ToString();
    }
}
