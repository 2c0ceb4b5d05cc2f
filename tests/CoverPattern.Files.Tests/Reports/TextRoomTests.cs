using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Reports;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Tests.Reports;

/// <summary>Names in outlines that an opening has bitten into, and in those of many corners.</summary>
public class TextRoomTests
{
    private static readonly FigureText Wish = new("facet", "F2.05", default, 2.6, 0, TextAnchor.Middle);

    [Fact]
    public void Fit_OutlineNoPointOfWhichSeesAllOfIt_NameIsWrittenInside()
    {
        // A facet with a bite from below that leaves two legs and a bar: the bar has room for the name.
        ImmutableArray<Point2> bitten = [new(0, 0), new(10, 0), new(10, 20), new(40, 20), new(40, 0), new(50, 0), new(50, 32), new(0, 32)];

        var text = TextRoom.Fit(bitten, Wish, 1.3);

        Assert.NotNull(text);
        Assert.All(text.Box(), corner => Assert.True(corner.Y is > 20 and < 32 && corner.X is > 0 and < 50));
    }

    [Fact]
    public void Fit_RoundOutline_TriesFewTurnsWhateverItsCorners()
    {
        ImmutableArray<Point2> Circle(int corners) => [.. Enumerable.Range(0, corners).Select(i => 15 * new Point2(Math.Cos(2 * Math.PI * i / corners), Math.Sin(2 * Math.PI * i / corners)))];

        var text = TextRoom.Fit(Circle(720), Wish, 1.3);

        Assert.Equal(2.6, text!.Height);
        Assert.All(text.Box(), corner => Assert.True(Point2.Distance(corner, default) < 15));

        // Edges of a twentieth of the way round at most have no turn of their own; that of the whole is none.
        Assert.Equal([0], TextRoom.Turns(Circle(720)));
        Assert.Equal(4, TextRoom.Turns([new(0, 0), new(40, 3), new(38, 30), new(1, 20)]).Count() - 1);
    }
}
