using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Lays.Nesting.Search;

namespace Bench;

/// <summary>Counts exact collision queries a second on one core: random poses of a piece against a good lay of 60 pieces.</summary>
internal static class CollisionBench
{
    private const int Pieces = 60;
    private const int Kinds = 20;
    private const int Queries = 1_000_000;

    public static int Run(ReadOnlySpan<string> words)
    {
        if (words.Length > 0)
        {
            Console.Error.WriteLine("usage: bench collisions");
            return 1;
        }

        var chance = new Chance(1, 0);
        var items = Enumerable.Range(0, Kinds).Select(_ => RandomItem(chance)).ToImmutableArray();
        var task = new NestingTask(1500, 0, items, 40, 1);
        var layout = StripSearch.Find(task, SearchOptions.None, CancellationToken.None);
        var scene = new SearchScene(task, SearchSettings.Default, SearchOptions.None with { Start = layout });
        var strip = LaidOut(scene, layout);
        var poses = HalfHits(scene, strip, chance);
        var rates = Enumerable.Range(0, 5).Select(_ => Rate(scene, strip, poses)).Order().ToArray();
        var hits = poses.Count(pose => Hits(scene, strip, pose));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{{\"queriesPerSecond\":{rates[2]:F0},\"hits\":{hits / (double)poses.Length:F3},\"pieces\":{Pieces},\"vertices\":\"10-30\"}}"));
        return 0;
    }

    /// <summary>A star-shaped outline of 10 to 30 corners, 100 to 300 mm across.</summary>
    private static NestingItem RandomItem(Chance chance)
    {
        var (corners, size) = (chance.Between(10, 30), chance.Between(60, 150));
        var outline = Enumerable.Range(0, corners).Select(k =>
        {
            var (angle, reach) = (2 * Math.PI * k / corners, size * (0.5 + (0.5 * chance.Unit())));
            return Grid.Snap(new Point2(reach * Math.Cos(angle), reach * Math.Sin(angle)));
        });
        return new NestingItem([.. outline], [], Pieces / Kinds, AllowedTurns.HalfTurn);
    }

    private static Strip LaidOut(SearchScene scene, NestingLayout layout)
    {
        var strip = new Strip(scene) { Length = (int)(layout.Length * Grid.StepsPerMillimetre) };
        for (var i = 0; i < scene.Copies.Length; i++)
        {
            var shift = Grid.ToSteps(layout.Placements[i].Shift);
            strip.Place(i, new Spot(scene.ShapeOf(layout.Placements[i]), (int)shift.X, (int)shift.Y));
        }

        return strip;
    }

    /// <summary>Random poses, on the strip and around it, hits and misses alternating.</summary>
    private static Spot[] HalfHits(SearchScene scene, Strip strip, Chance chance)
    {
        var poses = new List<Spot>();
        while (poses.Count < 100_000)
        {
            var turns = scene.Shapes[chance.Below(scene.Shapes.Length)];
            var spot = new Spot(turns[chance.Below(turns.Length)], chance.Between(-strip.Length / 5, strip.Length * 6 / 5), chance.Between(-strip.Width / 5, strip.Width * 6 / 5));
            if (Hits(scene, strip, spot) == (poses.Count % 2 == 0))
            {
                poses.Add(spot);
            }
        }

        return [.. poses];
    }

    private static double Rate(SearchScene scene, Strip strip, Spot[] poses)
    {
        var watch = Stopwatch.StartNew();
        for (var k = 0; k < Queries; k++)
        {
            _ = Hits(scene, strip, poses[k % poses.Length]);
        }

        return Queries / watch.Elapsed.TotalSeconds;
    }

    private static readonly int[] Found = new int[Pieces];

    private static bool Hits(SearchScene scene, Strip strip, in Spot spot)
    {
        var count = strip.Collect(spot.Shape.Box.Moved(spot.X, spot.Y), Found);
        for (var k = 0; k < count; k++)
        {
            var other = Found[k];
            if (scene.Tables.Overlap(spot.Shape, strip.Shapes[other], strip.X[other] - spot.X, strip.Y[other] - spot.Y))
            {
                return true;
            }
        }

        return false;
    }
}
