using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes the strips of an opening: over its zips, over its upper edge, across its foot; all of the cover's cloth, finished edges as sew lines.</summary>
internal static class StripPieces
{
    /// <summary>What the label of a drip flap ends in.</summary>
    internal const string Drip = "d";

    /// <summary>What the label of a threshold ends in.</summary>
    internal const string Threshold = "t";

    // Turned under at every edge, as a hem is (common practice, no source), millimetres.
    private const double TurnUnder = 12;

    // A strip that turned by more would come round upon itself, or waste the cloth it lies round (own choice), radians: 100 degrees.
    private const double MostTurn = 100 * Math.PI / 180;

    // A strip reaches so far beyond the ends of its zip, but at the finished edge (own choice), millimetres.
    private const double BeyondEnds = 30;

    /// <summary>Whether a label is that of a strip over a zip.</summary>
    internal static bool IsOverZip(string label) => label.EndsWith('c');

    /// <summary>The strips of one opening.</summary>
    /// <param name="job">The first cloth is theirs.</param>
    /// <param name="opening">The opening.</param>
    /// <param name="footMm">Length of the finished edge that it takes, millimetres.</param>
    /// <param name="leafMm">Length of the line between two leaves, millimetres; 0 without leaves.</param>
    internal static IEnumerable<AddedPiece> Make(Job job, LaidOpening opening, double footMm, double leafMm)
    {
        var (wish, cloth) = (opening.Wish, job.Cloths[0].Name);
        if (wish.Strip is { } strip && wish.HasZips)
        {
            var first = OpeningPart.Of(wish)[0].Letter;
            foreach (var (zip, label) in opening.Zips.Where(zip => zip.Part == first).SelectMany(zip => Parts(opening.Line, zip)))
            {
                yield return Band(label, cloth, Path(opening.Line, zip), strip.Millimetres);
            }

            if (leafMm > 0)
            {
                yield return Band(opening.Label + first + "z1c", cloth, [default, new Point2(leafMm + BeyondEnds, 0)], strip.Millimetres);
            }
        }

        if (wish.Drip is { } drip)
        {
            yield return Band(opening.Label + Drip, cloth, [default, new Point2(WidthOf(opening) + (2 * OpeningPlacer.DripBeyond), 0)], drip.Millimetres);
        }

        if (wish.Threshold is { } threshold)
        {
            yield return Band(opening.Label + Threshold, cloth, [default, new Point2(footMm + (2 * job.Notions.HookLoop.Millimetres), 0)], threshold.Millimetres);
        }
    }

    /// <summary>A zip in parts of which none turns by more than a strip in one piece may.</summary>
    private static IEnumerable<(ZipRun Zip, string Label)> Parts(RimLine line, ZipRun zip)
    {
        var to = zip.From + zip.LengthMm;
        var turn = Enumerable.Range(0, line.Points.Length - 1).Where(i => Math.Abs(line.Bends[i]) < RimSides.Corner)
            .Where(i => (line.At[i] > zip.From && line.At[i] < to) || (line.At[i] + line.Length > zip.From && line.At[i] + line.Length < to)).Sum(i => Math.Abs(line.Bends[i]));
        var count = Math.Max(1, (int)Math.Ceiling(turn / MostTurn));
        return Enumerable.Range(0, count).Select(i => (
            zip with { From = line.Wrapped(zip.From + (i * zip.LengthMm / count)), LengthMm = zip.LengthMm / count },
            zip.Label + (i == 0 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"-{i + 1}")) + "c"));
    }

    /// <summary>The way of a zip and what its strip reaches beyond, flat; the direction of its ends goes on.</summary>
    private static ImmutableArray<Point2> Path(RimLine line, ZipRun zip)
    {
        var to = zip.From + zip.LengthMm;
        ImmutableArray<Point2> way = to <= line.Length + 1e-6 ? line.Between(zip.From, Math.Min(to, line.Length)) : [.. line.Between(zip.From, line.Length), .. line.Between(0, to - line.Length).Skip(1)];
        var (atStart, atEnd) = (line.IsClosed || zip.From > 1, line.IsClosed || to < line.Length - 1);
        Point2 Beyond(Point2 end, Point2 before) => end + (BeyondEnds * (end - before).Unit());

        // The end itself goes: on a straight line it is no corner, and one beside it turns back where the way bends just before.
        return [atStart ? Beyond(way[0], way[1]) : way[0], .. way[1..^1], atEnd ? Beyond(way[^1], way[^2]) : way[^1]];
    }

    /// <summary>The strip over the zip of a slit.</summary>
    /// <param name="job">The first cloth is its.</param>
    /// <param name="slit">The slit.</param>
    internal static IEnumerable<AddedPiece> Make(Job job, LaidSlit slit) => slit.Wish.Strip is { } strip
        ? [Band(slit.Label + "z1c", job.Cloths[0].Name, [default, new Point2(slit.LengthMm + (2 * BeyondEnds), 0)], strip.Millimetres)]
        : [];

    /// <summary>A band along a way, half its width on either side, its ends square; its chord lies along +x.</summary>
    internal static AddedPiece Band(string label, string cloth, ImmutableArray<Point2> way, double width)
    {
        var chord = Point2.Distance(way[0], way[^1]) > width ? (way[^1] - way[0]).Unit() : (way[1] - way[0]).Unit();
        var turn = new RigidMap(chord.X, -chord.Y, default, Mirrored: false);
        var laid = turn.Apply(way);
        var (right, left) = (Side(laid, width / 2), Side([.. laid.Reverse()], width / 2));
        AddedEdge Edge(string letter, EdgeRole role, int steps) => new(label + letter, IsSecond: false, role, TurnUnder) { Steps = steps };
        return new AddedPiece(
            label, cloth, PieceKind.CoverStrip, [.. right, .. left], [Edge("1", EdgeRole.Turned, right.Length - 1), Edge("2", EdgeRole.Hemmed, 1), Edge("3", EdgeRole.Hemmed, left.Length - 1), Edge("4", EdgeRole.Hemmed, 1)], []);
    }

    /// <summary>The line at a distance to the right of a way.</summary>
    private static ImmutableArray<Point2> Side(ImmutableArray<Point2> way, double right)
    {
        var edges = SwallowedEdges.LeftOut(way.Skip(1).Select((point, i) => new SewEdge(way[i], point, EdgeRole.Turned, right)));
        return
        [
            way[0] + (right * edges[0].Outward),
            .. edges.Skip(1).Select((edge, i) => SwallowedEdges.Meet(edges[i], edge, right)),
            way[^1] + (right * edges[^1].Outward),
        ];
    }

    /// <summary>Level width of an opening: of its outline where it is carried, else as seen from outside.</summary>
    private static double WidthOf(LaidOpening opening)
    {
        var points = opening.Line.Points.AsEnumerable();
        if (opening.Wish.Outline.Form != OutlineForm.Facets)
        {
            points = OutlineShapes.Turned(OutlineShapes.Draw(opening.Wish.Outline), opening.Wish.Place.Turned);
        }

        return points.Max(point => point.X) - points.Min(point => point.X);
    }
}
