using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Reports;

/// <summary>What the shape of the cover is made of.</summary>
internal static class CoverSection
{
    public static void Write(PageWriter page, Result result)
    {
        page.Line("h2", "Stand-off, ease, hem");
        page.Table("facts", ["What", "Value", "Made of"], Rows(result));
    }

    private static IEnumerable<string[]> Rows(Result result)
    {
        var (job, kinds, ruler) = (result.Job, FacetKinds.Count(result.Shell), Ruler.Of(result.Job));
        yield return ["Stand-off of the cloth", ruler.Allowance(job.StandOff.Millimetres) + " " + ruler.Unit, StandOff(job.StandOff)];
        yield return ["Ease", (job.Ease * 100).ToString("0.###", CultureInfo.InvariantCulture) + " %", "on every length of the finished cover; frame lengths are without it"];
        yield return ["Area of the finished cover", Printed.Number(SummaryNumbers.Of(result).AreaM2, 2) + " m\u00b2", "with skirt, after ease, without allowances; one cover"];
        yield return ["Kinds of facets", Printed.Count(kinds.Merged), $"mirror twins counted as one; {Printed.Count(kinds.Handed)} when told apart; before hem and seams"];
        yield return ["Lower edge", ruler.WithUnit(result.Estimate.PerCover.HemMm), "finished girth, after ease; one cover"];
        yield return ["Skirt drop", ruler.WithUnit(job.Skirt.Drop.Millimetres), $"typed: {job.Skirt.Drop.Typed}; below the lowest base hub centres, before ease"];
        yield return ["Hem", ruler.WithUnit(job.Hem.Allowance), $"depth {job.Hem.Depth.Typed} and turn-under {job.Hem.TurnUnder.Typed}"];
        foreach (var makeUp in job.Seam.Known().Where(makeUp => result.Cut.Arcs.Any(arc => arc.MakeUp == makeUp)))
        {
            yield return ["Seams" + (makeUp == job.Seam.MakeUp ? string.Empty : ", " + makeUp.Name), Printed.Word(makeUp.Form), MadeOf(makeUp)];
        }
    }

    /// <summary>The width as typed, and what the shop's table says beyond the form's own.</summary>
    private static string MadeOf(MakeUp makeUp)
    {
        var usual = MakeUp.Of(makeUp.Form, makeUp.Width);
        var sides = makeUp.OverMm == usual.OverMm && makeUp.UnderMm == usual.UnderMm
            ? string.Empty
            : $"; allowance over {Printed.Number(makeUp.OverMm, 1)} mm, under {Printed.Number(makeUp.UnderMm, 1)} mm";
        var rows = makeUp.Rows > 1 ? $"; {Printed.Count(makeUp.Rows)} rows of stitches {Printed.Number(makeUp.RowGapMm, 1)} mm apart" : string.Empty;
        var binding = makeUp.BindingMm > 0 ? $"; binding cut {Printed.Number(makeUp.BindingMm, 1)} mm wide" : string.Empty;
        return $"width {makeUp.Width.Typed}{sides}{rows}{binding}";
    }

    private static string StandOff(StandOffWish standOff)
    {
        var isHub = standOff.HubHeight.Millimetres > standOff.TubeRadius.Millimetres;
        return $"the larger of tube radius {standOff.TubeRadius.Typed} and hub height {standOff.HubHeight.Typed}, so the {(isHub ? "hub" : "tube")}; and padding {standOff.Padding.Typed}";
    }
}
