using System;
using System.Collections.Generic;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Results;

/// <summary>Checks that whatever a pattern or a piece names exists, once.</summary>
internal static class PieceReferences
{
    /// <exception cref="ResultFormatException">A name stands twice, or names nothing.</exception>
    public static void Check(PieceSet set)
    {
        var patterns = ById(set);
        var pieces = ByLabel(set);
        for (var i = 0; i < set.Patterns.Length; i++)
        {
            CheckRuns(set.Patterns[i], $"patterns[{i}]");
        }

        for (var i = 0; i < set.Pieces.Length; i++)
        {
            var piece = set.Pieces[i];
            if (!patterns.TryGetValue(piece.Pattern, out var pattern))
            {
                throw new ResultFormatException($"pieces[{i}].pattern", $"there is no pattern \"{piece.Pattern}\".");
            }

            Count(piece.Runs.Length, pattern.Runs.Length + pattern.Cutouts.Length, $"pieces[{i}].runs");
            Count(piece.Facets.Length, pattern.Facets.Length, $"pieces[{i}].facets");
            CheckPartners(piece, $"pieces[{i}]", pieces);
        }
    }

    private static Dictionary<string, Pattern> ById(PieceSet set)
    {
        var byId = new Dictionary<string, Pattern>(StringComparer.Ordinal);
        for (var i = 0; i < set.Patterns.Length; i++)
        {
            if (!byId.TryAdd(set.Patterns[i].Id, set.Patterns[i]))
            {
                throw new ResultFormatException($"patterns[{i}].id", $"the pattern \"{set.Patterns[i].Id}\" stands twice.");
            }
        }

        return byId;
    }

    private static Dictionary<string, Piece> ByLabel(PieceSet set)
    {
        var byLabel = new Dictionary<string, Piece>(StringComparer.Ordinal);
        for (var i = 0; i < set.Pieces.Length; i++)
        {
            if (!byLabel.TryAdd(set.Pieces[i].Label, set.Pieces[i]))
            {
                throw new ResultFormatException($"pieces[{i}].label", $"the piece \"{set.Pieces[i].Label}\" stands twice.");
            }
        }

        return byLabel;
    }

    /// <summary>Each run begins where the one before it ends, the first where the last ends.</summary>
    private static void CheckRuns(Pattern pattern, string place)
    {
        for (var i = 0; i < pattern.Runs.Length; i++)
        {
            var before = pattern.Runs[(i + pattern.Runs.Length - 1) % pattern.Runs.Length];
            if (pattern.Runs[i].From != before.To)
            {
                throw new ResultFormatException(
                    $"{place}.runs[{i}].from", $"must be {before.To}, where the run before it ends, not {pattern.Runs[i].From}.");
            }
        }
    }

    private static void CheckPartners(Piece piece, string place, Dictionary<string, Piece> pieces)
    {
        for (var i = 0; i < piece.Runs.Length; i++)
        {
            if (piece.Runs[i].Partner is not { } partner)
            {
                continue;
            }

            if (!pieces.TryGetValue(partner.Piece, out var other))
            {
                throw new ResultFormatException($"{place}.runs[{i}].partner.piece", $"there is no piece \"{partner.Piece}\".");
            }

            if (partner.Run >= other.Runs.Length)
            {
                throw new ResultFormatException(
                    $"{place}.runs[{i}].partner.run", $"piece \"{partner.Piece}\" has {other.Runs.Length} runs, so there is no run {partner.Run}.");
            }
        }
    }

    private static void Count(int found, int wanted, string place)
    {
        if (found != wanted)
        {
            throw new ResultFormatException(place, $"must be {wanted} entries, as many as its pattern has, not {found}.");
        }
    }
}
