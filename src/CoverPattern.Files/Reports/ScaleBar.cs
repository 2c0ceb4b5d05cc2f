using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>A bar of a round length with its name, and the scale in words.</summary>
internal static class ScaleBar
{
    private const double Most = 60;
    private const double Tick = 1.2;
    private const double TextHeight = 2;

    private static readonly double[] Lengths = [10_000, 5_000, 2_000, 1_000, 500, 200, 100, 50];

    /// <param name="scale">One to how many.</param>
    /// <param name="at">Its left end, millimetres on paper.</param>
    public static (ImmutableArray<FigureLine> Lines, ImmutableArray<FigureText> Texts) Draw(double scale, Point2 at)
    {
        var length = Lengths.First(length => length / scale <= Most || length == Lengths[^1]);
        var end = at + new Point2(length / scale, 0);
        var name = FormattableString.Invariant($"{(length >= 1000 ? length / 1000 : length):0} {(length >= 1000 ? "m" : "mm")}, scale about 1:{scale:0} when printed on A4");
        return (
            [Straight(at, end), Straight(at, at + new Point2(0, Tick)), Straight(end, end + new Point2(0, Tick))],
            [new FigureText("note", name, end + new Point2(2, 0), TextHeight, 0, TextAnchor.Start)]);
    }

    private static FigureLine Straight(Point2 from, Point2 to) => new("bar", [from, to], IsClosed: false);
}
