using System;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Lays.Nesting.Search;

namespace CoverPattern.Lays.Tests.Nesting;

/// <summary>Cells on round strips reach the double lattices that are known.</summary>
/// <remarks>
/// The edges of a strip cost cloth that the plane does not. Two strips, of two rows and of four, have the same edges: what two rows more
/// take is the plane's share, and that is held against the published density.
/// </remarks>
public sealed class DoubleLatticeTests
{
    // Part by which a cell may be longer than the lattice: contacts on a grid, and a search that ends.
    private const double Slack = 0.001;

    [Fact]
    public void Find_Pentagons_ReachTheirDoubleLattice()
    {
        // (5 - sqrt 5) / 3 = 92.13 % [Kuperberg Kuperberg 1990, from memory].
        var published = (5 - Math.Sqrt(5)) / 3;
        var lattice = DoubleLattice.Densest([.. Enumerable.Range(0, 5).Select(k => new Point2(100 * Math.Sin(k * -0.4 * Math.PI), 100 * Math.Cos(k * -0.4 * Math.PI)))]);
        Assert.Equal(published, lattice.Density, tolerance: 1e-6);

        Assert.InRange(FoundDensity(lattice), published * (1 - Slack), published * (1 + 1e-4));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void Find_AnyConvexOutline_ReachesTheLeastDensityOfAll(int seed)
    {
        // Every convex body has a double lattice of at least sqrt(3) / 2 = 86.6 % [Kuperberg Kuperberg 1990, from memory].
        var lattice = DoubleLattice.Densest(RandomConvex(seed));
        Assert.InRange(lattice.Density, Math.Sqrt(3) / 2, 1 + 1e-9);

        Assert.InRange(FoundDensity(lattice), Math.Sqrt(3) / 2, 1 + 1e-4);
    }

    /// <summary>Area of two rows more against the cloth they take.</summary>
    private static double FoundDensity(DoubleLattice lattice)
    {
        var longer = Math.Max(CellLength(lattice, 2), CellLength(lattice, 4));
        return 2 * lattice.CopiesInARow * lattice.Area / (longer * (lattice.Width(4) - lattice.Width(2)));
    }

    private static double CellLength(DoubleLattice lattice, int rows)
    {
        // Corners go to the grid: a hundredth more across than the rows need.
        var item = new NestingItem(Grid.Snap(lattice.Outline), [], rows * lattice.CopiesInARow, AllowedTurns.HalfTurn);
        var task = new NestingTask(lattice.Width(rows) + 0.01, 0, [item], Effort: 3, Seed: 1);
        return StripSearch.Find(task, new SearchOptions { IsRound = true }, CancellationToken.None).Length;
    }

    /// <summary>Corners on an ellipse at random angles.</summary>
    private static ImmutableArray<Point2> RandomConvex(int seed)
    {
        var random = new Random(seed);
        var (corners, flatness) = (random.Next(3, 12), 0.4 + (0.6 * random.NextDouble()));
        double[] angles = [.. Enumerable.Range(0, corners).Select(k => 2 * Math.PI * (k + (0.8 * random.NextDouble())) / corners)];
        return [.. angles.Select(angle => new Point2(200 * Math.Cos(angle), 200 * flatness * Math.Sin(angle)))];
    }
}
