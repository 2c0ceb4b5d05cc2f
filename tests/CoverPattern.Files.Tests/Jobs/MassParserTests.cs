using System.Globalization;
using CoverPattern.Files.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

public sealed class MassParserTests
{
    [Theory]
    [InlineData("610 g/m2", 610)]
    [InlineData("610g/m²", 610)]
    [InlineData("297,5 g/m2", 297.5)]
    // 1 oz/yd2 = 28.349523125 g / 0.83612736 m2 = 33.90574748 g/m2, exact by definition; times 18.
    [InlineData("18 oz/yd2", 610.3034546)]
    public void TryParse_WordsOfTheShop_GivesGramsPerSquareMetre(string text, double expected)
    {
        Assert.True(MassParser.TryParse(text, out var grams, out var trouble), trouble);

        Assert.Equal(expected, grams, 6);
        Assert.Matches(MassParser.Pattern, text);
    }

    [Fact]
    public void TryParse_OuncesPerSquareYard_AgreesWithUnitsNet()
    {
        Assert.True(MassParser.TryParse("1 oz/yd2", out var grams, out _));

        var oracle = UnitsNet.Mass.Parse("1 oz", CultureInfo.InvariantCulture).Grams / UnitsNet.Area.FromSquareYards(1).SquareMeters;
        Assert.Equal(oracle, grams, 9);
    }

    [Theory]
    [InlineData("610", "a unit is missing: g/m2 or oz/yd2")]
    [InlineData("18 oz", "no mass")]
    [InlineData("-18 oz/yd2", "no mass")]
    [InlineData("1/2 oz/yd2", "no mass")]
    [InlineData("heavy", "no mass")]
    public void TryParse_AnythingElse_SaysWhatIsWrong(string text, string expected)
    {
        Assert.False(MassParser.TryParse(text, out var grams, out var trouble));

        Assert.Equal(0, grams);
        Assert.Equal(expected, trouble);
        Assert.DoesNotMatch(MassParser.Pattern, text);
    }
}
