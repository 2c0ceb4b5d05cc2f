using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Turns added pieces into drafts; from there on they go the way of all pieces.</summary>
internal static class AddedDrafts
{
    /// <summary>What the edges of all added pieces are, in order of pieces and edges.</summary>
    internal static IEnumerable<ClassedLine> Lines(ImmutableArray<AddedPiece> added) => added.SelectMany(piece =>
        piece.AllEdges.Select((edge, i) => new ClassedLine(edge.Role, edge.MakeUp, piece.LengthOf(i))));

    /// <summary>One draft a piece.</summary>
    /// <param name="added">The pieces.</param>
    /// <param name="classes">Classes of <see cref="Lines"/>, in its order.</param>
    /// <param name="rims">Classes of rims by their labels: both sides of a rim are marked alike whatever their last digits.</param>
    internal static IEnumerable<PieceDraft> Make(ImmutableArray<AddedPiece> added, ImmutableArray<ArcClass> classes, IReadOnlyDictionary<string, ArcClass> rims)
    {
        // Both sides of a line between added pieces have the class of the first.
        var lines = added.SelectMany(piece => piece.AllEdges).Zip(classes).GroupBy(entry => entry.First.Arc, StringComparer.Ordinal).ToDictionary(line => line.Key, line => line.First().Second, StringComparer.Ordinal);
        foreach (var piece in added)
        {
            DraftRun[] runs = [.. piece.AllEdges.Select(edge => edge.ToRun(rims.GetValueOrDefault(edge.Arc, lines[edge.Arc])))];
            yield return new PieceDraft(piece.Label, piece.Cloth, piece.Kind, piece.Corners, [.. runs[..piece.Edges.Length]])
            {
                Folds = piece.Folds,
                Cutouts = [.. piece.Cutouts.Zip(runs[piece.Edges.Length..], (cutout, run) => new DraftCutout(cutout.Purpose, run with { Steps = System.Math.Max(run.Steps, cutout.Ring.Length) }) { Ring = cutout.Ring })],
                Drawn = piece.Lines,
            };
        }
    }
}
