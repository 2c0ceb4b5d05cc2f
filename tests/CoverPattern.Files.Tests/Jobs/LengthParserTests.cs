using System;
using System.Globalization;
using System.Text.RegularExpressions;
using CoverPattern.Files.Jobs;
using CsCheck;

namespace CoverPattern.Files.Tests.Jobs;

public sealed class LengthParserTests
{
    private static readonly Regex Form = new(LengthParser.Pattern, RegexOptions.CultureInvariant, Regex.InfiniteMatchTimeout);

    // Expected by hand: 1 in = 25.4 mm, 1 ft = 12 in, exact by definition.
    [Theory]
    [InlineData("24 ft", 7315.2)]
    [InlineData("24ft", 7315.2)]
    [InlineData("24'", 7315.2)]
    [InlineData("12' 6\"", 3810)]
    [InlineData("12'6\"", 3810)]
    [InlineData("12' 6.5\"", 3822.7)]
    [InlineData("1 1/2 in", 38.1)]
    [InlineData("1 1/2\"", 38.1)]
    [InlineData("1/16 in", 1.5875)]
    [InlineData("21/32 in", 16.66875)]
    [InlineData("5 ft 3 1/4 in", 1606.55)]
    [InlineData("5 ft 1/4 in", 1530.35)]
    [InlineData("2 1/2 ft", 762)]
    [InlineData("38 mm", 38)]
    [InlineData("2,5 cm", 25)]
    [InlineData("2.5 cm", 25)]
    [InlineData("3 m", 3000)]
    [InlineData("0.1 mm", 0.1)]
    [InlineData(" 38  mm ", 38)]
    [InlineData("1,500 mm", 1.5)]
    [InlineData("0 in", 0)]
    public void TryParse_WordsOfTheShop_GivesMillimetres(string text, double expected)
    {
        var isLength = LengthParser.TryParse(text, signed: false, out var millimetres, out var trouble);

        Assert.True(isLength, trouble);
        Assert.Equal(expected, millimetres);
        Assert.Matches(Form, text);
    }

    [Theory]
    [InlineData("", "a number is missing")]
    [InlineData("24", "a unit is missing")]
    [InlineData("24 yd", "\"yd\" does not begin with a unit: mm")]
    [InlineData("ft", "a number is missing")]
    [InlineData("1 e3 mm", "\"e3 mm\" does not begin with a unit")]
    [InlineData("1e3 mm", "\"e3 mm\" does not begin with a unit")]
    [InlineData("NaN", "a number is missing")]
    [InlineData("Infinity mm", "a number is missing")]
    [InlineData("1.500,0 mm", "\",0 mm\" does not begin with a unit")]
    [InlineData("1'500 mm", "inches after feet need")]
    [InlineData("1 500 mm", "\"500 mm\" does not begin with a unit")]
    [InlineData(".5 in", "a number is missing")]
    [InlineData("5. in", "a number is missing")]
    [InlineData("-3 mm", "a sign is not allowed here")]
    [InlineData("+3 mm", "a sign is not allowed here")]
    [InlineData("1 1/2 mm", "fractions go with feet and inches only")]
    [InlineData("3/2 in", "a fraction must be proper")]
    [InlineData("1/0 in", "a fraction must be proper")]
    [InlineData("1 0/4 in", "a fraction must be proper")]
    [InlineData("1/128 in", "a fraction must be proper")]
    [InlineData("5 ft 12 in", "inches after feet must be under 12")]
    [InlineData("5.5 ft 3 in", "feet before inches must be whole")]
    [InlineData("5 ft 3", "inches after feet need")]
    [InlineData("5 ft 30 mm", "inches after feet need")]
    [InlineData("3 m 20 cm", "\" 20 cm\" is not understood")]
    [InlineData("3 MM", "\"MM\" does not begin with a unit")]
    [InlineData("3 minutes", "\"inutes\" is not understood")]
    [InlineData("٣ mm", "a number is missing")]
    [InlineData("1234567890 mm", "too many digits")]
    [InlineData("38 mm\n", "\"\n\" is not understood")]
    [InlineData("0000000000000000000000000000000000000001 mm", "too long")]
    public void TryParse_AnythingElse_SaysWhatIsWrong(string text, string expected)
    {
        var isLength = LengthParser.TryParse(text, signed: false, out var millimetres, out var trouble);

        Assert.False(isLength);
        Assert.Equal(0, millimetres);
        Assert.StartsWith(expected, trouble, StringComparison.Ordinal);
    }

    [Fact]
    public void TryParse_SignAllowed_BindsTheWholeLength()
    {
        Assert.True(LengthParser.TryParse("-5 ft 3 1/4 in", signed: true, out var millimetres, out _));

        // By hand: 63.25 in.
        Assert.Equal(-1606.55, millimetres);
    }

    // The oracle reads with the invariant culture; it is wrong on "2,5 cm" and lost on "1 1/2 in", so those are left out.
    [Fact]
    public void TryParse_RandomDecimals_AgreesWithUnitsNet() =>
        Gen.Select(Gen.Int[0, 99_999], Gen.Int[0, 999], Gen.OneOf("mm", "cm", "m", "in", "ft")).Sample((whole, thousandths, unit) =>
        {
            var text = FormattableString.Invariant($"{whole}.{thousandths:000} {unit}");

            Assert.True(LengthParser.TryParse(text, signed: false, out var millimetres, out _));

            var expected = UnitsNet.Length.Parse(text, CultureInfo.InvariantCulture).Millimeters;
            Assert.Equal(expected, millimetres, 1e-12 * Math.Max(1, expected));
        });

    [Fact]
    public void TryParse_RandomFeetAndInches_AgreesWithUnitsNet() =>
        Gen.Select(Gen.Int[0, 400], Gen.Int[0, 11]).Sample((feet, inches) =>
        {
            Assert.True(LengthParser.TryParse(FormattableString.Invariant($"{feet}' {inches}\""), signed: false, out var millimetres, out _));

            Assert.Equal(UnitsNet.Length.FromFeetInches(feet, inches).Millimeters, millimetres, 1e-9);
        });

    [Fact]
    public void TryParse_RandomSigns_AcceptsOnlyWhatThePatternAllows() =>
        Gen.Char["0123456789 ./,'\"mcinft"].Array[0, 14].Sample(
            characters =>
            {
                var text = new string(characters);

                var isLength = LengthParser.TryParse(text, signed: false, out _, out var trouble);

                // The pattern cannot reckon: only sums may be refused against it.
                var isSum = trouble.StartsWith("a fraction must be proper", StringComparison.Ordinal)
                    || trouble.StartsWith("inches after feet must be", StringComparison.Ordinal);
                Assert.Equal(Form.IsMatch(text), isLength || (isSum && Form.IsMatch(text)));
            },
            iter: 20_000);

    [Fact]
    public void TryParse_NearLengths_AcceptsOnlyWhatThePatternAllows() =>
        Gen.OneOf("1", "12", "1/2", ",", ".", " ", "ft", "in", "'", "\"", "mm", "m", "0").Array[1, 8].Sample(
            parts =>
            {
                var text = string.Concat(parts);

                var isLength = LengthParser.TryParse(text, signed: false, out _, out var trouble);

                var isSum = trouble.StartsWith("a fraction must be proper", StringComparison.Ordinal)
                    || trouble.StartsWith("inches after feet must be", StringComparison.Ordinal);
                Assert.Equal(Form.IsMatch(text), isLength || (isSum && Form.IsMatch(text)));
            },
            iter: 50_000);
}
