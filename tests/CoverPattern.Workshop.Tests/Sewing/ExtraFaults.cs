using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Holds ground flap and bag to what was ordered, from pieces.json alone.</summary>
internal static class ExtraFaults
{
    /// <summary>Everything that does not fit in a ground flap all round the true cover.</summary>
    internal static IEnumerable<string> OfGroundFlap(SewnFile file, TrueCover cover, double width, bool isInward)
    {
        var patterns = file.Patterns.ToDictionary(pattern => pattern.Id);
        var pieces = file.Pieces.ToDictionary(piece => piece.Label);
        var edges = file.Pieces.Where(piece => piece.Facets.Count > 0).SelectMany(piece => piece.Runs.Select((run, i) => (piece, i, run, Length: patterns[piece.Pattern].Runs.Count > i ? patterns[piece.Pattern].Runs[i].LengthMm : 0)).Where(entry => entry.run.Role == "hem")).ToArray();
        foreach (var (piece, i, run, length) in edges)
        {
            if (run.Partner is null || !pieces.TryGetValue(run.Partner, out var strip) || strip.Runs[run.PartnerRun] is not { } back || back.Partner != piece.Label || back.PartnerRun != i)
            {
                yield return $"{piece.Label} run {i} at the hem has no strip that is sewn to it.";
                continue;
            }

            var pattern = patterns[strip.Pattern];
            if (!(Math.Abs(pattern.Runs[run.PartnerRun].LengthMm - length) <= Tolerances.PartnerLength))
            {
                yield return FormattableString.Invariant($"{strip.Label}: {pattern.Runs[run.PartnerRun].LengthMm} mm along a hem of {length} mm.");
            }

            var area = FlatPoint.AreaOf(pattern.SewLine);
            if (!(Math.Abs(area - (length * width)) <= length * 0.002))
            {
                yield return FormattableString.Invariant($"{strip.Label} has {area} mm2, not {length * width} mm2.");
            }
        }

        var ground = file.Pieces.Where(piece => patterns[piece.Pattern].Kind == "groundFlap").ToArray();
        foreach (var fault in ground.SelectMany(piece => SeamFaults(piece, pieces, patterns, width)))
        {
            yield return fault;
        }

        // What the lower edge of the true cover turns by, corner by corner, is what gussets have between their long sides.
        var turns = TurnsOf(cover).Where(turn => turn > 1).Order().ToArray();
        var apexes = ground.Select(piece => patterns[piece.Pattern]).Where(pattern => pattern.SewLine.Count == 3).Select(ApexOf).Order().ToArray();
        if (apexes.Length != (isInward ? 0 : turns.Length) || apexes.Zip(turns).Any(pair => !(Math.Abs(pair.First - pair.Second) <= 0.01)))
        {
            yield return $"{apexes.Length} gussets do not fill {turns.Length} corners of the edge.";
        }

        var laps = ground.Count(piece => patterns[piece.Pattern].Lines.Any(line => line.Purpose == "neighbour's edge"));
        if (laps != (isInward ? turns.Length : 0))
        {
            yield return $"{laps} laps are drawn.";
        }
    }

    /// <summary>Everything that does not fit in a bag.</summary>
    internal static IEnumerable<string> OfBag(SewnFile file, double length, double width, double height)
    {
        var patterns = file.Patterns.ToDictionary(pattern => pattern.Id);
        var bag = file.Pieces.Where(piece => patterns[piece.Pattern].Kind == "bag").ToDictionary(piece => piece.Label);
        if (bag.Count != 3)
        {
            yield return $"A bag of {bag.Count} pieces.";
        }

        foreach (var fault in bag.Values.SelectMany(piece => SeamFaults(piece, bag, patterns, null)))
        {
            yield return fault;
        }

        var area = bag.Values.Sum(piece => FlatPoint.AreaOf(patterns[piece.Pattern].SewLine));
        var wanted = (length * ((2 * (height + width)) + Math.Min(150, height))) + (2 * width * height);
        if (!(Math.Abs(area - wanted) <= 1e-6 * wanted))
        {
            yield return FormattableString.Invariant($"The bag has {area} mm2 of cloth, not {wanted} mm2.");
        }
    }

    private static IEnumerable<string> SeamFaults(SewnPiece piece, Dictionary<string, SewnPiece> pieces, Dictionary<string, SewnPattern> patterns, double? width)
    {
        var pattern = patterns[piece.Pattern];
        foreach (var (run, i) in piece.Runs.Select((run, i) => (run, i)).Where(entry => entry.run.Role == "seam"))
        {
            if (run.Partner is null || !pieces.TryGetValue(run.Partner, out var other) || other.Runs[run.PartnerRun].Partner != piece.Label || other.Runs[run.PartnerRun].PartnerRun != i)
            {
                yield return $"{piece.Label} run {i} is sewn to nothing that is sewn to it.";
                continue;
            }

            var (here, there) = (pattern.Runs[i], patterns[other.Pattern].Runs[run.PartnerRun]);
            if (!(Math.Abs(here.LengthMm - there.LengthMm) <= Tolerances.PartnerLength) || (width is { } wanted && !(Math.Abs(here.LengthMm - wanted) <= Tolerances.PartnerLength)))
            {
                yield return FormattableString.Invariant($"{piece.Label} run {i}: {here.LengthMm} mm to {there.LengthMm} mm.");
            }

            double[] MarksOf(SewnPattern one, int at) => [.. one.Notches.Where(notch => notch.Run == at).Select(notch => notch.AtMm).Order()];
            var (marks, others) = (MarksOf(pattern, i), MarksOf(patterns[other.Pattern], run.PartnerRun));
            if (marks.Length != others.Length || marks.Zip(others.Reverse()).Any(pair => !(Math.Abs(pair.First + pair.Second - here.LengthMm) <= Tolerances.Notch)))
            {
                yield return $"{piece.Label} run {i}: marks do not meet.";
            }
        }
    }

    private static double ApexOf(SewnPattern gusset)
    {
        var apex = gusset.SewLine.MaxBy(corner => corner.Y);
        var feet = gusset.SewLine.Where(corner => corner != apex).ToArray();
        return Math.Abs(Math.Atan2((feet[0] - apex).Cross(feet[1] - apex), (feet[0] - apex).Dot(feet[1] - apex))) * 180 / Math.PI;
    }

    /// <summary>Angles between parts of the lower edge that follow each other, seen from above, degrees.</summary>
    private static IEnumerable<double> TurnsOf(TrueCover cover)
    {
        var parts = cover.Faces.Values.SelectMany(face => Enumerable.Range(0, face.Corners.Count).Where(i => face.Edges[i].Neighbour is null).Select(i => (From: face.Corners[i], To: face.Corners[(i + 1) % face.Corners.Count]))).ToArray();
        foreach (var (from, to) in parts)
        {
            var next = parts.MinBy(other => other.From.DistanceTo(to));
            var (here, there) = (new FlatPoint(to.X - from.X, to.Y - from.Y), new FlatPoint(next.To.X - next.From.X, next.To.Y - next.From.Y));
            yield return Math.Atan2(here.Cross(there), here.Dot(there)) * 180 / Math.PI;
        }
    }
}
