using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Reports;

/// <summary>Draws all facets at once, spread out like a flower seen from above; the rings of hubs stand about equally far apart. Not to scale.</summary>
/// <remarks>A cover that goes below the widest ring hides its lower rows from above; here none is hidden.</remarks>
internal static class SpreadPlan
{
    private const double Radius = 82;
    private const double Margin = 10;

    // In steps between rings: what is left of a facet's height below a chord.
    private const double ChordClearance = 0.6;

    public static DomeView Draw(Result result)
    {
        var places = Places(result);
        var faces = result.Shell.Faces.Where(face => face.Kind == FaceKind.Facet)
            .Select(face => (face.Label, Ring: ImmutableArray.CreateRange(face.Nodes, node => places[node])))
            .ToArray();
        var pieceOf = PieceNames.ByFace(result);
        var texts = faces.GroupBy(face => pieceOf[face.Label], StringComparer.Ordinal).Select(panel => (Label: panel.Key, Text: Name(panel.Key, [.. panel.Select(face => face.Ring)]))).ToArray();
        var corner = new Point2(Radius + Margin, Radius + Margin);
        return new DomeView(
            new Figure(
                "All pieces at their places, spread out, seen from outside; thick lines are seams, broken ones folds; the front (+x) is on the right; not to scale",
                new Box2(-1 * corner, corner),
                [.. faces.Select(face => new FigureLine("part", face.Ring, IsClosed: true)), .. Seams(result, places)],
                [.. texts.Select(text => text.Text).OfType<FigureText>(), new FigureText("front", "FRONT", new Point2(Radius + 3, 0), 2.2, 90, TextAnchor.Middle)]),
            [.. faces.Select(face => face.Label).Order(StringComparer.Ordinal)],
            [.. texts.Where(text => text.Text is null).Select(text => text.Label).Order(StringComparer.Ordinal)],
            0);
    }

    /// <summary>The name of a piece, once: in the facet in the middle of those that have the most room for it.</summary>
    private static FigureText? Name(string panel, ImmutableArray<Point2>[] rings)
    {
        var fitted = rings.Select(ring => (Ring: ring, Text: DomeDrawing.Name(ring, panel))).Where(entry => entry.Text is not null).ToArray();
        var middle = (1.0 / rings.Length) * rings.Select(ring => Rings.Bounds(ring).Centre).Aggregate((left, right) => left + right);
        return fitted.OrderByDescending(entry => Math.Round(entry.Text!.Height, 2) * entry.Text.Text.Length)
            .ThenBy(entry => Math.Round(Point2.Distance(Rings.Bounds(entry.Ring).Centre, middle), 3)).FirstOrDefault().Text;
    }

    /// <summary>The edges of facets at which cloth ends: all but those over which it goes uncut.</summary>
    private static IEnumerable<FigureLine> Seams(Result result, ImmutableArray<Point2> places)
    {
        var shell = result.Shell;
        var folds = result.Cut.FacesBeside(arc => arc.Role == EdgeRole.Fold);
        bool IsFacet(int face) => face >= 0 && shell.Faces[face].Kind == FaceKind.Facet;
        return shell.Edges
            .Where(edge => (IsFacet(edge.Left) || IsFacet(edge.Right)) && !(IsFacet(edge.Left) && IsFacet(edge.Right) && folds.Contains((edge.Left, edge.Right))))
            .Select(edge => new FigureLine("seam", [places[edge.From], places[edge.To]], IsClosed: false));
    }

    /// <summary>Place of each hub of the frame: outward by its ring, round by its direction.</summary>
    private static ImmutableArray<Point2> Places(Result result)
    {
        var radii = Radii(result.Frame.Hubs);
        var widest = radii.Values.Max();
        return [.. result.Frame.Hubs.Select(hub => radii[hub.Ring] == 0 ? default : (Radius * radii[hub.Ring] / widest) * hub.Position.Plan.Unit())];
    }

    /// <summary>Distance of each ring from the middle, in steps: one farther than the ring above, and where its hubs are few so far that its chords clear that ring.</summary>
    private static Dictionary<int, double> Radii(ImmutableArray<Hub> hubs)
    {
        var radii = new Dictionary<int, double>();
        var inner = 0.0;
        foreach (var ring in hubs.GroupBy(hub => hub.Ring).OrderByDescending(ring => ring.Key))
        {
            var isTop = radii.Count == 0 && ring.Count() == 1;
            inner = isTop ? 0 : Math.Max(inner + 1, (inner + ChordClearance) / Math.Cos(WidestGap(ring) / 2));
            radii.Add(ring.Key, inner);
        }

        return radii;
    }

    /// <summary>Largest angle between neighbours of a ring, radians.</summary>
    private static double WidestGap(IEnumerable<Hub> ring)
    {
        var directions = ring.Select(hub => Math.Atan2(hub.Position.Y, hub.Position.X)).Order().ToArray();
        return directions.Select((direction, i) => (i + 1 < directions.Length ? directions[i + 1] : directions[0] + (2 * Math.PI)) - direction).Max();
    }
}
