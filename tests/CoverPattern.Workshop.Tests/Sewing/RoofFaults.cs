using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Holds a roof that comes off to the true cover, from pieces.json alone: flap, load tabs, hands of zips, screen.</summary>
internal sealed class RoofFaults(SewnFile file, TrueCover cover, IReadOnlySet<string> roof, RoofOrder order)
{
    // Two corners of the true cover nearer than this are one, millimetres.
    private const double SameCorner = 0.01;

    // Half a step of the grid on the narrowest flap of 90 mm is 0.0006 degrees on each of two lines.
    private const double Angle = 0.002;

    // Half a diagonal step of the grid of 2^-10 mm: each corner moves by so much when it is snapped, and each edge sweeps so much along its length.
    private const double CornerError = 0.00069;

    private readonly Dictionary<string, SewnPattern> patterns = file.Patterns.ToDictionary(pattern => pattern.Id);
    private readonly Dictionary<string, SewnPiece> pieces = file.Pieces.ToDictionary(piece => piece.Label);

    /// <summary>Everything that does not fit.</summary>
    internal IEnumerable<string> Find()
    {
        var edges = TrueEdges().ToArray();
        var sides = Sides().ToArray();
        if (sides.Length != edges.Length)
        {
            yield return $"{sides.Length} seams are roof zips, {edges.Length} struts lie between roof and wall.";
        }

        foreach (var side in sides)
        {
            var name = $"Roof edge {side.Arc}:";
            if (Wall(side) is not { } wall || edges.FirstOrDefault(edge => edge.Roof == FacetOf(side) && edge.Wall == FacetOf(wall)) is not { Roof: not null } edge)
            {
                yield return $"{name} it is no strut between roof and wall.";
                continue;
            }

            foreach (var fault in Flap(side, edge, sides, edges).Concat(Tabs(side, wall)).Concat(Hands(side, wall)).Concat(Screen(side, edge)))
            {
                yield return $"{name} {fault}";
            }
        }

        var flaps = file.Pieces.Count(piece => patterns[piece.Pattern].Kind == "roofFlap");
        if (flaps != sides.Length)
        {
            yield return $"{flaps} lengths of flap on {sides.Length} struts.";
        }
    }

    private IEnumerable<string> Flap(Side side, TrueEdge edge, Side[] sides, TrueEdge[] edges)
    {
        if (!pieces.TryGetValue(side.Arc + "f", out var flap) || patterns[flap.Pattern] is not { Kind: "roofFlap" } pattern)
        {
            yield return "no flap.";
            yield break;
        }

        var upper = flap.Runs.ToList().FindIndex(run => run.Arc == side.Arc + "f");
        var ring = pattern.SewLine;
        if (upper < 0 || ring.Count != 4 || pattern.Runs[upper] is not { Role: "raw" } run)
        {
            yield return "the flap has no edge for the roof.";
            yield break;
        }

        if (!(Math.Abs(run.LengthMm - edge.Length) <= Tolerances.PartnerLength) || !(Math.Abs(ring[run.From].DistanceTo(ring[run.To]) - edge.Length) <= Tolerances.PartnerLength))
        {
            yield return FormattableString.Invariant($"a flap of {run.LengthMm} mm on {edge.Length} mm.");
        }

        // Seen from outside the flap hangs below: its upper edge runs from where the line stops to where it starts.
        var (stop, start) = (ring[run.From], ring[run.To]);
        var (atStart, atStop) = (ring[(run.To + 1) % 4], ring[(run.From + 3) % 4]);
        foreach (var (corner, low, other, at) in new[] { (start, atStart, stop, edge.From), (stop, atStop, start, edge.To) })
        {
            var (wanted, angle) = (WallAngle(at) / 2, Between(low - corner, other - corner));
            if (!(Math.Abs(angle - wanted) <= Angle))
            {
                yield return FormattableString.Invariant($"the flap's end has {angle} degrees, half of the wall there is {wanted}.");
            }

            var width = Math.Abs((other - corner).Cross(low - corner)) / (other - corner).Length;
            if (!(Math.Abs(width - order.Flap) <= Tolerances.SamePlace))
            {
                yield return FormattableString.Invariant($"the flap is {width} mm wide, not {order.Flap}.");
            }
        }

        // At its end it is sewn to the flap of the strut that starts there.
        var next = sides.FirstOrDefault(other => edges.Any(behind => behind.Roof == FacetOf(other) && Wall(other) is { } wall && behind.Wall == FacetOf(wall) && behind.From.DistanceTo(edge.To) <= SameCorner));
        var end = flap.Runs[(upper + 3) % 4];
        if (next is null || end.Partner != next.Arc + "f" || !pieces.TryGetValue(end.Partner, out var beside) || beside.Runs[end.PartnerRun].Partner != flap.Label)
        {
            yield return $"its flap is sewn to {end.Partner}, not to that of {next?.Arc}.";
            yield break;
        }

        var (here, there) = (pattern.Runs[(upper + 3) % 4].LengthMm, patterns[beside.Pattern].Runs[end.PartnerRun].LengthMm);
        if (!(Math.Abs(here - there) <= Tolerances.PartnerLength))
        {
            yield return FormattableString.Invariant($"{here} mm of flap are sewn to {there} mm.");
        }
    }

    private IEnumerable<string> Tabs(Side side, Side wall)
    {
        var (above, below) = (TabsOf(side), TabsOf(wall));
        var length = side.Run.LengthMm;
        if (above.Length < 2 || above.Length != below.Length || above.Zip(below.Reverse()).Any(pair => !(Math.Abs(pair.First + pair.Second - length) <= Tolerances.Notch)))
        {
            yield return $"{above.Length} load tabs of the roof do not meet {below.Length} of the wall.";
        }

        if (above.Length > 1 && (above.Zip(above.Skip(1)).Any(pair => pair.Second - pair.First > order.Tabs + Tolerances.Notch) || above[0] > 100 || length - above[^1] > 100))
        {
            yield return "load tabs stand too far apart.";
        }
    }

    private IEnumerable<string> Hands(Side side, Side wall)
    {
        if (!Bears(side, "zip: pin side") || Bears(side, "zip: box side") || !Bears(wall, "zip: box side") || Bears(wall, "zip: pin side"))
        {
            yield return "pin and box are not told as the pin on the roof, the box on the wall.";
        }

        var (from, to) = Ends(wall);
        if (!Lines(wall, "edge of the roof's flap").Any(line => line.All(point => Math.Abs(((to - from).Cross(point - from) / (to - from).Length) - order.Flap) <= Tolerances.Notch)))
        {
            yield return "the wall does not show where the flap ends.";
        }
    }

    private IEnumerable<string> Screen(Side side, TrueEdge edge)
    {
        if (!order.HasScreen)
        {
            yield break;
        }

        // A window that cuts a panel of the roof through leaves two pieces of it, but one of the screen.
        var (label, arc) = (side.Piece.Cover + "M" + side.Piece.Label[side.Piece.Cover.Length..].Split('-')[0], "M" + side.Arc);
        if (!pieces.TryGetValue(label, out var mesh) || mesh.Runs.ToList().FindIndex(run => run.Arc == arc) is not (>= 0 and var run))
        {
            yield return "no screen.";
            yield break;
        }

        var sewn = patterns[mesh.Pattern].Runs[run];
        if (sewn.MakeUp != "roof zip" || mesh.Runs[run].Partner is not null || !(Math.Abs(sewn.LengthMm - edge.Length) <= Tolerances.PartnerLength))
        {
            yield return FormattableString.Invariant($"the screen has {sewn.LengthMm} mm of \"{sewn.MakeUp}\".");
        }

        var (area, wanted) = (FlatPoint.AreaOf(patterns[mesh.Pattern].SewLine), mesh.Facets.Sum(facet => cover.Faces[facet[1..]].Area));
        if (!(Math.Abs(area - wanted) <= CornerError * patterns[mesh.Pattern].Runs.Sum(along => along.LengthMm)))
        {
            yield return FormattableString.Invariant($"the screen's piece has {area} mm2, not {wanted}.");
        }
    }

    /// <summary>The struts between roof and wall, the roof on their left.</summary>
    private IEnumerable<TrueEdge> TrueEdges() =>
        from face in cover.Faces.Values
        where roof.Contains(face.Label)
        from i in Enumerable.Range(0, face.Corners.Count)
        where face.Edges[i].Neighbour is { } other && !roof.Contains(other)
        let to = face.Corners[(i + 1) % face.Corners.Count]
        select new TrueEdge(face.Label, face.Edges[i].Neighbour!, face.Corners[i], to, face.Corners[i].DistanceTo(to));

    /// <summary>Edges of the roof's pieces that lie over at a roof zip.</summary>
    private IEnumerable<Side> Sides() =>
        from piece in file.Pieces
        where piece.Facets.Count > 0 && piece.Facets.Any(roof.Contains)
        from run in Enumerable.Range(0, patterns[piece.Pattern].Runs.Count)
        where patterns[piece.Pattern].Runs[run] is { MakeUp: "roof zip", Side: "over" }
        select new Side(piece, run, patterns[piece.Pattern].Runs[run]);

    private Side? Wall(Side side) => side.Piece.Runs[side.At] is { Partner: { } label, PartnerRun: var run } && pieces.TryGetValue(label, out var piece) ? new Side(piece, run, patterns[piece.Pattern].Runs[run]) : null;

    /// <summary>The facet whose ring has an edge of a piece for its own.</summary>
    private string? FacetOf(Side side)
    {
        var (from, to) = Ends(side);
        return side.Piece.Facets.Zip(patterns[side.Piece.Pattern].Facets)
            .FirstOrDefault(facet => Enumerable.Range(0, facet.Second.Count).Any(i => facet.Second[i].DistanceTo(from) <= Tolerances.SamePlace && facet.Second[(i + 1) % facet.Second.Count].DistanceTo(to) <= Tolerances.SamePlace)).First;
    }

    private (FlatPoint From, FlatPoint To) Ends(Side side) => (patterns[side.Piece.Pattern].SewLine[side.Run.From], patterns[side.Piece.Pattern].SewLine[side.Run.To]);

    /// <summary>Lines and marks that lie inward from an edge, nearer to it than any other of the piece would have them.</summary>
    private IEnumerable<IReadOnlyList<FlatPoint>> Lines(Side side, string purpose) => patterns[side.Piece.Pattern].Lines.Where(line => line.Purpose == purpose).Select(line => line.Path);

    /// <summary>Ways from the edge's start at which strokes stand square to it.</summary>
    private double[] TabsOf(Side side)
    {
        var (from, to) = Ends(side);
        var along = (1 / (to - from).Length) * (to - from);
        return
        [
            .. Lines(side, "load tab").Where(line => Math.Abs((line[^1] - line[0]).Dot(along)) <= Tolerances.SamePlace && along.Cross(line[0] - from) is > 0 and < 30)
                .Select(line => (line[0] - from).Dot(along)).Where(at => at > 0 && at < side.Run.LengthMm).Order(),
        ];
    }

    private bool Bears(Side side, string purpose)
    {
        var (from, to) = Ends(side);
        return patterns[side.Piece.Pattern].Drills.Any(drill => drill.Purpose == purpose && drill.At.DistanceTo(0.5 * (from + to)) < 15);
    }

    /// <summary>All the wall round a hub, degrees.</summary>
    private double WallAngle(SpacePoint at) => cover.Faces.Values.Where(face => !roof.Contains(face.Label)).Sum(face =>
    {
        var i = face.Corners.ToList().FindIndex(corner => corner.DistanceTo(at) <= SameCorner);
        if (i < 0)
        {
            return 0;
        }

        var (one, other) = ((face.Corners[(i + 1) % face.Corners.Count] - at).Unit, (face.Corners[(i + face.Corners.Count - 1) % face.Corners.Count] - at).Unit);
        return Math.Atan2(one.Cross(other).Length, one.Dot(other)) * 180 / Math.PI;
    });

    private static double Between(FlatPoint one, FlatPoint other) => Math.Atan2(Math.Abs(one.Cross(other)), one.Dot(other)) * 180 / Math.PI;

    private sealed record Side(SewnPiece Piece, int At, SewnRun Run)
    {
        internal string Arc => Piece.Runs[At].Arc;
    }

    private readonly record struct TrueEdge(string? Roof, string Wall, SpacePoint From, SpacePoint To, double Length);
}
