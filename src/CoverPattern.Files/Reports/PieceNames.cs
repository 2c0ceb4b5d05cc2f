using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Files.Results;

namespace CoverPattern.Files.Reports;

/// <summary>Which piece of cloth covers what.</summary>
internal static class PieceNames
{
    /// <summary>The piece of each patch of the cover, by the patch's index, without the cover's name; a patch that no piece covers is left out.</summary>
    /// <remarks>Where an opening cuts a panel through, its faces are in two pieces: of the patches that hang together over folds these are told by their edges.</remarks>
    public static Dictionary<int, string> ByPatch(Result result)
    {
        var (names, panels) = (new Dictionary<int, string>(), result.Cut.PiecesOfPatches());
        var pieces = result.Pieces.Pieces.SelectMany(piece => piece.Facets.Select(facet => (facet, piece))).ToLookup(entry => entry.facet, entry => entry.piece, StringComparer.Ordinal);
        var edges = Enumerable.Range(0, result.Cut.Patches.Length).ToLookup(patch => panels[patch], patch => result.Cut.Patches[patch].Arcs.Select(arc => result.Cut.Arcs[arc].Label));
        foreach (var (patch, i) in result.Cut.Patches.Select((patch, i) => (patch, i)))
        {
            var known = edges[panels[i]].SelectMany(labels => labels).ToHashSet(StringComparer.Ordinal);
            if (pieces[result.Shell.Faces[patch.Face].Label].MaxBy(piece => piece.Runs.Count(run => known.Contains(run.Arc))) is { } found)
            {
                names.Add(i, Covers.PlaceOf(found.Label));
            }
        }

        return names;
    }

    /// <summary>What fills each hole by the label of its rim; of several layers the one that is sewn to the rim.</summary>
    public static Dictionary<string, string> ByRim(Result result)
    {
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var piece in result.Pieces.Pieces)
        {
            foreach (var run in piece.Runs)
            {
                if (piece.Facets.IsEmpty && run.Partner is not null)
                {
                    names.TryAdd(run.Arc, Covers.PlaceOf(piece.Label));
                }
            }
        }

        return names;
    }
}
