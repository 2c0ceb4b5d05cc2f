using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Models;

/// <summary>Puts outlines on as few sheets of paper as a plain method finds: largest first, each at the lowest free place of the first sheet that has one.</summary>
internal sealed class SheetPacker(int width, int height)
{
    // Places tried are this far apart, millimetres.
    private const int Step = 2;
    private const int LongestEdges = 4;

    private readonly List<PaperSheet> sheets = [];
    private readonly Dictionary<(string Shape, int Sheet), int> failures = [];

    /// <summary>Number of sheets used.</summary>
    internal int Count => sheets.Count(sheet => sheet.Pieces > 0);

    /// <summary>Places an outline.</summary>
    /// <param name="shape">Name of the shape; equal shapes have equal names.</param>
    /// <param name="turns">The ways in which it may lie, from <see cref="Turns"/>.</param>
    /// <returns>Number of the sheet from 0, and the map to it; null when no sheet is large enough.</returns>
    internal (int Sheet, RigidMap Map)? Place(string shape, ImmutableArray<Turn> turns)
    {
        ImmutableArray<Way> ways = [.. turns.Select(turn => new Way(turn, width))];
        for (var i = 0; i <= sheets.Count; i++)
        {
            if (i == sheets.Count)
            {
                sheets.Add(new PaperSheet(width, height));
            }

            var sheet = sheets[i];
            if (sheet.Free < turns[0].Cells.Count || failures.GetValueOrDefault((shape, i), -1) == sheet.Pieces)
            {
                continue;
            }

            if (Lowest(sheet, ways) is { } found)
            {
                sheet.Take(found.Way.At(found.X, sheet), found.Y);
                return (i, found.Way.Turn.Map with { Shift = found.Way.Turn.Map.Shift + new Point2(found.X, found.Y) });
            }

            failures[(shape, i)] = sheet.Pieces;
            if (sheet.Pieces == 0)
            {
                return null;
            }
        }

        return null;
    }

    /// <summary>The ways in which an outline is tried: each of its longest edges along each side of the sheet.</summary>
    /// <param name="outline">The outline whose edges count.</param>
    /// <param name="rings">All that takes room.</param>
    internal static ImmutableArray<Turn> Turns(ImmutableArray<Point2> outline, ImmutableArray<ImmutableArray<Point2>> rings) =>
        [.. Degrees(outline).Select(degrees => Turned(degrees, rings)).Select(way => new Turn(way.Map, CellMask.Of(way.Rings)))];

    /// <summary>How many cells wide and high an outline is in each of the ways in which it is tried.</summary>
    /// <param name="outline">The outline whose edges count.</param>
    /// <param name="rings">All that takes room.</param>
    internal static IEnumerable<(int Width, int Height)> Sizes(ImmutableArray<Point2> outline, ImmutableArray<ImmutableArray<Point2>> rings) =>
        Degrees(outline).Select(degrees => CellMask.Size(Rings.Bounds(Turned(degrees, rings).Rings.SelectMany(ring => ring))));

    private static IEnumerable<double> Degrees(ImmutableArray<Point2> outline)
    {
        var edges = outline.Select((corner, i) => outline[(i + 1) % outline.Length] - corner).OrderByDescending(edge => edge.Length).Take(LongestEdges);
        var degrees = edges.SelectMany(edge => Enumerable.Range(0, 4).Select(i => (90 * i) - (Math.Atan2(edge.Y, edge.X) * 180 / Math.PI)));
        return degrees.Select(turn => Math.Round(((turn % 360) + 360) % 360, 3)).Distinct().Order();
    }

    private static (RigidMap Map, ImmutableArray<ImmutableArray<Point2>> Rings) Turned(double degrees, ImmutableArray<ImmutableArray<Point2>> rings)
    {
        var turn = RigidMap.FromDegrees(degrees, default, mirrored: false);
        ImmutableArray<ImmutableArray<Point2>> turned = [.. rings.Select(ring => turn.Apply(ring))];
        return (turn with { Shift = default(Point2) - Rings.Bounds(turned.SelectMany(ring => ring)).Low }, turned);
    }

    private static (Way Way, int X, int Y)? Lowest(PaperSheet sheet, ImmutableArray<Way> ways)
    {
        var best = (Way: default(Way), X: 0, Y: 0, Top: int.MaxValue);
        foreach (var tried in ways.Where(way => way.Turn.Core.Side <= sheet.LargestSquare))
        {
            var cells = tried.Turn.Cells;
            for (var x = 0; x + cells.Width <= sheet.Width; x += Step)
            {
                for (var y = 0; y + cells.Height <= sheet.Height && (y + cells.Height, x).CompareTo((best.Top, best.X)) < 0; y += Step)
                {
                    if (sheet.MayHold(tried.Turn.Core, x, y) && sheet.IsFree(tried.At(x, sheet), y))
                    {
                        best = (tried, x, y, y + cells.Height);
                    }
                }
            }
        }

        return best.Way is { } way ? (way, best.X, best.Y) : null;
    }

    /// <summary>A turn while one outline is placed: its cells moved right, made once for all sheets.</summary>
    private sealed class Way(Turn turn, int width)
    {
        private readonly CellMask?[] moved = new CellMask?[Math.Max(0, ((width - turn.Cells.Width) / Step) + 1)];

        internal Turn Turn => turn;

        internal CellMask At(int x, PaperSheet sheet) => moved[x / Step] ??= turn.Cells.MovedRight(x, sheet.WordsPerRow);
    }

    /// <summary>One way in which an outline may lie.</summary>
    /// <param name="Map">Turns it and moves its box to the corner.</param>
    /// <param name="Cells">What it then takes.</param>
    internal sealed record Turn(RigidMap Map, CellMask Cells)
    {
        /// <summary>The largest square of cells in it.</summary>
        internal CellSquare Core { get; } = CellSquare.In(Cells);
    }
}
