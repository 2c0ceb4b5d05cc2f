using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Lays.Models;

/// <summary>Makes the pieces of a paper model from those of cloth: sew lines as outlines, one tab for every two edges that are joined.</summary>
internal static class ModelPieces
{
    /// <summary>The labels of the first cover's pieces that make up its shell, and of those sewn onto it.</summary>
    internal static (ImmutableArray<Piece> Shell, ImmutableArray<string> LeftOut) OfFirstCover(PieceSet set)
    {
        var cover = CoverLabels.CoverOf(set.Pieces[0].Label);
        var pieces = set.Pieces.Where(piece => CoverLabels.CoverOf(piece.Label) == cover).ToArray();
        // What is sewn onto the shell covers no faces of its own.
        return (
            [.. pieces.Where(piece => !piece.Facets.IsEmpty)],
            [.. pieces.Where(piece => piece.Facets.IsEmpty).Select(piece => piece.Label)]);
    }

    /// <summary>The pieces of a model.</summary>
    /// <param name="set">All patterns.</param>
    /// <param name="shell">The pieces of cloth.</param>
    /// <param name="scale">How many times smaller the model is.</param>
    internal static ImmutableArray<ModelPiece> Make(PieceSet set, ImmutableArray<Piece> shell, double scale)
    {
        var patterns = LaidShapes.ById(set);
        var byLabel = shell.ToDictionary(piece => piece.Label, StringComparer.Ordinal);
        return [.. shell.Select(piece => Make(piece, patterns[piece.Pattern], scale, run => HasTab(piece, run, byLabel, patterns)))];
    }

    /// <summary>The tab is on the edge that lies under its partner; where neither does, on the one whose label comes first.</summary>
    private static bool HasTab(Piece piece, int run, Dictionary<string, Piece> shell, Dictionary<string, Pattern> patterns)
    {
        if (piece.Runs[run].Partner is not { } partner || !shell.TryGetValue(partner.Piece, out var other) || partner.Run >= patterns[other.Pattern].Runs.Length)
        {
            return false;
        }

        var (own, its) = (patterns[piece.Pattern].Runs[run].Side, patterns[other.Pattern].Runs[partner.Run].Side);
        return (own == EdgeSide.Under) == (its == EdgeSide.Under)
            ? (string.CompareOrdinal(piece.Label, other.Label), run.CompareTo(partner.Run)) is ( < 0, _) or (0, < 0)
            : own == EdgeSide.Under;
    }

    private static ModelPiece Make(Piece piece, Pattern pattern, double scale, Func<int, bool> hasTab)
    {
        Point2 Small(Point2 point) => (1 / scale) * new Point2(point.X, piece.Mirrored ? -point.Y : point.Y);
        ImmutableArray<Point2> outline = [.. pattern.SewLine.Select(Small)];
        var shaper = new TabShaper(outline, piece.Mirrored);
        var tabs = ImmutableArray.CreateBuilder<ModelTab>();
        for (var run = 0; run < pattern.Runs.Length; run++)
        {
            if (hasTab(run))
            {
                tabs.Add(new ModelTab(run, shaper.Shape(pattern.Runs[run].From, pattern.Runs[run].To, tabs.Select(tab => tab.Shape))));
            }
        }

        return new ModelPiece(
            piece.Label,
            outline,
            [.. pattern.Runs.Select((run, i) => Edge(outline, run, piece.Runs[i], piece.Mirrored))],
            [.. pattern.Folds.Select(fold => new FoldLine(Small(fold.From), Small(fold.To)))],
            [.. pattern.Cutouts.Select(cutout => cutout.Rim.Select(Small).ToImmutableArray())],
            tabs.ToImmutable(),
            Small(pattern.LabelSpot),
            pattern.LabelRadius / scale);
    }

    private static ModelEdge Edge(ImmutableArray<Point2> outline, EdgeRun run, PieceRun joined, bool isClockwise)
    {
        var (from, to) = (outline[run.From], outline[run.To]);
        var inward = (isClockwise ? -1 : 1) * (to - from).Unit().QuarterTurned();
        return new ModelEdge(from, to, inward, joined.Arc, joined.Partner?.Piece ?? string.Empty);
    }
}
