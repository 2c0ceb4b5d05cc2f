using System;
using System.Linq;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Patterns.Tests.Pieces;

public class MarkPatternTests
{
    [Theory]
    [InlineData(60)]
    [InlineData(150)]
    [InlineData(437)]
    [InlineData(1508)]
    [InlineData(2300)]
    public void At_AnyLength_ReadsUnlikeFromTheTwoEnds(double length)
    {
        foreach (var code in Enumerable.Range(0, 12))
        {
            var marks = MarkPattern.At(length, code, bothWays: false);
            var fromTheOther = marks.Select(at => length - at).Order().ToArray();

            Assert.True(marks.Zip(fromTheOther).Max(pair => Math.Abs(pair.First - pair.Second)) >= 12 * Math.Min(1, length / 150) - 1e-9);
            Assert.All(marks, at => Assert.InRange(at, 0, length));
        }
    }

    [Fact]
    public void At_UnlikeCodes_DifferBySixMillimetresOrInNumber()
    {
        var patterns = Enumerable.Range(0, 18).Select(code => MarkPattern.At(800, code, bothWays: false)).ToArray();

        foreach (var (left, i) in patterns.Select((left, i) => (left, i)))
        {
            Assert.All(patterns.Skip(i + 1), right => Assert.True(
                left.Length != right.Length || left.Zip(right).Max(pair => Math.Abs(pair.First - pair.Second)) >= 6 - 1e-9));
        }
    }

    [Fact]
    public void At_BothWays_ReadsAlikeFromTheTwoEnds()
    {
        var marks = MarkPattern.At(1000, 3, bothWays: true);

        Assert.All(marks.Zip(marks.Select(at => 1000 - at).Order()), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
    }

    [Fact]
    public void At_LongSeam_HasMainNotchesAtMost300Apart()
    {
        // Common practice, no source: 300 mm on long seams, at least one between hubs.
        var marks = MarkPattern.At(1508.436, 0, bothWays: false);

        Assert.Equal(1508.436 / 6, marks.Skip(1).Zip(marks.Skip(2)).Max(pair => pair.Second - pair.First), 1e-9);
        Assert.Empty(MarkPattern.At(19, 0, bothWays: false));
    }

    [Theory]
    [InlineData(25)]
    [InlineData(149.9)]
    [InlineData(740.683)]
    [InlineData(2600)]
    public void At_HundredsOfPatterns_StayOnTheSeam(double length)
    {
        // A frame measured hub by hub may have a pattern for each of its struts.
        for (var code = 0; code < 2000; code++)
        {
            Assert.All(MarkPattern.At(length, code, bothWays: true), at => Assert.InRange(at, 0.5, length - 0.5));
        }
    }
}
