namespace CoverPattern.Files.Jobs;

/// <summary>Reads the mass of a cloth as the shop writes it: "610 g/m2", "18 oz/yd2".</summary>
public static class MassParser
{
    /// <summary>What a mass may look like, for messages.</summary>
    public const string Allowed = "a mass such as \"610 g/m2\" or \"18 oz/yd2\", or a bare number of grams per square metre";

    /// <summary>The form of a mass as a regular expression.</summary>
    public const string Pattern = "^ *[0-9]{1,9}(?:[.,][0-9]{1,9})? *(?:g/m|oz/yd)[2²] *$";

    // Ounce 28.349523125 g and yard 0.9144 m, exact by definition: 33.906 g/m2.
    private const decimal GramsPerOunce = 28.349523125m;
    private const decimal SquareMetresPerSquareYard = 0.9144m * 0.9144m;

    /// <summary>Reads a mass per area.</summary>
    /// <param name="text">The words as typed.</param>
    /// <param name="grams">Grams per square metre; 0 when the words say none.</param>
    /// <param name="trouble">Why it is no mass, in a few words; empty when it is.</param>
    public static bool TryParse(string text, out double grams, out string trouble)
    {
        (grams, trouble) = (0, "");
        var scanner = new QuantityScanner(text.Length > LengthParser.LongestText ? "" : text.Trim(' '));
        var number = scanner.TakeNumber();
        scanner.SkipSpaces();
        var unit = scanner.TakeUnit("g/m2", "g/m²", "oz/yd2", "oz/yd²");
        if (number is not { HasFraction: false } || unit is null || !scanner.AtEnd)
        {
            trouble = number is { HasFraction: false } && scanner.AtEnd ? "a unit is missing: g/m2 or oz/yd2" : "no mass";
            return false;
        }

        var perUnit = unit[0] == 'g' ? 1 : GramsPerOunce / SquareMetresPerSquareYard;
        grams = LengthParser.ToDouble(number.Value.Value * perUnit);
        return true;
    }
}
