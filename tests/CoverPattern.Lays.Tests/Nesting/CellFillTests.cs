using System;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Lays.Nesting.Search;

namespace CoverPattern.Lays.Tests.Nesting;

/// <summary>Repeated cells: rows of known lattices are met or beaten, and every lay is proved.</summary>
public sealed class CellFillTests
{
    [Fact]
    public void Fill_Triangles_AreAsShortAsTheLattice()
    {
        // A triangle and its half turn tile [Fary 1950, from memory]: two rows of 300 on 600 mm, 60 triangles of base 400 without spacing:
        // 30 in a row, which ends after 400 + 29 x 200 = 6200 mm.
        var task = Task(600, 0, 60, [new(0, 0), new(400, 0), new(200, 300)]);

        AssertNoLongerThan(task, 6200);
    }

    [Fact]
    public void Fill_Trapezoids_AreAsShortAsTheLattice()
    {
        // A trapezoid and its half turn make a parallelogram: 500 + 300 for two; 24 in a row end after 12 x 800 less nothing but the slant, 100.
        var task = Task(400, 0, 48, [new(0, 0), new(500, 0), new(400, 200), new(100, 200)]);

        AssertNoLongerThan(task, (12 * 800) + 100);
    }

    [Fact]
    public void Fill_Hexagons_BeatRows()
    {
        // Regular hexagons tile as a lattice (every point-symmetric hexagon does): corners up, rows half a width apart interlock, pitch 1.5 edges.
        // Three such rows of edge 100 need 200 + 2 x 150 = 500 mm; as bands of their own only two, each of about 20, go on 510 mm. So rows take
        // about 20 x 173.2 mm, and 13, 14 and 13 interlocked 14 x 173.2: a quarter less.
        var edge = 100.0;
        var half = edge * Math.Sqrt(3) / 2;
        var task = Task(510, 0, 40, [new(0, -edge), new(half, -edge / 2), new(half, edge / 2), new(0, edge), new(-half, edge / 2), new(-half, -edge / 2)]);

        var rows = RowFill.Fill(task);
        var cells = CellFill.Fill(task, CancellationToken.None)!;

        Assert.Empty(LayoutCheck.Check(task, cells));
        Assert.InRange(rows.Length, 18 * 2 * half, 20 * 2 * half);
        Assert.InRange(cells.Length, (14 * 2 * half) - 0.1, 15 * 2 * half);
    }

    [Fact]
    public void Find_PairOfPentagonsOnAWideRoundStrip_IsNoDenserThanTheirLattice()
    {
        // The densest double lattice of regular pentagons fills (5 - sqrt 5) / 3 = 92.13 % [Kuperberg Kuperberg 1990, from memory].
        // On a strip whose edges cut no pattern short a lay can only be less dense than the plane.
        ImmutableArray<Point2> pentagon = [.. Enumerable.Range(0, 5).Select(k => Grid.Snap(new Point2(100 * Math.Sin(k * -0.4 * Math.PI), 100 * Math.Cos(k * -0.4 * Math.PI))))];
        var task = new NestingTask(1000, 0, [new NestingItem(pentagon, [], 12, AllowedTurns.HalfTurn)], Effort: 3, Seed: 1);

        var cell = StripSearch.Find(task, new SearchOptions { IsRound = true }, CancellationToken.None);

        var density = 12 * Rings.SignedArea(pentagon) / (1000 * cell.Length);
        Assert.InRange(density, 0.7, (5 - Math.Sqrt(5)) / 3);
        AssertRepeats(task, cell);
    }

    [Fact]
    public void Fill_MixedKindsWithSpacing_RepeatAndAreProved()
    {
        // The triangles of a 3V 5/8 frame, two to five: cells of seven repeat fifteen times.
        var task = Outlines.Dome(2500, 1800, AllowedTurns.HalfTurn) with { Effort = 1 };

        var cells = CellFill.Fill(task, CancellationToken.None)!;

        Assert.Empty(LayoutCheck.Check(task, cells));
        Assert.True(cells.Length <= RowFill.Fill(task).Length, $"{cells.Length}");
    }

    [Fact]
    public void Fill_TooFewCopies_HasNoCells() =>
        Assert.Null(CellFill.Fill(Task(600, 0, 3, [new(0, 0), new(400, 0), new(200, 300)]), CancellationToken.None));

    [Fact]
    public void Fill_SameTask_GivesTheSameLay()
    {
        var task = Task(500, 3, 20, [new(0, 0), new(300, 0), new(250, 90), new(120, 60), new(90, 200)]);

        var (first, second) = (CellFill.Fill(task, CancellationToken.None)!, CellFill.Fill(task, CancellationToken.None)!);

        Assert.Equal(first.Length, second.Length);
        Assert.True(first.Placements.SequenceEqual(second.Placements));
        Assert.Empty(LayoutCheck.Check(task, first));
    }

    private static void AssertNoLongerThan(NestingTask task, double lattice)
    {
        var (cells, rows) = (CellFill.Fill(task, CancellationToken.None)!, RowFill.Fill(task));

        Assert.Empty(LayoutCheck.Check(task, cells));
        Assert.True(rows.Length <= lattice + 0.01, $"rows {rows.Length}, lattice {lattice}");
        // The pattern is the lattice; its ragged end, where the last copies are filled in, may take a copy's length.
        Assert.InRange(cells.Length, 0, lattice + Rings.Bounds(task.Items[0].Outline).Width);
    }

    /// <summary>Three repeats laid out one after the other overlap nowhere.</summary>
    private static void AssertRepeats(NestingTask task, NestingLayout cell)
    {
        var low = cell.Placements.Min(place => Rings.Bounds(place.Apply(task.Items[place.Item].Outline)).Low.X);
        ImmutableArray<NestingPlacement> three = [.. Enumerable.Range(0, 3).SelectMany(repeat => cell.Placements.Select(place => place with { Shift = place.Shift + new Point2((repeat * cell.Length) - low, 0) }))];
        var thrice = task with { Items = [task.Items[0] with { Quantity = 36 }] };
        var layout = new NestingLayout(three.Max(place => Rings.Bounds(place.Apply(task.Items[0].Outline)).High.X), three, "three");
        Assert.Empty(LayoutCheck.Check(thrice, layout));
    }

    private static NestingTask Task(double width, double spacing, int copies, ImmutableArray<Point2> outline) =>
        new(width, spacing, [new NestingItem(Grid.Snap(outline), [], copies, AllowedTurns.HalfTurn)], Effort: 3, Seed: 1);
}
