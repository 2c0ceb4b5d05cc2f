using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Holds what closes one opening to the cover, from pieces.json alone: every part fills it, every join has its cloth, both sides of every zip are one length.</summary>
/// <param name="file">The file.</param>
/// <param name="order">What was ordered.</param>
internal sealed class FilledOpening(SewnFile file, FillOrder order)
{
    private readonly Dictionary<string, SewnPattern> patterns = file.Patterns.ToDictionary(pattern => pattern.Id);
    private readonly List<string> faults = [];

    /// <summary>Everything that does not fit; empty when the opening can be closed.</summary>
    internal static IReadOnlyList<string> Faults(string text, FillOrder order) => Faults(SewnFile.Read(text), order);

    /// <summary>Everything that does not fit; empty when the opening can be closed.</summary>
    internal static IReadOnlyList<string> Faults(SewnFile file, FillOrder order)
    {
        var filled = new FilledOpening(file, order);
        filled.Hold();
        return filled.faults;
    }

    private void Hold()
    {
        var rim = Rims(piece => piece.Facets.Count > 0);
        foreach (var (letter, kind) in order.Parts)
        {
            var own = letter == order.Parts[0].Letter ? string.Empty : letter;
            var part = file.Pieces.Where(piece => patterns[piece.Pattern].Kind == kind && piece.Facets.Count == 0 && order.Owns(piece.Label)).ToArray();
            if (part.Length == 0)
            {
                faults.Add($"There is no {kind}.");
                continue;
            }

            HoldSides(kind, own, rim, part);
            HoldArea(kind, part);
            HoldLeaves(kind, part);
        }

        HoldZips();
    }

    /// <summary>The runs along the rim by their arc, as cut.</summary>
    private Dictionary<string, (SewnRun Run, double Drawn)> Rims(Func<SewnPiece, bool> isMeant) => file.Pieces.Where(isMeant)
        .SelectMany(piece => piece.Runs.Select((run, i) => (run.Arc, Pattern: patterns[piece.Pattern], Index: i)))
        .Where(entry => entry.Pattern.RunOf(entry.Index).Role == "rim" && order.Owns(entry.Arc) && !IsMiddle(entry.Arc))
        .ToDictionary(entry => entry.Arc, entry => (entry.Pattern.RunOf(entry.Index), Drawn(entry.Pattern, entry.Index)));

    private static double Drawn(SewnPattern pattern, int run) => pattern.PathOf(run) is var path ? path.Skip(1).Select((point, i) => path[i].DistanceTo(point)).Sum() : 0;

    private void HoldSides(string kind, string own, Dictionary<string, (SewnRun Run, double Drawn)> rim, SewnPiece[] part)
    {
        var sides = Rims(part.Contains);
        foreach (var (arc, (run, drawn)) in rim)
        {
            if (!sides.TryGetValue(order.IsRing ? arc + "x" + (kind == "pane" ? "p" : "s") : arc + own, out var other))
            {
                faults.Add($"{arc}: no {kind} is made for it.");
                continue;
            }

            // Before anything is rounded to what is sold both sides of a zip are one length.
            if (!(Math.Abs(run.LengthMm - other.Run.LengthMm) <= Tolerances.PartnerLength) || !(Math.Abs(drawn - other.Drawn) <= Tolerances.PartnerLength))
            {
                faults.Add(FormattableString.Invariant($"{arc}: {drawn:0.####} mm of the cover meet {other.Drawn:0.####} mm of the {kind}."));
            }

            var join = order.JoinOf(arc);
            if (!(Math.Abs(other.Run.AllowanceMm - order.Beyond(kind, join)) <= Tolerances.SamePlace))
            {
                faults.Add(FormattableString.Invariant($"{arc}: the {kind} has {other.Run.AllowanceMm:0.###} mm beyond the rim, where it is {join}."));
            }
        }

        if (sides.Count != rim.Count)
        {
            faults.Add($"The {kind} has {sides.Count} sides for {rim.Count} of the rim.");
        }
    }

    private bool IsMiddle(string arc) => arc.StartsWith(order.Label + "m", StringComparison.Ordinal);

    private void HoldArea(string kind, SewnPiece[] part)
    {
        var area = part.Sum(piece => FlatPoint.AreaOf(patterns[piece.Pattern].SewLine));
        if (!(Math.Abs(area - order.AreaMm2) <= Math.Max(1e-6 * order.AreaMm2, order.AreaError)))
        {
            faults.Add(FormattableString.Invariant($"The {kind} fills {area:0.###} mm2 of an opening of {order.AreaMm2:0.###} mm2."));
        }
    }

    /// <summary>Two leaves meet on one line, corner by corner.</summary>
    private void HoldLeaves(string kind, SewnPiece[] part)
    {
        var middle = part.SelectMany(piece => piece.Runs.Select((run, i) => (run, Length: Drawn(patterns[piece.Pattern], i)))).Where(entry => IsMiddle(entry.run.Arc)).ToArray();
        if (middle.Length != (order.HasLeaves ? 2 : 0))
        {
            faults.Add($"The {kind} has {middle.Length} edges in the middle.");
        }
        else if (order.HasLeaves && (!(Math.Abs(middle[0].Length - middle[1].Length) <= Tolerances.PartnerLength) || middle.Any(edge => edge.run.Partner is null)))
        {
            faults.Add(FormattableString.Invariant($"The leaves of the {kind} meet with {middle[0].Length:0.####} and {middle[1].Length:0.####} mm."));
        }
    }

    /// <summary>The zips said are as long as the sides that they close.</summary>
    private void HoldZips()
    {
        if (order.Zips is not { } zips)
        {
            return;
        }

        var rim = Rims(piece => piece.Facets.Count > 0);
        var middle = order.HasLeaves ? file.Pieces.SelectMany(piece => piece.Runs.Select((run, i) => (run.Arc, Length: Drawn(patterns[piece.Pattern], i)))).First(edge => edge.Arc == order.Label + "m").Length : 0;
        var zipped = middle + rim.Where(side => order.JoinOf(side.Key) == "zip").Sum(side => side.Value.Drawn);
        foreach (var part in order.Parts)
        {
            var said = zips.Where(zip => zip.Part == part.Letter).Sum(zip => zip.LengthMm);
            if (!(Math.Abs(said - zipped) <= Tolerances.PartnerLength * zips.Count))
            {
                faults.Add(FormattableString.Invariant($"Zips of {said:0.####} mm are to close {zipped:0.####} mm of the {part.Kind}."));
            }
        }
    }
}
