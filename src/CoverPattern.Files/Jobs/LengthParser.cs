using System.Globalization;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads lengths as the shop writes them: "24 ft", "12' 6\"", "1 1/2 in", "38 mm", "2,5 cm".</summary>
/// <remarks>
/// Strict, because a length misread is a ruined roll: no digit grouping, so that a decimal comma is a comma and
/// "1,500 mm" is a millimetre and a half; a unit always; nothing but what <see cref="Allowed"/> lists.
/// An inch is 25.4 mm, exact by definition.
/// </remarks>
public static class LengthParser
{
    /// <summary>What a length may look like, for messages.</summary>
    public const string Allowed = "a length such as \"24 ft\", \"12' 6\\\"\", \"1 1/2 in\", \"38 mm\", \"2,5 cm\" or \"3 m\", or a bare number of millimetres";

    /// <summary>The form of an unsigned length as a regular expression; sums and limits are checked by the parser alone.</summary>
    public const string Pattern = "^ *(?:" + Forms + ") *$";

    /// <summary>The form of a length that may have a sign.</summary>
    public const string SignedPattern = "^ *[-+]?(?:" + Forms + ") *$";

    /// <summary>The forms of an unsigned length, without anchors and spaces round it.</summary>
    internal const string Forms =
        DecimalForm + " *(?:mm|cm|m)|" + FractionForm + " *(?:in|\"|ft|')|" + DecimalForm + " *(?:in|\"|ft|')|"
        + WholeForm + " *(?:ft *|' *)(?:" + FractionForm + "|" + DecimalForm + ") *(?:in|\")";

    /// <summary>Longest text that is read, characters.</summary>
    public const int LongestText = 40;

    private const string Units = "mm, cm, m, in, ft, ' or \"";
    private const string WholeForm = "[0-9]{1,9}";
    private const string DecimalForm = WholeForm + "(?:[.,][0-9]{1,9})?";
    private const string FractionForm = "(?:" + WholeForm + " +)?[0-9]{1,2}/[0-9]{1,2}";

    private const string Unsigned =
        "(?:" + DecimalForm + " *(?:mm|cm|m)|" + FractionForm + " *(?:in|\"|ft|')|" + DecimalForm + " *(?:in|\"|ft|')|"
        + WholeForm + " *(?:ft *|' *)(?:" + FractionForm + "|" + DecimalForm + ") *(?:in|\")) *$";

    private const decimal MillimetresPerInch = 25.4m;
    private const decimal InchesPerFoot = 12;

    /// <summary>Reads a length.</summary>
    /// <param name="text">The words as typed.</param>
    /// <param name="signed">Whether a leading "-" or "+" is allowed.</param>
    /// <param name="millimetres">The length nearest to what the words say; 0 when they say none.</param>
    /// <param name="trouble">Why it is no length, in a few words; empty when it is.</param>
    public static bool TryParse(string text, bool signed, out double millimetres, out string trouble)
    {
        (millimetres, trouble) = (0, "");
        if (text.Length > LongestText)
        {
            trouble = "too long for a length";
            return false;
        }

        var scanner = new QuantityScanner(text.Trim(' '));
        var sign = scanner.TakeSign();
        var total = sign is not null && !signed ? scanner.Refuse("a sign is not allowed here") : ReadLength(scanner);
        if (total is null || !scanner.AtEnd)
        {
            trouble = scanner.Trouble.Length > 0 ? scanner.Trouble : "\"" + scanner.Rest + "\" is not understood";
            return false;
        }

        millimetres = ToDouble(sign == '-' ? -total.Value : total.Value);
        return true;
    }

    /// <summary>The double nearest to a decimal; the framework's own cast may be off by one step.</summary>
    internal static double ToDouble(decimal value) => double.Parse(value.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static decimal? ReadLength(QuantityScanner scanner)
    {
        if (scanner.TakeNumber() is not { } number)
        {
            return null;
        }

        scanner.SkipSpaces();
        var unit = scanner.TakeUnit("mm", "cm", "m", "in", "\"", "ft", "'");
        return unit switch
        {
            "mm" => Metric(scanner, number, 1),
            "cm" => Metric(scanner, number, 10),
            "m" => Metric(scanner, number, 1000),
            "in" or "\"" => number.Value * MillimetresPerInch,
            "ft" or "'" => Feet(scanner, number),
            _ => scanner.Refuse(scanner.AtEnd ? "a unit is missing: " + Units : $"\"{scanner.Rest}\" does not begin with a unit: " + Units),
        };
    }

    private static decimal? Metric(QuantityScanner scanner, ScannedNumber number, decimal unit) =>
        number.HasFraction ? scanner.Refuse("fractions go with feet and inches only") : number.Value * unit;

    private static decimal? Feet(QuantityScanner scanner, ScannedNumber feet)
    {
        scanner.SkipSpaces();
        if (scanner.AtEnd)
        {
            return feet.Value * InchesPerFoot * MillimetresPerInch;
        }

        if (!feet.IsWhole)
        {
            return scanner.Refuse("feet before inches must be whole");
        }

        if (scanner.TakeNumber() is not { } inches)
        {
            return null;
        }

        scanner.SkipSpaces();
        if (scanner.TakeUnit("in", "\"") is null)
        {
            return scanner.Refuse("inches after feet need \"in\" or the inch sign");
        }

        return inches.Value < InchesPerFoot
            ? ((feet.Value * InchesPerFoot) + inches.Value) * MillimetresPerInch
            : scanner.Refuse("inches after feet must be under 12");
    }
}
