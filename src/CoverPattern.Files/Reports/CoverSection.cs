using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
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
        yield return ["Skirt drop", ruler.WithUnit(job.Skirt.Drop.Millimetres), $"typed: {job.Skirt.Drop.Typed}; below {Below(job)}, before ease"];
        yield return ["Skirt", Printed.Word(job.Skirt.Shape), Shape(job.Skirt.Shape)];
        yield return ["Hem", ruler.WithUnit(job.Hem.Allowance), $"{Printed.Word(job.Hem.Kind)}; depth {job.Hem.Depth.Typed} and turn-under {job.Hem.TurnUnder.Typed}{(job.Hem.Fitting is { } fitting ? $", and {fitting.Typed} to be trimmed on the frame" : string.Empty)}"];
        foreach (var row in Held(result, ruler))
        {
            yield return row;
        }

        foreach (var makeUp in job.SeamMakeUps.Where(makeUp => result.Cut.Arcs.Any(arc => arc.MakeUp == makeUp)))
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

    private static string Below(Job job) =>
        job.Skirt.Shape == SkirtShape.Chords ? "every base hub"
        : !job.Deck.Ground.IsEmpty ? "the ground at every base hub"
        : !job.Deck.Heights.IsEmpty ? "the deck from which the base hubs were measured"
        : job.Deck.Plinth is { } plinth ? $"a deck {plinth.Typed} below the lowest base hub centres"
        : job.Deck.Datum == DeckDatum.Mean ? "the mean of the base hub centres"
        : "the lowest base hub centres";

    private static string Shape(SkirtShape shape) => shape switch
    {
        SkirtShape.Slope => "the base facets' planes go on to the finished edge",
        SkirtShape.Chords => "plumb; the finished edge runs parallel to the base chords",
        _ => "plumb down to the finished edge",
    };

    private static IEnumerable<string[]> Held(Result result, Ruler ruler)
    {
        var count = HemCount.Of(result.Job.Hem, result.Cut);
        if (result.Job.Hem.Fixings is { } fixings)
        {
            yield return ["Fixing points", Printed.Count(count.Fixings), $"at every base hub and between at most {fixings.Spacing.Typed} apart, {fixings.Height.Typed} over the finished edge; one cover"];
        }

        foreach (var (name, length) in new[] { ("Webbing in the hem", count.WebbingMm), ("Hem sleeve", count.SleeveMm), ("Screw strip", count.StripMm), ("Raw edge in the gaps, to be bound", count.BoundMm) })
        {
            if (length > 0)
            {
                yield return [name, ruler.WithUnit(length), "one cover, without joints"];
            }
        }
    }

    private static string StandOff(StandOffWish standOff)
    {
        var isHub = standOff.HubHeight.Millimetres > standOff.TubeRadius.Millimetres;
        return $"the larger of tube radius {standOff.TubeRadius.Typed} and hub height {standOff.HubHeight.Typed}, so the {(isHub ? "hub" : "tube")}; and padding {standOff.Padding.Typed}";
    }
}
