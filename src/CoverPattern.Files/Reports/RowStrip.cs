using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Reports;

/// <summary>One row of facets with the skirt below it, laid flat to be looked at: shapes nearly true, not to scale.</summary>
/// <param name="Name">Number of the row, counted from the deck up.</param>
/// <param name="IsCap">Whether it lies round the top and is drawn as seen from above; else it is rolled off to the right, counter-clockwise.</param>
/// <param name="Faces">Facets in order of their labels, then the skirt.</param>
/// <param name="Front">Where the front (+x) passes, in the coordinates of the faces: a place along a strip, from the middle of a cap the largest radius.</param>
internal sealed record RowStrip(string Name, bool IsCap, ImmutableArray<RowFace> Faces, ImmutableArray<double> Front)
{
    // Nearer to the axis than this share of the widest ring a corner counts as the top.
    private const double AtTop = 1e-3;

    // Height of the skirt over that of its row: drawn higher than it is, so that names fit in; own choice.
    private const double SkirtShare = 0.22;

    // Facets of frames have fewer sides.
    private const int MostChords = 24;

    /// <summary>All rows, from the deck up.</summary>
    public static ImmutableArray<RowStrip> Of(Result result)
    {
        var (pieces, marks) = (PieceNames.ByPatch(result), CoverMarks.Of(result));
        return
        [
            .. FacesOf(result, marks, pieces).GroupBy(face => RowOf(face.Label), StringComparer.Ordinal)
                .Where(row => row.Any(face => face.Patch is not null && !face.IsSkirt))
                .OrderBy(row => row.Key, StringComparer.Ordinal)
                .Select(row => Flat(row.Key[1..], [.. row.OrderBy(face => face.IsSkirt).ThenBy(face => face.Label, StringComparer.Ordinal)], marks)),
        ];
    }

    /// <summary>What is left of faces, and faces of which openings leave nothing.</summary>
    private static IEnumerable<SpaceFace> FacesOf(Result result, CoverMarks marks, Dictionary<int, string> pieces)
    {
        var left = result.Cut.Patches.Select(patch => patch.Face).ToHashSet();
        return result.Cut.Patches.Select((patch, i) => (patch, Piece: pieces.GetValueOrDefault(i))).Where(entry => entry.Piece is not null)
            .Select(entry => new SpaceFace(result.Shell, result.Cut, entry.patch.Face, (entry.patch, entry.Piece!)))
            .Concat(marks.Voids.Select(one => one.Face).Distinct().Where(face => !left.Contains(face)).Select(face => new SpaceFace(result.Shell, result.Cut, face, null)));
    }

    /// <summary>The row in so many drawings, each with about as many facets; a cap is never parted.</summary>
    public ImmutableArray<ImmutableArray<RowFace>> Parts(int count)
    {
        if (IsCap || count == 1)
        {
            return [Faces];
        }

        // A facet that openings leave in several parts is not divided.
        var facets = Faces.Where(face => face.IsFacet).GroupBy(face => face.Label, StringComparer.Ordinal).Select(face => face.ToArray()).OrderBy(face => face[0].Middle.X).ToArray();
        var size = (facets.Length + count - 1) / count;
        return
        [
            .. facets.Chunk(size).Select(part =>
            {
                var labels = part.SelectMany(face => Enumerable.Range(1, MostChords).Select(chord => Shell.SkirtLabel(face[0].Label, chord))).ToHashSet(StringComparer.Ordinal);
                return part.SelectMany(face => face).Concat(Faces.Where(face => labels.Contains(face.Label))).ToImmutableArray();
            }),
        ];
    }

    private static string RowOf(string label) => label[..label.IndexOf('.', StringComparison.Ordinal)];

    private static RowStrip Flat(string name, SpaceFace[] faces, CoverMarks marks)
    {
        var facets = faces.Where(face => !face.IsSkirt && face.Patch is not null).ToArray();
        var widest = facets.SelectMany(face => face.Corners).Max(corner => corner.Plan.Length);
        var isCap = facets.Any(face => face.Corners.Any(corner => corner.Plan.Length < AtTop * widest) || face.IsRoundAxis);
        Func<SpaceFace, Point3, Point2> map = isCap ? (_, point) => point.Plan : Roll(facets);
        var height = Rings.Bounds(facets.SelectMany(face => face.Corners.Select(corner => map(face, corner))));
        var foot = isCap ? 0 : SkirtShare * height.Height;
        var shown = new HashSet<int>();
        return new RowStrip(name, isCap, [.. faces.Select(Place)], isCap ? [widest] : Fronts(facets, map));

        // Of a face in several parts the first bears what lies in the face.
        RowFace Place(SpaceFace face) => new(
            face.Label,
            face.Kind,
            face.Piece,
            [.. (face.Patch?.Corners ?? []).Select(corner => Lay(face, corner))],
            face.Patch?.Arcs ?? [],
            shown.Add(face.Index) ? marks.On(face.Index).Map(_ => point => Lay(face, point)) : new CoverMarks([], []));

        Point2 Lay(SpaceFace face, Point2 point) =>
            face.Lay(point, corner => map(face, corner), place => isCap ? (1 + SkirtShare) * place : new Point2(place.X, height.Low.Y - foot));
    }

    /// <summary>
    /// Rolls a row off: along by direction from the axis, up by the angle seen from the middle of the row's foot, both stretched so that
    /// the row keeps its girth and its area.
    /// </summary>
    private static Func<SpaceFace, Point3, Point2> Roll(SpaceFace[] facets)
    {
        var corners = facets.SelectMany(face => face.Corners).ToArray();
        var low = corners.Min(corner => corner.Z) - corners.Average(corner => corner.Plan.Length);
        var girth = corners.Average(corner => corner.Plan.Length);
        var start = facets[0].Direction;
        var stretch = facets.Sum(face => face.Area) / facets.Sum(face => Math.Abs(Rings.SignedArea([.. face.Corners.Select(corner => Raw(face, corner))])));
        return (face, point) => new Point2(Raw(face, point).X, stretch * Raw(face, point).Y);

        Point2 Raw(SpaceFace face, Point3 point) => new(
            girth * (Turned(face.Direction - start, -1e-6) + Turned(face.DirectionOf(point) - face.Direction, -Math.PI)),
            Math.Atan2(point.Z - low, point.Plan.Length));
    }

    private static ImmutableArray<double> Fronts(SpaceFace[] facets, Func<SpaceFace, Point3, Point2> map)
    {
        // A point of the direction +x, as the first facet sees it, and the same once round.
        var girth = facets.SelectMany(face => face.Corners).Average(corner => corner.Plan.Length);
        var at = map(facets[0], new Point3(girth, 0, 0)).X;
        return [at, at + (2 * Math.PI * girth)];
    }

    /// <summary>An angle moved by whole turns to stand at the least or above, less than a turn.</summary>
    private static double Turned(double angle, double least) => angle - (2 * Math.PI * Math.Floor((angle - least) / (2 * Math.PI)));
}
