using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Seams;

/// <summary>Cuts whole rows into bands.</summary>
internal sealed class BandPlanner
{
    private readonly StrutTable struts;
    private readonly RollWidth roll;
    private readonly PanelWish wish;
    private readonly string place;
    private readonly List<Fault> faults = [];
    private readonly List<PanelDraft> panels = [];
    private readonly List<int> cutEdges = [];
    private readonly ImmutableDictionary<int, (BandRow Row, ImmutableArray<int> Cuts)> sectors;

    private BandPlanner(Job job, StrutTable struts, int index)
    {
        (this.struts, roll, wish) = (struts, new RollWidth(job, struts), job.Panels[index]);
        place = FormattableString.Invariant($"panels[{index}]");
        sectors = SectorCuts.All(struts);
    }

    /// <summary>Plans the rows of one wish.</summary>
    /// <param name="job">The wish, seams, cloth and turns are read.</param>
    /// <param name="struts">The frame.</param>
    /// <param name="index">Index of the wish.</param>
    /// <param name="rows">Its rows, the highest first.</param>
    internal static PanelDrafts Plan(Job job, StrutTable struts, int index, ImmutableArray<int> rows)
    {
        var planner = new BandPlanner(job, struts, index);
        var named = StrutWishes.Find(struts, planner.place + ".at", planner.wish.At, planner.faults);
        planner.RefuseOtherStruts(named, rows);
        foreach (var row in rows)
        {
            planner.PlanRow(row, named);
        }

        return planner.faults.Count > 0
            ? PanelDrafts.Wrong(planner.faults)
            : new PanelDrafts([.. planner.panels], [.. planner.cutEdges], [], [.. planner.Told(rows)]);
    }

    private void RefuseOtherStruts(ImmutableArray<int> named, ImmutableArray<int> rows)
    {
        foreach (var edge in named.Where(edge => !rows.Any(row => sectors.TryGetValue(row, out var sector) && sector.Row.Uprights.Contains(edge))))
        {
            faults.Add(new Fault(place + ".at", struts.NameOf(edge), "a strut between two facets of one of these rows, from its lower ring of hubs to its upper one"));
        }
    }

    private void PlanRow(int number, ImmutableArray<int> named)
    {
        if (!sectors.TryGetValue(number, out var sector))
        {
            faults.Add(new Fault(place + ".rows", FormattableString.Invariant($"row {number}"), "rows that close round the frame; make groups or single facets of this one"));
            return;
        }

        if (CutsOf(sector.Row, sector.Cuts, named) is not { } cuts)
        {
            return;
        }

        var parts = BandCutter.Parts(struts, sector.Row, cuts);
        var slits = cuts.Select(cut => sector.Row.Uprights[cut]).ToHashSet();
        foreach (var part in parts)
        {
            faults.AddRange(PanelFaults.Of(struts, place, FormattableString.Invariant($"row {number} in {parts.Length} parts"), part.Facets, slits));
            panels.Add(new PanelDraft(PanelShape.Band, number, string.Empty, part.Facets));
        }

        cutEdges.AddRange(slits.Order());
        RefuseTooWide(sector.Row, sector.Cuts, parts);
    }

    /// <summary>Positions of the cuts; null after a fault.</summary>
    private ImmutableArray<int>? CutsOf(BandRow row, ImmutableArray<int> sector, ImmutableArray<int> named)
    {
        int[] here = [.. named.SelectMany(edge => struts.Orbit(edge)).Select(edge => row.Uprights.IndexOf(edge)).Where(at => at >= 0).Distinct().Order()];
        if (wish.Parts > row.Facets.Length)
        {
            faults.Add(new Fault(place + ".parts", FormattableString.Invariant($"{wish.Parts}"), FormattableString.Invariant($"1 to {row.Facets.Length}, the number of facets of row {row.Number}")));
            return null;
        }

        var cuts = here.Length > 0 ? [.. here] : wish.Parts is { } parts ? BandCutter.Divide(row, sector, parts) : sector;
        if (wish.Longest is not { } longest || LongestOf(row, cuts) <= longest.Millimetres && (wish.Parts is not null || here.Length > 0))
        {
            return cuts;
        }

        var keepsSectors = SectorCuts.LargestCorner(struts, row) > SectorCuts.InsideCorner;
        var enough = BandCutter.Numbers(row, sector.Length, keepsSectors)
            .FirstOrDefault(number => LongestOf(row, BandCutter.Divide(row, sector, number)) <= longest.Millimetres);
        if (enough > 0 && wish.Parts is null && here.Length == 0)
        {
            return BandCutter.Divide(row, sector, enough);
        }

        faults.Add(new Fault(
            place + ".longest",
            longest.Typed,
            enough > 0
                ? FormattableString.Invariant($"row {row.Number} is cut into parts up to {LongestOf(row, cuts):0} mm long; {enough} parts would do")
                : FormattableString.Invariant($"at least {LongestOf(row, [.. Enumerable.Range(0, row.Facets.Length)]):0} mm, the longest single facet of row {row.Number}")));
        return null;
    }

    /// <summary>Long side of the longest part, sew line to sew line, millimetres; without limit when a part cannot lie flat.</summary>
    private double LongestOf(BandRow row, ImmutableArray<int> cuts)
    {
        var slits = cuts.Select(cut => row.Uprights[cut]).ToHashSet();
        return BandCutter.Parts(struts, row, cuts).Max(part =>
            FlatPanel.Lay(struts.Shell, part.Facets, slits) is { IsExact: true } flat ? LeastBox.Round(flat.Ring).Length : double.PositiveInfinity);
    }

    private void RefuseTooWide(BandRow row, ImmutableArray<int> sector, ImmutableArray<BandPart> parts)
    {
        var needed = WidthNeeded(row, [.. parts.Select(part => row.Uprights.IndexOf(part.Start)).Order()]);
        if (needed <= roll.Usable)
        {
            return;
        }

        var widths = BandCutter.Numbers(row, sector.Length, keepsSectors: false).Select(number => (Number: number, Width: WidthNeeded(row, BandCutter.Divide(row, sector, number)))).ToArray();
        var least = widths.MinBy(entry => entry.Width);
        var enough = widths.FirstOrDefault(entry => entry.Number > parts.Length && entry.Width <= roll.Usable);
        faults.Add(new Fault(
            place + (wish.Parts is null ? ".rows" : ".parts"),
            FormattableString.Invariant($"row {row.Number} in {parts.Length} parts, which needs {needed:0} mm across the roll"),
            enough.Number > 0
                ? FormattableString.Invariant($"not more than the usable width of {roll.Usable:0} mm; only its bend makes it so wide: {enough.Number} parts would do, with {enough.Width:0} mm")
                : FormattableString.Invariant($"not more than the usable width of {roll.Usable:0} mm; no number of parts makes this row narrower than {least.Width:0} mm. Take a wider roll, or a frame of more and lower rows.")));
    }

    private double WidthNeeded(BandRow row, ImmutableArray<int> cuts) =>
        roll.Needed(BandCutter.Parts(struts, row, cuts).Select(part => part.Facets), cuts.Select(cut => row.Uprights[cut]).ToHashSet());

    private IEnumerable<Notice> Told(ImmutableArray<int> rows)
    {
        if (wish.Parts is null && wish.At.IsEmpty && wish.Longest is null)
        {
            var first = rows.Select(row => struts.NameOf(BandCutter.Parts(struts, sectors[row].Row, sectors[row].Cuts)[0].Start));
            yield return new Notice(
                NoticeLevel.Note,
                "band-cuts",
                place,
                FormattableString.Invariant($"Rows are cut at the sector edges, where their inside corners are: along {string.Join(", ", first)}, and so in each of {struts.Turns.Length} sectors. Uprights of these rows meet at hubs; name other struts in \"at\" to stagger them."));
        }
    }
}
