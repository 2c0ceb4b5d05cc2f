using System;
using System.Globalization;

namespace CoverPattern.Files.Drawings;

/// <summary>Numbers as drawn files want them: a decimal point, no exponent, no needless digits.</summary>
public static class CoordinateText
{
    /// <summary>Decimals with which every number of the grid, a multiple of 2^-10, is exact.</summary>
    public const int GridDecimals = 10;

    /// <summary>Writes a number.</summary>
    /// <param name="value">Any finite number.</param>
    /// <param name="decimals">Decimals at most; trailing zeros are left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public static string Write(double value, int decimals)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "A drawn number must be finite.");
        }

        var text = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        var trimmed = text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
        return trimmed == "-0" ? "0" : trimmed;
    }
}
