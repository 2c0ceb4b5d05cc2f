using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Reports;

/// <summary>Draws all facets at once, spread out like a flower seen from above; the rings of hubs stand at equal distances. Not to scale.</summary>
/// <remarks>A cover that goes below the widest ring hides its lower rows from above; here none is hidden.</remarks>
internal static class SpreadPlan
{
    private const double Radius = 82;
    private const double Margin = 10;

    public static DomeView Draw(Result result)
    {
        var places = Places(result);
        var faces = result.Shell.Faces.Where(face => face.Kind == FaceKind.Facet)
            .Select(face => (face.Label, Ring: ImmutableArray.CreateRange(face.Nodes, node => places[node])))
            .ToArray();
        var pieceOf = PieceOfFacet(result);
        var texts = faces.Select(face => (face.Label, Text: DomeDrawing.Name(face.Ring, pieceOf[face.Label]))).ToArray();
        var corner = new Point2(Radius + Margin, Radius + Margin);
        return new DomeView(
            new Figure(
                "All pieces at their places, spread out, seen from outside; the front (+x) is on the right; not to scale",
                new Box2(-1 * corner, corner),
                [.. faces.Select(face => new FigureLine("face", face.Ring, IsClosed: true))],
                [.. texts.Select(text => text.Text).OfType<FigureText>(), new FigureText("note", "front", new Point2(Radius + 1, 0), 2, 0, TextAnchor.Start)]),
            [.. faces.Select(face => face.Label).Order(StringComparer.Ordinal)],
            [.. texts.Where(text => text.Text is null).Select(text => text.Label).Order(StringComparer.Ordinal)],
            0);
    }

    /// <summary>Place of each hub of the frame: outward by its ring, round by its direction.</summary>
    private static ImmutableArray<Point2> Places(Result result)
    {
        var hubs = result.Frame.Hubs;
        var top = hubs.Max(hub => hub.Ring);
        var isPointed = hubs.Count(hub => hub.Ring == top) == 1;
        var rings = top + (isPointed ? 0 : 1);
        return [.. hubs.Select(hub => hub.Ring == top && isPointed ? default : (Radius * (rings - hub.Ring) / rings) * hub.Position.Plan.Unit())];
    }

    private static Dictionary<string, string> PieceOfFacet(Result result)
    {
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var piece in result.Pieces.Pieces)
        {
            foreach (var facet in piece.Facets)
            {
                names.TryAdd(facet, Covers.PlaceOf(piece.Label));
            }
        }

        return names;
    }
}
