using System;
using System.Collections.Generic;
using CoverPattern.Files.Results;

namespace CoverPattern.Files.Reports;

/// <summary>Which piece of cloth covers which face.</summary>
internal static class PieceNames
{
    /// <summary>The piece of every covered face by the face's label, without the cover's name.</summary>
    public static Dictionary<string, string> ByFace(Result result)
    {
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var piece in result.Pieces.Pieces)
        {
            foreach (var face in piece.Facets)
            {
                names.TryAdd(face, Covers.PlaceOf(piece.Label));
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
