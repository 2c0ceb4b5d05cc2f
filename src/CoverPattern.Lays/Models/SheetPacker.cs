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

    private readonly List<(CellMask Cells, int Free, int Version)> sheets = [];
    private readonly Dictionary<(string Shape, int Sheet), int> failures = [];

    /// <summary>Places an outline.</summary>
    /// <param name="shape">Name of the shape; equal shapes have equal names.</param>
    /// <param name="turns">The ways in which it may lie, from <see cref="Turns"/>.</param>
    /// <returns>Number of the sheet from 0, and the map to it; null when no sheet is large enough.</returns>
    internal (int Sheet, RigidMap Map)? Place(string shape, ImmutableArray<Turn> turns)
    {
        for (var i = 0; i <= sheets.Count; i++)
        {
            if (i == sheets.Count)
            {
                sheets.Add((CellMask.Sheet(width, height), width * height, 0));
            }

            var sheet = sheets[i];
            if (sheet.Free < turns[0].Cells.Count || failures.GetValueOrDefault((shape, i), -1) == sheet.Version)
            {
                continue;
            }

            if (Lowest(sheet.Cells, turns) is { } found)
            {
                var moved = found.Turn.Cells.MovedRight(found.X, sheet.Cells.WordsPerRow);
                sheet.Cells.Take(moved, found.Y);
                sheets[i] = (sheet.Cells, (width * height) - sheet.Cells.Count, sheet.Version + 1);
                return (i, found.Turn.Map with { Shift = found.Turn.Map.Shift + new Point2(found.X, found.Y) });
            }

            failures[(shape, i)] = sheet.Version;
            if (sheet.Version == 0)
            {
                return null;
            }
        }

        return null;
    }

    /// <summary>Number of sheets used.</summary>
    internal int Count => sheets.Count(sheet => sheet.Version > 0);

    /// <summary>The ways in which an outline is tried: each of its longest edges along each side of the sheet.</summary>
    /// <param name="outline">The outline whose edges count.</param>
    /// <param name="rings">All that takes room.</param>
    internal static ImmutableArray<Turn> Turns(ImmutableArray<Point2> outline, ImmutableArray<ImmutableArray<Point2>> rings)
    {
        var edges = outline.Select((corner, i) => outline[(i + 1) % outline.Length] - corner).OrderByDescending(edge => edge.Length).Take(LongestEdges);
        var degrees = edges.SelectMany(edge => Enumerable.Range(0, 4).Select(i => (90 * i) - (Math.Atan2(edge.Y, edge.X) * 180 / Math.PI)));
        return [.. degrees.Select(turn => Math.Round(((turn % 360) + 360) % 360, 3)).Distinct().Order().Select(turn => Turned(turn, rings))];
    }

    private static Turn Turned(double degrees, ImmutableArray<ImmutableArray<Point2>> rings)
    {
        var turn = RigidMap.FromDegrees(degrees, default, mirrored: false);
        ImmutableArray<ImmutableArray<Point2>> turned = [.. rings.Select(ring => turn.Apply(ring))];
        return new Turn(turn with { Shift = default(Point2) - Rings.Bounds(turned.SelectMany(ring => ring)).Low }, CellMask.Of(turned));
    }

    private static (Turn Turn, int X, int Y)? Lowest(CellMask sheet, ImmutableArray<Turn> turns)
    {
        var best = (Turn: turns[0], X: 0, Y: 0, Top: int.MaxValue);
        foreach (var turn in turns)
        {
            for (var x = 0; x + turn.Cells.Width <= sheet.Width; x += Step)
            {
                var moved = turn.Cells.MovedRight(x, sheet.WordsPerRow);
                for (var y = 0; y + turn.Cells.Height <= sheet.Height && (y + turn.Cells.Height, x).CompareTo((best.Top, best.X)) < 0; y += Step)
                {
                    if (sheet.IsFree(moved, y))
                    {
                        best = (turn, x, y, y + turn.Cells.Height);
                    }
                }
            }
        }

        return best.Top < int.MaxValue ? (best.Turn, best.X, best.Y) : null;
    }

    /// <summary>One way in which an outline may lie.</summary>
    /// <param name="Map">Turns it and moves its box to the corner.</param>
    /// <param name="Cells">What it then takes.</param>
    internal sealed record Turn(RigidMap Map, CellMask Cells);
}
