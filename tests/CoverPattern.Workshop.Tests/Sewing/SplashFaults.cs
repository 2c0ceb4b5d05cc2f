using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What is wrong with a splash band: the line drawn for it on the cover, and its pieces.</summary>
internal static class SplashFaults
{
    // Promise of the patterns' page: scraps smaller than this are left off, and no line is drawn for them; square millimetres.
    private const double Scrap = 200;

    private const double TurnUnder = 12;

    /// <summary>Lines and pieces of the band; nothing to say where the finished edge is not level.</summary>
    internal static IEnumerable<string> Find(SewnFile file, IReadOnlyCollection<PlacedPiece> placed, SewingOrder order, TrueCover cover)
    {
        var edge = cover.Faces.Values.SelectMany(face => face.Edges.SelectMany((side, i) => side.Role == "hem" ? new[] { face.Corners[i].Z, face.Corners[(i + 1) % face.Corners.Count].Z } : [])).ToArray();
        if (order.SplashMm is { } width && (order.Sizes.Base.IsStrip || edge.Max() - edge.Min() > Tolerances.OnCover))
        {
            return [];
        }

        var lines = placed.SelectMany(Lines).ToArray();
        var strips = Strips(file).ToArray();
        return order.SplashMm is not { } height
            ? lines.Length + strips.Length > 0 ? [$"{lines.Length} splash lines and {strips.Length} strips of a band that nobody ordered."] : []
            : HeightFaults(lines, edge.Min() + height).Concat(PieceFaults(lines, strips, order, AreaBelow(cover, edge.Min() + height)));
    }

    private static IEnumerable<(string Piece, double Length, SpacePoint From, SpacePoint To)> Lines(PlacedPiece placed) =>
        from line in placed.Pattern.Lines
        where line.Purpose == "splash line"
        let facet = Enumerable.Range(0, placed.Pattern.Facets.Count).MinBy(facet => Math.Max(ToFacet(placed, facet, line.Path[0]), ToFacet(placed, facet, line.Path[^1])))
        select (placed.Piece.Label, line.Path[0].DistanceTo(line.Path[^1]), placed.Placements[facet].Lift(line.Path[0]), placed.Placements[facet].Lift(line.Path[^1]));

    private static double ToFacet(PlacedPiece placed, int facet, FlatPoint point) =>
        DrawnFaults.IsInside(placed.Pattern.Facets[facet], point) ? 0 : DrawnFaults.DistanceTo(placed.Pattern.Facets[facet], point);

    private static IEnumerable<string> HeightFaults((string Piece, double Length, SpacePoint From, SpacePoint To)[] lines, double height) =>
        lines.Select(line => (line.Piece, Off: Math.Max(Math.Abs(line.From.Z - height), Math.Abs(line.To.Z - height))))
            .Where(line => !(line.Off <= Tolerances.OnCover))
            .Select(line => FormattableString.Invariant($"Piece {line.Piece}: a splash line lies {line.Off:0.###} mm off the band's height."));

    private static IEnumerable<string> PieceFaults(
        (string Piece, double Length, SpacePoint From, SpacePoint To)[] lines, SewnPattern[] strips, SewingOrder order, double below)
    {
        var upper = strips.SelectMany(strip => strip.Runs.Where(run => run.Role == "turned")).ToArray();
        foreach (var run in upper.Where(run => Math.Abs(run.AllowanceMm - TurnUnder) > Tolerances.SamePlace))
        {
            yield return FormattableString.Invariant($"The upper edge of a splash band has {run.AllowanceMm} mm to turn under.");
        }

        var lengths = upper.Select(run => run.LengthMm).Order().ToArray();
        var drawn = lines.Select(line => line.Length).Order().ToArray();
        if (lengths.Length != drawn.Length || lengths.Zip(drawn).Any(pair => !(Math.Abs(pair.First - pair.Second) <= Tolerances.PartnerLength)))
        {
            yield return FormattableString.Invariant($"{lengths.Length} upper edges of the splash band of {lengths.Sum():0.##} mm are laid to {drawn.Length} lines of {drawn.Sum():0.##} mm.");
        }

        var (sewn, wanted) = (strips.Sum(strip => FlatPoint.AreaOf(strip.SewLine)), order.Covers * below);
        var girth = strips.Sum(strip => strip.Runs.Sum(run => run.LengthMm));
        if (!(sewn - wanted <= Tolerances.SamePlace * girth) || !(wanted - sewn <= (Tolerances.SamePlace * girth) + (2 * Scrap * order.Covers * order.Sizes.Frequency * 5)))
        {
            yield return FormattableString.Invariant($"The splash band covers {sewn} mm2; below its height the cover has {wanted} mm2.");
        }
    }

    private static IEnumerable<SewnPattern> Strips(SewnFile file)
    {
        var byId = file.Patterns.GroupBy(pattern => pattern.Id).ToDictionary(group => group.Key, group => group.First());
        return file.Pieces.Where(piece => byId.ContainsKey(piece.Pattern)).Select(piece => byId[piece.Pattern]).Where(pattern => pattern.Kind == "strip" && pattern.Facets.Count == 0);
    }

    /// <summary>Area of the true faces below a level plane.</summary>
    private static double AreaBelow(TrueCover cover, double height) => cover.Faces.Values.Sum(face =>
    {
        var kept = new List<SpacePoint>();
        for (var i = 0; i < face.Corners.Count; i++)
        {
            var (here, there) = (face.Corners[i], face.Corners[(i + 1) % face.Corners.Count]);
            if (here.Z <= height)
            {
                kept.Add(here);
            }

            if ((here.Z - height) * (there.Z - height) < 0)
            {
                kept.Add(here + ((height - here.Z) / (there.Z - here.Z) * (there - here)));
            }
        }

        return kept.Count < 3 ? 0 : (face with { Corners = kept }).Area;
    });
}
