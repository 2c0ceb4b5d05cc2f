namespace CoverPattern.Files.Jobs;

/// <summary>Reads ratios as the shop writes them: "0.3 %", "-0,5 %".</summary>
public static class RatioParser
{
    /// <summary>What a ratio may look like, for messages.</summary>
    public const string Allowed = "a ratio such as \"0.3 %\", or a bare number such as 0.003";

    /// <summary>The form of a ratio as a regular expression.</summary>
    public const string Pattern = "^ *[-+]?[0-9]{1,9}(?:[.,][0-9]{1,9})? *% *$";

    private const decimal Hundred = 100;

    /// <summary>Reads a ratio; signs are allowed.</summary>
    /// <param name="text">The words as typed.</param>
    /// <param name="ratio">The ratio, 1 being the whole; 0 when the words say none.</param>
    /// <param name="trouble">Why it is no ratio, in a few words; empty when it is.</param>
    public static bool TryParse(string text, out double ratio, out string trouble)
    {
        (ratio, trouble) = (0, "");
        var scanner = new QuantityScanner(text.Length > LengthParser.LongestText ? "" : text.Trim(' '));
        var sign = scanner.TakeSign();
        var number = scanner.TakeNumber();
        scanner.SkipSpaces();
        if (number is not { HasFraction: false } || scanner.TakeUnit("%") is null || !scanner.AtEnd)
        {
            trouble = number is { HasFraction: false } && scanner.AtEnd ? "a per cent sign is missing" : "no ratio";
            return false;
        }

        ratio = LengthParser.ToDouble((sign == '-' ? -number.Value.Value : number.Value.Value) / Hundred);
        return true;
    }
}
