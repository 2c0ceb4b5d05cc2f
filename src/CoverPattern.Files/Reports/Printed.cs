using System;
using System.Globalization;

namespace CoverPattern.Files.Reports;

/// <summary>Numbers as people read them: a decimal point, no digit grouping, halves away from zero.</summary>
internal static class Printed
{
    /// <summary>A length in whole millimetres, without its unit.</summary>
    public static string Mm(double millimetres) => Number(millimetres, 0);

    /// <summary>A length in metres with centimetres, without its unit.</summary>
    public static string Metres(double millimetres) => Number(millimetres / 1000, 2);

    /// <summary>A number with a fixed count of decimals.</summary>
    public static string Number(double value, int decimals)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        // Adding zero turns a negative zero into zero.
        return (rounded + 0.0).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    public static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>A word of an enumeration in small letters.</summary>
    public static string Word<T>(T value)
        where T : struct, Enum => value.ToString().ToLowerInvariant();
}
