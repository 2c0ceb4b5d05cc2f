using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>Writes the name of a facet into it, off openings and lines that lie in it.</summary>
internal static class FacetName
{
    private static readonly double[] Heights = [DomeDrawing.LargestText, 2.2, 1.9, 1.6, DomeDrawing.LeastText];

    /// <summary>The name, whole or only the position in the row, in the part of the facet that has the most room for it; null where none has.</summary>
    /// <param name="rings">What is left of the facet, millimetres on paper.</param>
    /// <param name="label">The name.</param>
    /// <param name="taken">Lines and names in facets.</param>
    public static FigureText? Largest(IEnumerable<ImmutableArray<Point2>> rings, string label, TakenPlaces taken) =>
        rings.Select(ring => In(ring, label, taken)).OfType<FigureText>().OrderByDescending(Room).FirstOrDefault();

    /// <summary>How well a name is read: letters count for more than their height.</summary>
    public static double Room(FigureText text) => Math.Round(text.Height, 2) * text.Text.Length;

    /// <summary>In one ring: as far from the edges as can be, else wherever nothing is taken.</summary>
    public static FigureText? In(ImmutableArray<Point2> ring, string label, TakenPlaces taken)
    {
        var near = taken.Near(Rings.Bounds(ring));
        string[] words = [label, label[(label.LastIndexOf('.') + 1)..]];
        if (near.IsEmpty)
        {
            return words.Select(word => TextRoom.Fit(ring, Wish(word), DomeDrawing.LeastText)).FirstOrDefault(text => text is not null);
        }

        if (TextRoom.Fit(ring, Wish(label), DomeDrawing.LeastText) is { } fitted && FreeText.IsFree(fitted, near))
        {
            return fitted;
        }

        near.TakeEdges(ring);
        return words.SelectMany(word => Heights.SelectMany(height => FreeText.Inside(ring, Wish(word) with { Height = height })))
            .FirstOrDefault(text => FreeText.IsFree(text, near));
    }

    private static FigureText Wish(string text) => new("facet", text, default, DomeDrawing.LargestText, 0, TextAnchor.Middle);
}
