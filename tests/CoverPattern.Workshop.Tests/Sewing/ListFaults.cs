using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What is wrong with the lists of patterns and pieces before anything is folded.</summary>
internal static class ListFaults
{
    internal static IEnumerable<string> Find(SewnFile file, SewingOrder order, TrueCover cover) =>
        LabelFaults(file, order)
            .Concat(CoverageFaults(file, cover))
            .Concat(file.Pieces.GroupBy(piece => piece.Cover).SelectMany(one => order.Plan.Faults([.. one])))
            .Concat(QuantityFaults(file))
            .Concat(ReferenceFaults(file));

    private static IEnumerable<string> LabelFaults(SewnFile file, SewingOrder order)
    {
        foreach (var label in file.Pieces.CountBy(piece => piece.Label).Where(count => count.Value > 1))
        {
            yield return $"The label {label.Key} stands on {label.Value} pieces.";
        }

        var digits = order.Covers.ToString(CultureInfo.InvariantCulture).Length;
        var wanted = order.Covers == 1
            ? [string.Empty]
            : Enumerable.Range(1, order.Covers).Select(cover => "C" + cover.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0') + " ").ToArray();
        var found = file.Pieces.Select(piece => piece.Cover).Distinct().Order(StringComparer.Ordinal).ToArray();
        if (!found.SequenceEqual(wanted))
        {
            yield return $"Covers {string.Join(",", wanted)} are wanted; pieces are of {string.Join(",", found)}.";
        }
    }

    /// <summary>Every face of the true cover is one facet of one piece, on each cover.</summary>
    private static IEnumerable<string> CoverageFaults(SewnFile file, TrueCover cover)
    {
        foreach (var one in file.Pieces.GroupBy(piece => piece.Cover))
        {
            var counts = one.SelectMany(piece => piece.Facets).CountBy(label => label).ToDictionary();
            foreach (var label in cover.Faces.Keys.Union(counts.Keys).Order(StringComparer.Ordinal))
            {
                var wanted = cover.Faces.ContainsKey(label) ? 1 : 0;
                if (counts.GetValueOrDefault(label) != wanted)
                {
                    yield return $"Cover \"{one.Key}\" has {counts.GetValueOrDefault(label)} pieces on {label}, not {wanted}.";
                }
            }
        }
    }

    private static IEnumerable<string> QuantityFaults(SewnFile file)
    {
        var counts = file.Pieces.CountBy(piece => piece.Pattern).ToDictionary();
        return file.Patterns.Where(pattern => pattern.Quantity != counts.GetValueOrDefault(pattern.Id))
            .Select(pattern => $"Pattern {pattern.Id} is to be cut {pattern.Quantity} times for {counts.GetValueOrDefault(pattern.Id)} pieces.")
            .Concat(file.Patterns.CountBy(pattern => pattern.Id).Where(count => count.Value > 1).Select(count => $"The pattern {count.Key} stands twice."));
    }

    private static IEnumerable<string> ReferenceFaults(SewnFile file)
    {
        var patterns = file.Patterns.GroupBy(pattern => pattern.Id).ToDictionary(group => group.Key, group => group.First());
        var runsByLabel = file.Pieces.GroupBy(piece => piece.Label).ToDictionary(group => group.Key, group => group.First().Runs.Count);
        foreach (var piece in file.Pieces)
        {
            if (!patterns.TryGetValue(piece.Pattern, out var pattern) || pattern.Runs.Count != piece.Runs.Count || pattern.Facets.Count != piece.Facets.Count)
            {
                yield return $"Piece {piece.Label} has {piece.Runs.Count} runs and {piece.Facets.Count} facets; its pattern {piece.Pattern} is not so.";
                continue;
            }

            foreach (var fault in piece.Runs.Select((run, i) => RunFault(pattern.Runs[i].Role, run, runsByLabel, piece.Cover)).OfType<string>())
            {
                yield return $"Piece {piece.Label}: {fault}";
            }
        }
    }

    private static string? RunFault(string role, SewnPieceRun run, Dictionary<string, int> runsByLabel, string cover)
    {
        if (run.Role != role)
        {
            return $"edge {run.Arc} is a {run.Role}, on the pattern a {role}.";
        }

        if (run.Partner is null)
        {
            return role is "hem" or "rim" ? null : $"edge {run.Arc} is a {role} and has no partner.";
        }

        if (role is "hem" or "rim")
        {
            return $"edge {run.Arc} is a {role} and has the partner {run.Partner}.";
        }

        return runsByLabel.TryGetValue(run.Partner, out var runs) && run.PartnerRun >= 0 && run.PartnerRun < runs && run.Partner.StartsWith(cover, StringComparison.Ordinal)
            ? null
            : $"edge {run.Arc} is joined to {run.Partner} run {run.PartnerRun}, which is not there.";
    }
}
