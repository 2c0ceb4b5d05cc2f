using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Sews a whole cover up on the computer, from the text of pieces.json alone, and holds it to the true cover.</summary>
internal static class SewingUp
{
    // The sum over many pieces of a common size is this good; less on few or small ones.
    private const double AreaShare = 1e-6;

    // Half a diagonal step of the grid of 2^-10 mm: as far as a corner moves when it is snapped.
    private const double CornerError = 0.00069;

    /// <summary>Everything that does not fit; empty when the cover can be sewn.</summary>
    /// <param name="text">The text of pieces.json.</param>
    /// <param name="order">What was ordered.</param>
    internal static IReadOnlyList<string> Faults(string text, SewingOrder order)
    {
        var all = SewnFile.Read(text);
        var file = all.Shell();
        var cover = TrueCover.Build(order.Sizes);
        string[] forms = [.. ListFaults.Find(file, order, cover), .. file.Patterns.SelectMany(PatternFaults.OfForm), .. CornerFaults(file, cover)];
        string[] marks = [.. file.Patterns.SelectMany(pattern => PatternFaults.OfMarks(pattern, order).Concat(DrawnFaults.OfPattern(pattern)))];

        // Lists or shapes that do not hold together cannot be sewn at all.
        return forms.Length > 0 ? [.. forms, .. marks] : [.. marks, .. SewnFaults(file, order, cover, all), .. WindowFaults.Find(all, order, cover)];
    }

    private static IEnumerable<string> CornerFaults(SewnFile file, TrueCover cover)
    {
        var facets = file.Patterns.GroupBy(pattern => pattern.Id).ToDictionary(group => group.Key, group => group.First().Facets);
        return
            from piece in file.Pieces
            where facets.ContainsKey(piece.Pattern) && piece.Facets.All(cover.Faces.ContainsKey)
            from pair in piece.Facets.Zip(facets[piece.Pattern])
            where cover.Faces[pair.First].Corners.Count != pair.Second.Count
            select $"Piece {piece.Label} has {pair.Second.Count} corners on {pair.First}, the cover {cover.Faces[pair.First].Corners.Count}.";
    }

    private static IEnumerable<string> SewnFaults(SewnFile file, SewingOrder order, TrueCover cover, SewnFile all)
    {
        var lifter = new PieceLifter(order, cover, file);
        var placed = file.Pieces.ToDictionary(piece => piece.Label, lifter.Lift);
        var closing = order.ClosingMm is null ? null : new TrueClosing(order.Sizes, cover, (low, high) => IsSewn(placed.Values, low, high));
        foreach (var fault in placed.Values.SelectMany(piece => lifter.Faults(piece).Concat(MakeUpFaults.Find(piece, order, closing))))
        {
            yield return fault;
        }

        foreach (var here in placed.Values)
        {
            foreach (var fault in DrawnFaults.OfPlaced(here, order))
            {
                yield return fault;
            }

            foreach (var run in Enumerable.Range(0, here.Piece.Runs.Count).Where(run => here.Piece.Runs[run].Partner is not null))
            {
                foreach (var fault in SeamFaults.Find(here, run, placed[here.Piece.Runs[run].Partner!], order.Sizes.Base.IsStrip, order.Plan))
                {
                    yield return fault;
                }

                foreach (var fault in DrawnFaults.OfSeam(here, run, placed[here.Piece.Runs[run].Partner!]))
                {
                    yield return fault;
                }
            }
        }

        foreach (var fault in AreaFaults([.. placed.Values], order, cover).Concat(SplashFaults.Find(all, [.. placed.Values], order, cover)).Concat(new PatchFaults(all, order, cover).Find([.. placed.Values], new WindowShop(all, order, cover))))
        {
            yield return fault;
        }
    }

    /// <summary>Whether a piece has a seam between two points of the cover; where the finished edge cuts it off, on the line between them.</summary>
    private static bool IsSewn(IEnumerable<PlacedPiece> placed, SpacePoint low, SpacePoint high) => placed.Any(piece => Enumerable.Range(0, piece.Pattern.Runs.Count)
        .Any(run => piece.Pattern.Runs[run].Role == "seam" && piece.LineOf(run) is var (from, to) && IsOn(low, high, from) && IsOn(low, high, to)));

    private static bool IsOn(SpacePoint low, SpacePoint high, SpacePoint point) =>
        low.DistanceTo(point) + point.DistanceTo(high) <= low.DistanceTo(high) + (2 * Tolerances.OnCover);

    private static IEnumerable<string> AreaFaults(PlacedPiece[] placed, SewingOrder order, TrueCover cover)
    {
        var sewn = placed.Sum(piece => FlatPoint.AreaOf(piece.Pattern.SewLine));
        var truth = order.Covers * cover.Faces.Values.Sum(face => face.Area);

        // A corner that moves by c alters its triangle by half of c times the side across: in all half of c times the girth.
        var girth = placed.Sum(piece => piece.Pattern.Runs.Sum(run => run.LengthMm));
        if (!(Math.Abs(sewn - truth) <= Math.Max(AreaShare * truth, CornerError * girth / 2)))
        {
            yield return FormattableString.Invariant($"The pieces cover {sewn} mm2, the cover has {truth} mm2: {(sewn / truth) - 1:0.##E+0} apart.");
        }
    }
}
