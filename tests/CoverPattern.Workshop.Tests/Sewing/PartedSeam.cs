using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Holds a cover with a zip in a seam to the same cover without, from two pieces.json alone.</summary>
internal static class PartedSeam
{
    private const string MakeUp = "zip in a seam";
    private const double TurnedBack = 20;

    /// <summary>Everything that does not fit; empty when the zip takes the part of the seam that was ordered and nothing else changes.</summary>
    /// <param name="before">The file without the zip.</param>
    /// <param name="text">The file with it.</param>
    /// <param name="fromMm">Where it begins, from one end of the seam.</param>
    /// <param name="lengthMm">Its length.</param>
    internal static IReadOnlyList<string> Faults(string before, string text, double fromMm, double lengthMm)
    {
        var (whole, file) = (SewnFile.Read(before), SewnFile.Read(text));
        var runs = RunsOf(file);
        var zips = runs.Where(run => run.Run.MakeUp == MakeUp).ToArray();
        if (zips.Length != 2 || zips[0].Sewn.Arc != zips[1].Sewn.Arc || !zips[0].Sewn.Arc.EndsWith('b'))
        {
            return [$"{zips.Length} edges bear the zip."];
        }

        var seam = zips[0].Sewn.Arc[..^1];
        var parts = runs.Where(run => run.Sewn.Arc.Length == seam.Length + 1 && run.Sewn.Arc.StartsWith(seam, StringComparison.Ordinal)).ToArray();
        var old = RunsOf(whole).Where(run => run.Sewn.Arc == seam).ToArray();
        return
        [
            .. Partners(file, parts),
            .. zips.Where(zip => !(Math.Abs(zip.Run.LengthMm - lengthMm) <= Tolerances.PartnerLength)).Select(zip => FormattableString.Invariant($"{zip.Piece.Label}: the zip is {zip.Run.LengthMm} mm long.")),
            .. zips.Where(zip => zip.Run.AllowanceMm != TurnedBack).Select(zip => $"{zip.Piece.Label}: {zip.Run.AllowanceMm} mm are turned back."),
            .. parts.GroupBy(part => part.Piece.Label).SelectMany(side => Side(side.Key, [.. side], old, fromMm)),
            .. Areas(whole, file),
        ];
    }

    private static (SewnPiece Piece, SewnPattern Pattern, int Index, SewnRun Run, SewnPieceRun Sewn)[] RunsOf(SewnFile file) =>
    [
        .. from piece in file.Pieces
           let pattern = file.Patterns.First(pattern => pattern.Id == piece.Pattern)
           from i in Enumerable.Range(0, pattern.Runs.Count)
           select (piece, pattern, i, pattern.Runs[i], piece.Runs[i]),
    ];

    /// <summary>One side: three parts in a row, together as long as the seam was, one end as long as ordered.</summary>
    private static IEnumerable<string> Side(string label, (SewnPiece Piece, SewnPattern Pattern, int Index, SewnRun Run, SewnPieceRun Sewn)[] parts, (SewnPiece Piece, SewnPattern Pattern, int Index, SewnRun Run, SewnPieceRun Sewn)[] old, double fromMm)
    {
        var ordered = parts.OrderBy(part => part.Sewn.Arc, StringComparer.Ordinal).ToArray();
        if (ordered.Length != 3 || ordered[1].Index != (ordered[0].Index + ordered[2].Index) / 2.0)
        {
            // Runs are counted round the piece: the parts may lie across its first corner.
            var count = parts[0].Pattern.Runs.Count;
            if (ordered.Length != 3 || !(((ordered[0].Index + 1) % count == ordered[1].Index && (ordered[1].Index + 1) % count == ordered[2].Index) || ((ordered[2].Index + 1) % count == ordered[1].Index && (ordered[1].Index + 1) % count == ordered[0].Index)))
            {
                yield return $"{label}: the seam's {ordered.Length} parts do not follow each other.";
                yield break;
            }
        }

        var whole = old.First(run => run.Piece.Label == label).Run.LengthMm;
        if (!(Math.Abs(ordered.Sum(part => part.Run.LengthMm) - whole) <= Tolerances.PartnerLength))
        {
            yield return FormattableString.Invariant($"{label}: the parts are {ordered.Sum(part => part.Run.LengthMm)} mm long, the seam was {whole} mm.");
        }

        if (!(Math.Min(Math.Abs(ordered[0].Run.LengthMm - fromMm), Math.Abs(ordered[2].Run.LengthMm - fromMm)) <= Tolerances.PartnerLength))
        {
            yield return FormattableString.Invariant($"{label}: the zip begins {ordered[0].Run.LengthMm} or {ordered[2].Run.LengthMm} mm from an end.");
        }

        // In one line: from end to end straight.
        var (start, end) = (Path(ordered[0]), Path(ordered[2]));
        var far = start.SelectMany(point => end.Select(other => point.DistanceTo(other))).Max();
        if (!(Math.Abs(far - whole) <= Tolerances.PartnerLength))
        {
            yield return FormattableString.Invariant($"{label}: the parts bend: {far} mm from end to end.");
        }
    }

    private static FlatPoint[] Path((SewnPiece Piece, SewnPattern Pattern, int Index, SewnRun Run, SewnPieceRun Sewn) part) => part.Pattern.PathOf(part.Index);

    private static IEnumerable<string> Partners(SewnFile file, (SewnPiece Piece, SewnPattern Pattern, int Index, SewnRun Run, SewnPieceRun Sewn)[] parts)
    {
        foreach (var (piece, pattern, index, run, sewn) in parts)
        {
            var other = parts.FirstOrDefault(part => part.Piece.Label == sewn.Partner && part.Index == sewn.PartnerRun);
            if (other.Piece is null || other.Sewn.Arc != sewn.Arc || other.Run.Side == run.Side || !(Math.Abs(other.Run.LengthMm - run.LengthMm) <= Tolerances.PartnerLength))
            {
                yield return $"{sewn.Arc}: {piece.Label} and {sewn.Partner} do not fit each other.";
                continue;
            }

            double[] Marks(SewnPattern of, int at) => [.. of.Notches.Where(notch => notch.Run == at).Select(notch => notch.AtMm).Order()];
            var (marks, others) = (Marks(pattern, index), Marks(other.Pattern, other.Index));
            if (marks.Length != others.Length || marks.Length == 0 || marks.Zip(others.Reverse()).Any(pair => !(Math.Abs(pair.First + pair.Second - run.LengthMm) <= Tolerances.Notch)))
            {
                yield return $"{sewn.Arc}: the marks of {piece.Label} and {sewn.Partner} do not meet.";
            }
        }
    }

    /// <summary>Nothing is taken out: every piece covers what it covered.</summary>
    private static IEnumerable<string> Areas(SewnFile whole, SewnFile file)
    {
        double AreaOf(SewnFile of, SewnPiece piece) => FlatPoint.AreaOf(of.Patterns.First(pattern => pattern.Id == piece.Pattern).SewLine);
        foreach (var piece in file.Pieces)
        {
            var old = whole.Pieces.FirstOrDefault(other => other.Label == piece.Label);
            if (old is null || !(Math.Abs(AreaOf(file, piece) - AreaOf(whole, old)) <= 4))
            {
                yield return $"Piece {piece.Label} covers something else than without the zip.";
            }
        }
    }
}
