using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Patterns.Seams;

/// <summary>Labels panels and hangs the skirt on them.</summary>
/// <remarks>
/// Facets "P1.07" after their facet, bands "B1.3" by row and part, gores "G2", groups by their name or "K1"; the skirt strip of a
/// panel has the panel's label with "k" behind it. Numbers are padded so that labels sort as text.
/// </remarks>
internal static class PanelLabels
{
    /// <summary>All panels, and the edges along which skirt strips that go all round are cut.</summary>
    internal static (ImmutableArray<PlannedPanel> Panels, ImmutableArray<int> Slits) Label(
        StrutTable struts, ImmutableArray<PanelDraft> drafts, IReadOnlySet<int> slits)
    {
        var panels = ImmutableArray.CreateBuilder<PlannedPanel>();
        var skirtSlits = ImmutableArray.CreateBuilder<int>();
        foreach (var (draft, label) in drafts.Zip(Labels(struts, drafts)))
        {
            if (draft.Shape == PanelShape.Facet)
            {
                panels.Add(PanelPlan.Single(struts.Shell, draft.Facets[0]));
                continue;
            }

            var runs = SkirtRuns.Of(struts.Shell, draft.Facets, slits);
            panels.Add(new PlannedPanel(label, draft.Shape, [.. draft.Facets, .. runs.Where(run => run.Length == 1).Select(run => run[0])]));
            ImmutableArray<int>[] strips = [.. runs.Where(run => run.Length > 1)];
            panels.AddRange(strips.Select((strip, i) => new PlannedPanel(
                label + "k" + (strips.Length > 1 ? (i + 1).ToString(CultureInfo.InvariantCulture) : string.Empty), PanelShape.Skirt, strip)));
            skirtSlits.AddRange(strips.Where(strip => strip.Length > 2).Select(strip => SkirtRuns.Between(struts.Shell, strip[^1], strip[0])).Where(edge => edge >= 0));
        }

        return (panels.ToImmutable(), skirtSlits.ToImmutable());
    }

    private static IEnumerable<string> Labels(StrutTable struts, ImmutableArray<PanelDraft> drafts)
    {
        var counts = drafts.CountBy(Kind).ToDictionary();
        var rows = Digits(struts.Frame.Facets.Max(facet => facet.Row));
        var parts = counts.Where(count => count.Key.Shape == PanelShape.Band).Select(count => Digits(count.Value)).DefaultIfEmpty(1).Max();
        var numbers = new Dictionary<(PanelShape Shape, int Row), int>();
        foreach (var draft in drafts)
        {
            var number = draft.Name.Length > 0 ? 0 : numbers[Kind(draft)] = numbers.GetValueOrDefault(Kind(draft)) + 1;
            yield return draft.Shape switch
            {
                PanelShape.Band => "B" + Padded(draft.Row, rows) + "." + Padded(number, parts),
                PanelShape.Gore => "G" + Padded(number, Digits(counts[Kind(draft)])),
                PanelShape.Group when draft.Name.Length > 0 => draft.Name,
                _ => "K" + Padded(number, Digits(counts[Kind(draft)])),
            };
        }
    }

    private static (PanelShape Shape, int Row) Kind(PanelDraft draft) => (draft.Shape, draft.Row);

    private static int Digits(int largest) => largest.ToString(CultureInfo.InvariantCulture).Length;

    private static string Padded(int number, int digits) => number.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0');
}
