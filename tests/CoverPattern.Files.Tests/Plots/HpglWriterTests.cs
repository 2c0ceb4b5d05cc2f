using System;
using System.Linq;
using System.Text;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Plots;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Lays.Cutting;

namespace CoverPattern.Files.Tests.Plots;

public class HpglWriterTests
{
    // Half a step of 0.025 mm in each direction.
    private const double Rounding = 0.0125 + 1e-9;

    private static readonly CutPlan Plan = CutPlanner.Plan(SamplePieces.Lay, SamplePieces.Set, PlotMarks.Of(SamplePieces.Lay, SamplePieces.Set));

    private static readonly Point2 Size = new(SamplePieces.Lay.LengthMm, SamplePieces.Lay.RollWidthMm);

    [Fact]
    public void Interpreter_TriangleOfTheManual_HasItsSize()
    {
        // HP PCL 5 Technical Reference II, Table 20-20; 62.25 x 37.25 mm follows from the step.
        var line = Assert.Single(HpglInterpreter.Read(Encoding.ASCII.GetBytes("IN;SP1;PA10,10;PD2500,10,10,1500,10,10;")));

        var box = Rings.Bounds(line.Points);
        Assert.Equal((1, 4), (line.Pen, line.Points.Length));
        Assert.Equal(62.25, box.Width, 9);
        Assert.Equal(37.25, box.Height, 9);
    }

    [Theory]
    [InlineData(PlotOrigin.Corner, MarkedSide.Up, PenMoves.Absolute)]
    [InlineData(PlotOrigin.Centre, MarkedSide.Up, PenMoves.Absolute)]
    [InlineData(PlotOrigin.Corner, MarkedSide.Table, PenMoves.Absolute)]
    [InlineData(PlotOrigin.Corner, MarkedSide.Up, PenMoves.Relative)]
    [InlineData(PlotOrigin.Centre, MarkedSide.Table, PenMoves.Relative)]
    public void Write_Lay_ComesBackStrokeByStroke(PlotOrigin origin, MarkedSide marks, PenMoves moves)
    {
        var machine = new PlotMachine(marks, 1, 2, 3, origin, moves, IsSixteenBit: moves == PenMoves.Relative);

        var read = HpglInterpreter.Read(HpglWriter.Write("lay", Plan.Strokes, Size, machine));

        Point2 Expected(Point2 point) => (marks == MarkedSide.Table ? new Point2(point.X, Size.Y - point.Y) : point)
            - (origin == PlotOrigin.Centre ? Point2.Between(default, Size, 0.5) : default);
        var parted = moves == PenMoves.Relative ? Plan.Strokes.Sum(PartsMore) : 0;
        Assert.Equal(Plan.Strokes.Select(stroke => stroke.Points.Length).Sum() + parted, read.Sum(line => line.Points.Length) + (Plan.Strokes.Length - read.Count));
        var points = read.SelectMany(line => line.Points).ToArray();
        foreach (var stroke in Plan.Strokes)
        {
            Assert.All(stroke.Points, point => Assert.Contains(points, read => Math.Abs(read.X - Expected(point).X) <= Rounding && Math.Abs(read.Y - Expected(point).Y) <= Rounding));
        }
    }

    [Theory]
    // By hand: n dashes and n - 1 gaps of 15 mm fill the length; n is the length and a gap over 45 mm, rounded.
    [InlineData(1500, 34)]
    [InlineData(90, 2)]
    [InlineData(52, 1)]
    public void BrokenLines_Fold_DashesFillItFromEndToEnd(double length, int count)
    {
        var fold = new Stroke("P1", StrokeUse.Draw, DrawingLayers.Fold.Purpose, [new Point2(100, 50), new Point2(100 + (0.6 * length), 50 + (0.8 * length))]);

        var dashes = BrokenLines.Of(fold).ToArray();

        Assert.Equal(count, dashes.Length);
        Assert.Equal((fold.Start, 0), (dashes[0].Start, Math.Round(Point2.Distance(fold.End, dashes[^1].End), 9)));
        Assert.Equal(length - (15 * (count - 1)), dashes.Sum(dash => dash.Length), 1e-9);
        Assert.All(dashes.Zip(dashes.Skip(1)), pair => Assert.Equal(15, Point2.Distance(pair.First.End, pair.Second.Start), 1e-9));
        Assert.Equal(fold.Points, Assert.Single(BrokenLines.Of(fold with { Purpose = DrawingLayers.Sew.Purpose })).Points);
    }

    [Fact]
    public void Write_Lay_FoldsAreBrokenAndSewLinesWhole()
    {
        var folds = Plan.Strokes.Where(stroke => stroke.Purpose == DrawingLayers.Fold.Purpose).ToArray();

        var read = HpglInterpreter.Read(HpglPlots.Write(SamplePieces.Set, [SamplePieces.Lay], new PlotWish(new PlotMachine(MarkedSide.Up), null))["lay-canvas.plt"]);

        Assert.NotEmpty(folds);
        foreach (var fold in folds)
        {
            var on = read.Where(line => line.Pen == 1 && line.Points.All(point => Segments.Distance(fold.Start, fold.End, point) <= 2 * Rounding)).ToArray();
            Assert.True(on.Length > 1);
            Assert.InRange(on.Sum(line => Point2.Distance(line.Points[0], line.Points[^1])) / fold.Length, 0.6, 0.75);
        }
    }

    [Fact]
    public void Write_Uses_EachTheirPen()
    {
        var read = HpglInterpreter.Read(HpglWriter.Write("lay", Plan.Strokes, Size, new PlotMachine(MarkedSide.Up, 4, 5, 6)));

        double Drawn(int pen) => read.Where(line => line.Pen == pen).Sum(line => line.Points.Zip(line.Points.Skip(1)).Sum(step => Point2.Distance(step.First, step.Second)));
        Assert.Equal(Plan.DrawnMm, Drawn(4), Plan.DrawnMm * 1e-3);
        Assert.Equal(Plan.CutMm, Drawn(5) + Drawn(6), Plan.CutMm * 1e-3);
        Assert.True(Drawn(6) > Drawn(5));
    }

    [Fact]
    public void Write_SixteenBitMachineAndLongLay_SaysHowFarItReaches()
    {
        var fault = Assert.Throws<PlotTooLargeException>(() => HpglWriter.Write("lay-canvas", Plan.Strokes, Size, new PlotMachine(MarkedSide.Up, IsSixteenBit: true)));

        // 32,767 steps of 0.025 mm.
        Assert.Contains("819.175", fault.Message, StringComparison.Ordinal);
        Assert.Equal("lay-canvas", fault.Label);
    }

    // Twice 32,767 steps of 0.025 mm are 1638.35 mm.
    [Theory]
    [InlineData(5000, 1600, PlotOrigin.Corner, "Put the origin in the centre and plot sections of at most 1638 mm, or use relative moves.")]
    [InlineData(5000, 1600, PlotOrigin.Centre, "mm. Plot sections of at most 1638 mm, or use relative moves.")]
    [InlineData(1500, 2050, PlotOrigin.Centre, "The roll is 2050 mm wide, too wide from any origin: use relative moves.")]
    public void Write_BeyondSixteenBits_NamesWhatHelps(double length, double width, PlotOrigin origin, string wayOut)
    {
        var stroke = new Stroke("P1", StrokeUse.Draw, "line", [new Point2(0, 0), new Point2(length, width)]);

        var fault = Assert.Throws<PlotTooLargeException>(() => HpglWriter.Write("lay", [stroke], new Point2(length, width), new PlotMachine(MarkedSide.Up, Origin: origin, IsSixteenBit: true)));

        Assert.EndsWith(wayOut, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_RelativeMoves_HoldNoNumberBeyondSixteenBits()
    {
        // 50 m along a roll of 3 m, there and back: 2,000,000 and 120,000 steps.
        var stroke = new Stroke("P1", StrokeUse.Outline, "line", [new Point2(0.01, 0), new Point2(50_000, 3000), new Point2(0.03, 0.03)]);

        var plot = HpglWriter.Write("line", [stroke], new Point2(50_000, 3000), new PlotMachine(MarkedSide.Up, Moves: PenMoves.Relative, IsSixteenBit: true));

        var numbers = Encoding.ASCII.GetString(plot).Split([';', ',', '\n', 'P', 'D', 'U', 'R', 'A', 'S', 'I', 'N'], StringSplitOptions.RemoveEmptyEntries).Select(long.Parse);
        Assert.All(numbers, number => Assert.InRange(number, -32_768, 32_767));
        var line = Assert.Single(HpglInterpreter.Read(plot));
        Assert.Equal(new Point2(0, 0), line.Points[0]);
        Assert.Contains(new Point2(50_000, 3000), line.Points);
        Assert.Equal(new Point2(0.025, 0.025), line.Points[^1]);
    }

    [Fact]
    public void Write_MetreAndRoll_AreWholeSteps()
    {
        var stroke = new Stroke("P1", StrokeUse.Draw, "line", [new Point2(300, 0), new Point2(1000, 1520)]);

        var text = Encoding.ASCII.GetString(HpglWriter.Write("line", [stroke], new Point2(1000, 1520), new PlotMachine(MarkedSide.Up)));

        // 300 mm = 12,000 steps, 1 m = 40,000, 1520 mm = 60,800: by hand.
        Assert.Contains("PU12000,0;\nPD40000,60800;", text, StringComparison.Ordinal);
    }

    /// <summary>Ends that a pen sets between because a move is longer than 32,767 steps either way.</summary>
    private static int PartsMore(Stroke stroke) => stroke.Points.Zip(stroke.Points.Skip(1)).Sum(move => (int)((Math.Max(Steps(move.First.X, move.Second.X), Steps(move.First.Y, move.Second.Y)) - 1) / 32_767));

    private static double Steps(double from, double to) => Math.Abs(Math.Round(to / 0.025) - Math.Round(from / 0.025));
}
