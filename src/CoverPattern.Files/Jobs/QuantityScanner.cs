using System;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Files.Jobs;

/// <summary>Walks once along the words of a quantity; digits are 0 to 9 alone, whatever the culture.</summary>
internal sealed class QuantityScanner
{
    private const int MostDigits = 9;
    private const int SmallestDenominator = 2;
    private const int LargestDenominator = 64;
    private readonly string text;
    private int at;

    internal QuantityScanner(string text) => this.text = text;

    /// <summary>Why the words are refused; empty so far.</summary>
    internal string Trouble { get; private set; } = "";

    internal bool AtEnd => at == text.Length;

    /// <summary>What has not been walked over.</summary>
    internal string Rest => text[at..];

    /// <summary>Notes why the words are refused; the first reason stands.</summary>
    internal decimal? Refuse(string trouble)
    {
        Trouble = Trouble.Length > 0 ? Trouble : trouble;
        return null;
    }

    internal char? TakeSign() => !AtEnd && text[at] is '-' or '+' ? text[at++] : null;

    internal void SkipSpaces()
    {
        while (!AtEnd && text[at] == ' ')
        {
            at++;
        }
    }

    /// <summary>The first of the units that stands here, longest first in the list; null when none does.</summary>
    internal string? TakeUnit(params string[] units)
    {
        var unit = units.FirstOrDefault(candidate => text.AsSpan(at).StartsWith(candidate, StringComparison.Ordinal));
        at += unit?.Length ?? 0;
        return unit;
    }

    /// <summary>A number: "12", "2.5", "2,5", "1/2" or "1 1/2".</summary>
    internal ScannedNumber? TakeNumber()
    {
        if (TakeDigits() is not { } digits)
        {
            return null;
        }

        if (TakeUnit(".", ",") is not null)
        {
            return TakeDigits() is { } decimals ? new ScannedNumber(Number(digits + "." + decimals), false, false) : null;
        }

        if (TakeUnit("/") is not null)
        {
            return TakeDenominator(0, digits);
        }

        return TakeFractionAfter(Number(digits));
    }

    /// <summary>After "1" looks for " 1/2"; steps back when no fraction follows.</summary>
    private ScannedNumber? TakeFractionAfter(decimal whole)
    {
        var back = at;
        SkipSpaces();
        if (at > back && CountDigits() is > 0 and var count && at + count < text.Length && text[at + count] == '/')
        {
            var numerator = TakeDigits();
            at++;
            return numerator is null ? null : TakeDenominator(whole, numerator);
        }

        at = back;
        return new ScannedNumber(whole, true, false);
    }

    private ScannedNumber? TakeDenominator(decimal whole, string numerator)
    {
        if (TakeDigits() is not { } digits)
        {
            return null;
        }

        var (parts, of) = (Number(numerator), Number(digits));
        if (of is < SmallestDenominator or > LargestDenominator || parts == 0 || parts >= of || numerator.Length > 2 || digits.Length > 2)
        {
            Refuse("a fraction must be proper, in halves to sixty-fourths");
            return null;
        }

        return new ScannedNumber(whole + (parts / of), false, true);
    }

    private string? TakeDigits()
    {
        var count = CountDigits();
        if (count is 0 or > MostDigits)
        {
            Refuse(count == 0 ? "a number is missing" : "too many digits");
            return null;
        }

        at += count;
        return text.Substring(at - count, count);
    }

    private int CountDigits() => text.Skip(at).TakeWhile(char.IsAsciiDigit).Count();

    private static decimal Number(string digits) => decimal.Parse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
}
