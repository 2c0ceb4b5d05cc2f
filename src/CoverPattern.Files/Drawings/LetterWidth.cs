using System.Linq;
using System.Text;

namespace CoverPattern.Files.Drawings;

/// <summary>How wide a text will be, when nobody knows in which font it will be drawn.</summary>
/// <remarks>
/// Rather too wide than too narrow. Measured on a common screen font of wide run, in heights of its capitals:
/// digits and most letters at most 0.9, M and W 1.4, letters of East Asian scripts 1.4.
/// </remarks>
public static class LetterWidth
{
    /// <summary>Width of the text, millimetres.</summary>
    /// <param name="text">Any letters.</param>
    /// <param name="height">Height of its capitals, millimetres.</param>
    public static double Estimate(string text, double height) => height * text.EnumerateRunes().Sum(Of);

    private static double Of(Rune letter) => letter.Value switch
    {
        'M' or 'W' or 'm' or 'w' or '@' or '%' => 1.4,
        < 0x1100 => 0.95,
        _ => 1.5,
    };
}
