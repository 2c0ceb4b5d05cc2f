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
        var marks = CoverMarks.Of(result).Map(face => Chart(result.Shell, places, face));
        var named = CoverMarkNames.Write(marks, faces.Select(face => face.Ring), []);
        var texts = Left(result, places).GroupBy(patch => patch.Piece, StringComparer.Ordinal)
            .Select(panel => (Label: panel.Key, Text: Name(panel.Key, [.. panel.Select(patch => patch.Ring)], named.Taken))).ToArray();
        var corner = new Point2(Radius + Margin, Radius + Margin);
        return new DomeView(
            new Figure(
                "All pieces at their places, spread out, seen from outside; thick lines are seams, broken ones folds; the front (+x) is on the right; not to scale",
                new Box2(-1 * corner, corner),
                [.. faces.Select(face => new FigureLine("part", face.Ring, IsClosed: true)), .. Seams(result, places), .. marks.Figures()],
                [.. named.Texts, .. texts.Select(text => text.Text).OfType<FigureText>(), new FigureText("front", "FRONT", new Point2(Radius + 3, 0), 2.2, 90, TextAnchor.Middle)]),
            [.. faces.Select(face => face.Label).Order(StringComparer.Ordinal)],
            [.. texts.Where(text => text.Text is null).Select(text => text.Label).Order(StringComparer.Ordinal), .. named.Unnamed],
            0);
    }

    /// <summary>The name of a piece, once: in the facet in the middle of those that have the most room for it.</summary>
    private static FigureText? Name(string panel, ImmutableArray<Point2>[] rings, TakenPlaces taken)
    {
        var fitted = rings.Select(ring => (Ring: ring, Text: FacetName.In(ring, panel, taken))).Where(entry => entry.Text is not null).ToArray();
        var middle = (1.0 / rings.Length) * rings.Select(ring => Rings.Bounds(ring).Centre).Aggregate((left, right) => left + right);
        return fitted.OrderByDescending(entry => FacetName.Room(entry.Text!))
            .ThenBy(entry => Math.Round(Point2.Distance(Rings.Bounds(entry.Ring).Centre, middle), 3)).FirstOrDefault().Text;
    }

    /// <summary>What is left of the edges of facets at which cloth ends: all but those over which it goes uncut.</summary>
    private static IEnumerable<FigureLine> Seams(Result result, ImmutableArray<Point2> places)
    {
        var (shell, cut) = (result.Shell, result.Cut);
        bool IsFacet(PatchSide? side) => side is { } there && shell.Faces[cut.Patches[there.Patch].Face].Kind == FaceKind.Facet;
        return
            from arc in cut.Arcs
            where arc.Role is not EdgeRole.Rim && (arc.Role != EdgeRole.Fold || !(IsFacet(arc.First) && IsFacet(arc.Second)))
            from side in new PatchSide?[] { arc.First, arc.Second }.Where(IsFacet).Take(1)
            let patch = cut.Patches[side.Value.Patch]
            let chart = Chart(shell, places, patch.Face)
            select new FigureLine("seam", [chart!(patch.Corners[side.Value.Edge]), chart!(patch.Corners[(side.Value.Edge + 1) % patch.Corners.Length])], IsClosed: false);
    }

    /// <summary>What is left of facets, with the pieces that cover it.</summary>
    private static IEnumerable<(string Piece, ImmutableArray<Point2> Ring)> Left(Result result, ImmutableArray<Point2> places)
    {
        var pieces = PieceNames.ByPatch(result);
        return
            from patch in Enumerable.Range(0, result.Cut.Patches.Length)
            let chart = Chart(result.Shell, places, result.Cut.Patches[patch].Face)
            where chart is not null && pieces.ContainsKey(patch)
            select (pieces[patch], result.Cut.Patches[patch].Corners.Select(chart).ToImmutableArray());
    }

    /// <summary>From the chart of a facet to its place in the drawing; null for other faces.</summary>
    private static Func<Point2, Point2>? Chart(Shell shell, ImmutableArray<Point2> places, int index)
    {
        var face = shell.Faces[index];
        if (face.Kind != FaceKind.Facet)
        {
            return null;
        }

        ImmutableArray<Point2> corners = [.. face.Nodes.Select(node => places[node])];
        return point => ConvexMapping.Carry(face.Chart, corners, point);
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
