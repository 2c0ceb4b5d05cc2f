using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Seams;

/// <summary>Cuts rows that lie one on the other into sectors from top to base, each slit so that it lies flat.</summary>
internal static class GorePlanner
{
    /// <summary>Plans the rows of one wish.</summary>
    /// <param name="job">The wish, seams, cloth and turns are read.</param>
    /// <param name="struts">The frame.</param>
    /// <param name="index">Index of the wish.</param>
    /// <param name="rows">Its rows, the highest first.</param>
    internal static PanelDrafts Plan(Job job, StrutTable struts, int index, ImmutableArray<int> rows)
    {
        var place = FormattableString.Invariant($"panels[{index}]");
        var rings = rows.Select(struts.Row).ToArray();
        if (rings.Contains(null) || rows.Zip(rows.Skip(1)).Any(pair => pair.First != pair.Second + 1))
        {
            return PanelDrafts.Wrong([new Fault(place + ".rows", "rows " + string.Join(", ", rows), "rows that lie one on the other and close round the frame")]);
        }

        var gores = Sectors(struts, [.. rings.OfType<BandRow>()]);
        var faults = new List<Fault>();
        var slits = Slits(struts, job.Panels[index], place, gores[0], faults);
        RefuseTooWide(job, struts, place, gores[0], slits.ToHashSet(), faults);
        if (faults.Count > 0)
        {
            return PanelDrafts.Wrong(faults);
        }

        return new PanelDrafts(
            [.. gores.Select(gore => new PanelDraft(PanelShape.Gore, 0, string.Empty, gore))],
            [.. slits.SelectMany(slit => struts.Orbit(slit)).Distinct().Order()],
            [],
            job.Panels[index].Slits.IsEmpty && slits.Length > 0 ? [Told(struts, place, slits, gores.Length)] : []);
    }

    /// <summary>Facets of each sector, rows from the top down; cuts go on from row to row.</summary>
    private static ImmutableArray<ImmutableArray<int>> Sectors(StrutTable struts, ImmutableArray<BandRow> rows)
    {
        var cuts = SectorCuts.All(struts)[rows[0].Number].Cuts;
        var parts = BandCutter.Parts(struts, rows[0], cuts);
        var gores = parts.Select(part => new List<int>(part.Facets)).ToArray();
        foreach (var (above, row) in rows.Zip(rows.Skip(1)))
        {
            cuts = SectorCuts.Find(struts, row, (above, cuts), mustContinue: true);
            var below = BandCutter.Parts(struts, row, cuts);
            parts = [.. parts.Select(upper => below.First(part => struts.UpperHub(part.Start) == struts.LowerHub(upper.Start)))];
            foreach (var (gore, part) in gores.Zip(parts))
            {
                gore.AddRange(part.Facets);
            }
        }

        return [.. gores.Select(gore => gore.ToImmutableArray())];
    }

    /// <summary>Slits of the first gore: those named, in whichever sector, or the shortest that lay it flat.</summary>
    private static ImmutableArray<int> Slits(StrutTable struts, PanelWish wish, string place, ImmutableArray<int> gore, List<Fault> faults)
    {
        var own = gore.ToHashSet();
        bool IsWithin(int edge) => own.Contains(struts.Shell.Edges[edge].Left) && own.Contains(struts.Shell.Edges[edge].Right);
        if (wish.Slits.IsEmpty)
        {
            if (SlitFinder.Find(struts, gore) is { } found)
            {
                return found;
            }

            faults.Add(new Fault(place + ".slits", "none", "no slits were found with which a gore lies flat without lying over itself: name them, or take bands"));
            return [];
        }

        var named = StrutWishes.Find(struts, place + ".slits", wish.Slits, faults);
        var outside = named.Where(edge => !struts.Orbit(edge).Any(IsWithin)).ToArray();
        if (outside.Length > 0)
        {
            faults.Add(new Fault(place + ".slits", struts.NamesOf(outside), "struts inside a gore, between two of its facets; these lie at the edge of the gores or outside them"));
        }

        ImmutableArray<int> slits = [.. named.SelectMany(edge => struts.Orbit(edge)).Where(IsWithin).Distinct().Order()];
        if (faults.Count == 0)
        {
            faults.AddRange(PanelFaults.Of(struts, place + ".slits", StrutWishes.Said(wish.Slits, "none"), gore, slits.ToHashSet()));
        }

        return slits;
    }

    private static void RefuseTooWide(Job job, StrutTable struts, string place, ImmutableArray<int> gore, HashSet<int> slits, List<Fault> faults)
    {
        var roll = new RollWidth(job, struts);
        if (faults.Count == 0 && roll.Needed([gore], slits) is var needed && needed > roll.Usable)
        {
            faults.Add(new Fault(
                place + ".rows",
                FormattableString.Invariant($"gores that need {needed:0} mm across the roll"),
                FormattableString.Invariant($"not more than the usable width of {roll.Usable:0} mm. Take bands, gores of fewer rows, or a wider roll.")));
        }
    }

    private static Notice Told(StrutTable struts, string place, ImmutableArray<int> slits, int gores) => new(
        NoticeLevel.Note,
        "gore-slits",
        place + ".slits",
        FormattableString.Invariant($"Each of {gores} gores is slit along {(slits.Length == 1 ? "1 strut" : FormattableString.Invariant($"{slits.Length} struts"))} so that it lies flat, {slits.Sum(slit => struts.Shell.Edges[slit].LengthMm) / 1000:0.00} m a gore, the shortest way found: {struts.NamesOf(slits)}, and so in every sector. Name other struts in \"slits\" if you wish."));
}
