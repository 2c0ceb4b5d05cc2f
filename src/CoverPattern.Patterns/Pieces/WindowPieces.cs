using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>What a window needs besides the hole: a ring of the cover's cloth, a pane, and a screen if wished. docs/windows.md shows how they go together.</summary>
/// <remarks>All are made about the origin, up along +y, from the sizes of the job alone: those of one size are equal wherever they go.</remarks>
public static class WindowPieces
{
    private static readonly Point2 Up = new(0, 1);

    /// <summary>The added pieces of all windows of one cover.</summary>
    /// <param name="job">The first cloth is that of the rings.</param>
    /// <param name="windows">The windows.</param>
    public static ImmutableArray<AddedPiece> Make(Job job, ImmutableArray<LaidWindow> windows)
    {
        ArgumentNullException.ThrowIfNull(job);
        return [.. windows.SelectMany(window => Make(job.Cloths[0].Name, window))];
    }

    private static IEnumerable<AddedPiece> Make(string cover, LaidWindow window)
    {
        var (wish, number) = (window.Wish, window.Region.Label[1..]);
        yield return Ring(window.Label + "r", cover, window) with
        {
            Cutouts = [new AddedCutout(window.Region.Purpose, Round(window.Region.Label, EdgeRole.Rim, wish.TurnUnder.Millimetres, wish.ApertureRadius) with { IsSecond = true, Marks = Marks(wish) })],
        };
        yield return Disc(window.Label + "p", wish.Pane, PieceKind.Pane, "X" + number + "p", wish);
        if (wish.Screen is { } screen)
        {
            yield return Disc(window.Label + "s", screen, PieceKind.Screen, "X" + number + "s", wish);
        }
    }

    private static AddedPiece Ring(string label, string cloth, LaidWindow window)
    {
        var outer = window.Wish.OuterRadius;
        var edge = Round("U" + window.Region.Label[1..], EdgeRole.Turned, window.Wish.TurnUnder.Millimetres, outer);
        return AddedPiece.Disc(label, cloth, PieceKind.WindowRing, edge with { Marks = WindowMarks.Drain(Up, outer) });
    }

    private static AddedPiece Disc(string label, string cloth, PieceKind kind, string arc, WindowWish wish) =>
        AddedPiece.Disc(label, cloth, kind, Round(arc, EdgeRole.Raw, 0, wish.ApertureRadius + wish.Lap.Millimetres) with { Marks = Marks(wish) });

    private static AddedEdge Round(string arc, EdgeRole role, double allowance, double radius) => new(arc, IsSecond: false, role, allowance) { Radius = radius };

    private static ImmutableArray<Point2> Marks(WindowWish wish) => WindowMarks.Quarters(Up, wish.ApertureRadius);
}
