using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;

namespace CoverPattern.Lays.Tests.Nesting;

public sealed class LayoutCheckTests
{
    // Ten steps of the grid of 2^-10 mm: 0.0098 mm, a little less than a hundredth of a millimetre.
    private const double Hundredth = 10.0 / Grid.StepsPerMillimetre;

    [Fact]
    public void Check_TouchingBoxes_FindsNothing()
    {
        var task = Boxes(spacing: 0);
        var layout = Layout(new(0, 0, new(0, 0)), new(0, 0, new(100, 0)), new(0, 180, new(100, 100)));

        Assert.Empty(LayoutCheck.Check(task, layout with { Length = 200 }));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0, 180)]
    [InlineData(3, 0)]
    public void Check_PlantedOverlapOfAHundredth_IsFound(double spacing, double turn)
    {
        var task = Boxes(spacing);
        var shift = turn == 180 ? new Point2(200 - Hundredth, 50) : new Point2(100 - Hundredth, 0);
        var layout = Layout(new(0, 0, new(0, 0)), new(0, turn, shift), new(0, 0, new(400, 0))) with { Length = 500 };

        var finding = Assert.Single(LayoutCheck.Check(task, layout));

        Assert.Equal((NestingFault.Overlap, 0, 1), (finding.Fault, finding.First, finding.Second));
    }

    [Theory]
    [InlineData(-Hundredth, 0)]
    [InlineData(0, -Hundredth)]
    [InlineData(0, 250 + Hundredth)]
    public void Check_PlantedExcursionOfAHundredth_IsFound(double x, double y)
    {
        var task = Boxes(spacing: 0);
        var layout = Layout(new(0, 0, new(x, y)), new(0, 0, new(200, 0)), new(0, 0, new(400, 0))) with { Length = 500 };

        var finding = Assert.Single(LayoutCheck.Check(task, layout));

        Assert.Equal((NestingFault.Outside, 0), (finding.Fault, finding.First));
    }

    [Theory]
    [InlineData(103, 0)]
    [InlineData(103 - Hundredth, 1)]
    public void Check_Spacing_IsHeldToAThousandth(double x, int faults)
    {
        var task = Boxes(spacing: 3);
        var layout = Layout(new(0, 0, new(0, 0)), new(0, 0, new(x, 0)), new(0, 0, new(400, 0))) with { Length = 500 };

        var findings = LayoutCheck.Check(task, layout);

        Assert.Equal(faults, findings.Length);
        Assert.All(findings, finding => Assert.Equal(NestingFault.TooClose, finding.Fault));
    }

    [Fact]
    public void Check_EqualPlaces_AreAnOverlap()
    {
        var layout = Layout(new(0, 0, new(0, 0)), new(0, 0, new(0, 0)), new(0, 0, new(400, 0))) with { Length = 500 };

        Assert.Equal(NestingFault.Overlap, Assert.Single(LayoutCheck.Check(Boxes(spacing: 0), layout)).Fault);
    }

    [Fact]
    public void Check_ItemInAHole_FindsNothingUntilItTouchesTheRim()
    {
        var hole = Outlines.Box(60, 30).Select(p => p + new Point2(20, 10)).Reverse().ToImmutableArray();
        var frame = new NestingItem(Outlines.Box(100, 50), [hole], 1, AllowedTurns.None);
        var task = new NestingTask(300, 5, [frame, Outlines.Item(Outlines.Box(50, 20), 1, AllowedTurns.None)], 1, 1);
        NestingLayout At(double x) => Layout(new(0, 0, new(0, 0)), new(1, 0, new(x, 15))) with { Length = 100 };

        Assert.Empty(LayoutCheck.Check(task, At(25)));
        Assert.Equal(NestingFault.TooClose, Assert.Single(LayoutCheck.Check(task, At(25 + Hundredth))).Fault);
        Assert.Equal(NestingFault.Overlap, Assert.Single(LayoutCheck.Check(task, At(40))).Fault);
    }

    [Theory]
    [InlineData(false, 1)]
    [InlineData(true, 0)]
    public void Check_MirroredPlacement_IsRefusedUnlessTheItemMayBeMirrored(bool mayMirror, int faults)
    {
        var item = Outlines.Item(Outlines.Box(100, 50), 1, AllowedTurns.None) with { MayMirror = mayMirror };
        var layout = Layout(new NestingPlacement(0, 0, new(0, 50), Mirrored: true)) with { Length = 100 };

        var findings = LayoutCheck.Check(new NestingTask(300, 0, [item], 1, 1), layout);

        Assert.Equal(faults, findings.Length);
        Assert.All(findings, finding => Assert.Equal(NestingFault.WrongFace, finding.Fault));
    }

    [Theory]
    [InlineData(5, true)]
    [InlineData(-5, true)]
    [InlineData(184.9, true)]
    [InlineData(355, true)]
    [InlineData(5.001, false)]
    [InlineData(174.9, false)]
    [InlineData(90, false)]
    public void Check_GrainWithinFiveDegrees_HoldsEitherWayRoundEachTurn(double turn, bool isAllowed)
    {
        var item = Outlines.Item(Outlines.Box(100, 50), 1, AllowedTurns.HalfTurn with { Within = 5 });

        var findings = LayoutCheck.Check(new NestingTask(300, 0, [item], 1, 1), Layout(new NestingPlacement(0, turn, new(150, 150))));

        Assert.Equal(isAllowed, findings.All(finding => finding.Fault != NestingFault.WrongTurn));
    }

    // The area ends at x = 50: touching it is right, a hundredth of a millimetre on it is not, unless the item bears it.
    [Theory]
    [InlineData(50, 0, 0)]
    [InlineData(49.990234375, 0, 1)]
    [InlineData(49.990234375, 1, 1)]
    [InlineData(49.990234375, 2, 0)]
    public void Check_PieceOnFlawedArea_IsFoundUnlessItBearsTheFlaw(double x, int grade, int faults)
    {
        var item = Outlines.Item(Outlines.Box(100, 50), 1, AllowedTurns.None) with { Grade = grade };
        var task = new NestingTask(300, 3, [item], 1, 1) { Flaws = [new FlawedArea(Outlines.Box(50, 300), LeastGrade: 2)] };

        var findings = LayoutCheck.Check(task, Layout(new NestingPlacement(0, 0, new(x, 0))) with { Length = x + 100 });

        Assert.Equal(faults, findings.Length);
        Assert.All(findings, finding => Assert.Equal(NestingFault.OnFlaw, finding.Fault));
    }

    [Fact]
    public void Check_CopyThatWasToStay_IsFoundWhenMoved()
    {
        var task = Boxes(spacing: 0) with { Fixed = [new(0, 0, new(10, 10))] };
        NestingLayout With(double x) => Layout(new(0, 0, new(x, 10)), new(0, 0, new(0, 100)), new(0, 0, new(0, 200))) with { Length = x + 100 };

        Assert.Empty(LayoutCheck.Check(task, With(10)));
        Assert.Equal(NestingFault.Moved, Assert.Single(LayoutCheck.Check(task, With(11))).Fault);
    }

    [Fact]
    public void Check_WrongTurnCountGridAndLength_AreEachFound()
    {
        var layout = Layout(new(0, 90, new(50, 0)), new(0, 0, new(100.0001, 0)), new(7, 0, default)) with { Length = 1 };

        var faults = LayoutCheck.Check(Boxes(spacing: 0), layout).Select(finding => finding.Fault).ToArray();

        Assert.Equal([NestingFault.WrongCount, NestingFault.WrongCount, NestingFault.WrongTurn, NestingFault.OffGrid, NestingFault.WrongLength], faults);
    }

    [Fact]
    public void Check_NowhereOrTooFar_IsFoundNotThrown()
    {
        var layout = Layout(new(0, 0, new(double.NaN, 0)), new(0, 0, new(140_000, 0)), new(0, double.NaN, default)) with { Length = 0 };

        var faults = LayoutCheck.Check(Boxes(spacing: 0), layout).Select(finding => finding.Fault).ToArray();

        Assert.Equal([NestingFault.Outside, NestingFault.Outside, NestingFault.Outside], faults);
    }

    /// <summary>Three boxes of 100 x 50 mm on a strip 300 mm wide.</summary>
    private static NestingTask Boxes(double spacing) =>
        new(300, spacing, [Outlines.Item(Outlines.Box(100, 50), 3, AllowedTurns.HalfTurn)], Effort: 1, Seed: 1);

    private static NestingLayout Layout(params NestingPlacement[] placements) => new(0, [.. placements], "by hand");
}
