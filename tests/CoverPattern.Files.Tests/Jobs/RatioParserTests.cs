using CoverPattern.Files.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

public sealed class RatioParserTests
{
    // By hand: per cent is a hundredth.
    [Theory]
    [InlineData("0.3 %", 0.003)]
    [InlineData("0,3%", 0.003)]
    [InlineData("-1 %", -0.01)]
    [InlineData("+2.5 %", 0.025)]
    [InlineData("0 %", 0)]
    public void TryParse_PerCent_GivesRatio(string text, double expected)
    {
        Assert.True(RatioParser.TryParse(text, out var ratio, out var trouble), trouble);

        Assert.Equal(expected, ratio);
        Assert.Matches(RatioParser.Pattern, text);
    }

    [Theory]
    [InlineData("0.3", "a per cent sign is missing")]
    [InlineData("1/2 %", "no ratio")]
    [InlineData("0.3 % or so", "no ratio")]
    [InlineData("%", "no ratio")]
    [InlineData("", "no ratio")]
    [InlineData("--1 %", "no ratio")]
    public void TryParse_AnythingElse_SaysWhatIsWrong(string text, string expected)
    {
        Assert.False(RatioParser.TryParse(text, out var ratio, out var trouble));

        Assert.Equal(0, ratio);
        Assert.Equal(expected, trouble);
        Assert.DoesNotMatch(RatioParser.Pattern, text);
    }
}
