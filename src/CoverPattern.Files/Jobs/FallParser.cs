using System;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads how much a plane falls: "2 %", "20 mm per 1 m", "1/4 in per 1 ft".</summary>
public static class FallParser
{
    /// <summary>What a fall may look like, for messages.</summary>
    public const string Allowed = "a fall such as \"2 %\", \"20 mm per 1 m\" or \"1/4 in per 1 ft\", or a bare number such as 0.02";

    /// <summary>The form of a fall as a regular expression.</summary>
    public const string Pattern =
        "^ *(?:[-+]?[0-9]{1,9}(?:[.,][0-9]{1,9})? *%|(?:" + LengthParser.Forms + ") *per *(?:" + LengthParser.Forms + ")) *$";

    private const string Per = "per";

    /// <summary>Reads a fall.</summary>
    /// <param name="text">The words as typed.</param>
    /// <param name="ratio">Fall over length on plan; 0 when the words say none.</param>
    /// <param name="trouble">Why it is no fall, in a few words; empty when it is.</param>
    public static bool TryParse(string text, out double ratio, out string trouble)
    {
        var at = text.IndexOf(Per, StringComparison.Ordinal);
        if (at < 0 || text.Length > LengthParser.LongestText)
        {
            return RatioParser.TryParse(text, out ratio, out trouble);
        }

        ratio = 0;
        if (!LengthParser.TryParse(text[..at], signed: false, out var fall, out trouble)
            || !LengthParser.TryParse(text[(at + Per.Length)..], signed: false, out var run, out trouble))
        {
            return false;
        }

        if (run <= 0)
        {
            trouble = "the length after \"per\" must be more than nothing";
            return false;
        }

        ratio = fall / run;
        return true;
    }
}
