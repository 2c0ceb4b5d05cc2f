using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Writes the liner's own job from the order's: what docs/designs/inner-shells.md tells.</summary>
internal static class LinerJob
{
    // Turned twice, narrower than the cover's (common practice, no source), millimetres.
    private const double HemDepth = 25;
    private const double HemTurn = 12;

    /// <summary>Distance of the liner's facets from those of the struts' axes, outward: the gap below the cover, and never among tubes and hubs.</summary>
    internal static double StandOffOf(Job job) => Math.Min(
        job.StandOff.Millimetres - job.Liner!.Gap.Millimetres,
        -Math.Max(job.StandOff.TubeRadius.Millimetres, job.StandOff.HubHeight.Millimetres));

    /// <summary>The job; its openings are the holes below those of the cover.</summary>
    /// <param name="job">The order.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="openings">What was laid on the cover.</param>
    internal static Job Of(Job job, Frame frame, OpeningLaying openings)
    {
        var liner = job.Liner!;
        return job with
        {
            StandOff = new StandOffWish(Mm(0), Mm(0), Mm(StandOffOf(job))) { HubRadius = Mm(0) },
            Ease = 0,
            Skirt = new SkirtWish(Mm(-liner.Hem.Millimetres)),
            Hem = new HemWish(Mm(HemDepth), Mm(HemTurn)),
            Seam = new SeamWish(LinerWish.MakeUps[0]) { Others = liner.RoofRow is { } row ? [new SeamChoice(SeamSet.Struts, StrutsBelow(frame, row), LinerWish.MakeUps[1])] : [] },
            Cloths = [.. job.Cloths.OrderBy(cloth => !string.Equals(cloth.Name, liner.Cloth, StringComparison.Ordinal))],
            Windows = [],
            Openings = [.. openings.Windows.Where(window => IsWanted(liner, window.Label)).Select(window => Hole(liner, window, openings)), .. openings.Openings.Where(opening => IsWanted(liner, opening.Label)).Select(opening => Hole(liner, opening.Wish))],
            Pipes = [],
            Clearances = new ClearanceWish(Mm(0), Mm(0), Mm(10), Mm(20), Mm(20), Mm(0)),
            Marks = new MarkWish(TieRule.Every, Mm(0), HubPatchPlace.None, default, default),
            Outside = [],
            Insulation = null,
            GroundFlap = null,
            Bag = null,
            Vents = null,
            Liner = null,
            Roof = null,
        };
    }

    /// <summary>Labels of the cover's windows and openings below which there are holes, in the order of the liner's own openings.</summary>
    internal static ImmutableArray<string> HolesOf(LinerWish liner, OpeningLaying openings) =>
        [.. openings.Windows.Select(window => window.Label).Concat(openings.Openings.Select(opening => opening.Label)).Where(label => IsWanted(liner, label))];

    /// <summary>The struts along the ring of hubs below a row.</summary>
    internal static ImmutableArray<string> StrutsBelow(Frame frame, int row) =>
        [.. frame.Struts.Where(strut => frame.Hubs[strut.From].Ring == row - 1 && frame.Hubs[strut.To].Ring == row - 1).Select(strut => $"{frame.Hubs[strut.From].Label}-{frame.Hubs[strut.To].Label}")];

    private static bool IsWanted(LinerWish liner, string label) => liner.Openings?.Contains(label, StringComparer.Ordinal) ?? true;

    /// <summary>The hole below a round window.</summary>
    private static OpeningWish Hole(LinerWish liner, LaidWindow window, OpeningLaying openings) => new(
        new OutlineWish(OutlineForm.Circle) { Width = Mm(window.Wish.Aperture.Millimetres + (2 * liner.Margin.Millimetres)) },
        new OpeningPlace("F" + FacetOf(window), window.Wish.Right, window.Wish.Up),
        LayingRule.Either,
        window.Wish.TurnUnder);

    private static string FacetOf(LaidWindow window) => window.Label[1..].Split('-')[0];

    /// <summary>The hole below an opening: as large with the margin all round, held by nothing and filled by nothing.</summary>
    private static OpeningWish Hole(LinerWish liner, OpeningWish wish)
    {
        Measure Wider(Measure size) => size.Millimetres > 0 ? Mm(size.Millimetres + (2 * liner.Margin.Millimetres)) : size;
        var outline = wish.Outline with
        {
            Width = Wider(wish.Outline.Width),
            Height = Wider(wish.Outline.Height),
            Corner = wish.Outline.Corner.Millimetres > 0 ? Mm(wish.Outline.Corner.Millimetres + liner.Margin.Millimetres) : wish.Outline.Corner,
        };
        return new OpeningWish(outline, wish.Place, wish.Laid, wish.TurnUnder) { Doubled = wish.Doubled };
    }

    private static Measure Mm(double millimetres) => new(millimetres, FormattableString.Invariant($"{millimetres:0.###} mm"));
}
