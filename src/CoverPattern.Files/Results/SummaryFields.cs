using System.Collections.Immutable;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Lays.Estimates;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;
using static CoverPattern.Files.Results.SummaryFile;

namespace CoverPattern.Files.Results;

/// <summary>The sections of summary.json.</summary>
internal static class SummaryFields
{
    internal static JsonObject Frame(Frame frame) => new()
    {
        ["hubs"] = frame.Hubs.Length,
        ["struts"] = frame.Struts.Length,
        ["facets"] = frame.Facets.Length,
        ["baseHubs"] = frame.Base.Length,
        ["strutClasses"] = List(frame.Classes.Select(one => new JsonObject
        {
            ["label"] = one.Label,
            ["lengthMm"] = Round(one.LengthMm),
            ["count"] = one.Count,
        })),
        ["heightMm"] = Round(frame.Hubs.Max(hub => hub.Position.Z)),
        ["baseRaiseMm"] = new JsonObject(frame.Base.Select(hub => new System.Collections.Generic.KeyValuePair<string, JsonNode?>(
            frame.Hubs[hub].Label, Round(frame.Hubs[hub].Position.Z)))),
    };

    internal static JsonObject Cover(Result result, SummaryNumbers numbers)
    {
        var kinds = FacetKinds.Count(result.Shell);
        return new JsonObject
        {
            ["areaM2"] = Round(numbers.AreaM2),
            ["facetKinds"] = new JsonObject { ["merged"] = kinds.Merged, ["handed"] = kinds.Handed },
            ["standOffMm"] = Round(result.Shell.StandOffMm),
            ["ease"] = result.Shell.Ease,
        };
    }

    /// <summary>Fixings, webbing, sleeve and strip stand there when the job asks for them.</summary>
    internal static JsonObject Hem(Result result, SummaryNumbers numbers)
    {
        var hem = new JsonObject { ["lengthMm"] = Round(numbers.HemMm), ["lengthAllCoversMm"] = Round(numbers.HemMm * result.Job.Covers) };
        var count = HemCount.Of(result.Job.Hem, result.Cut);
        foreach (var (name, value) in new[] { ("fixings", count.Fixings), ("webbingMm", count.WebbingMm), ("sleeveMm", count.SleeveMm), ("stripMm", count.StripMm), ("boundMm", count.BoundMm) })
        {
            if (value > 0)
            {
                hem[name] = Round(value);
            }
        }

        return hem;
    }

    internal static JsonObject Seams(Result result, SummaryNumbers numbers) => new()
    {
        ["lengthMm"] = Round(numbers.SeamsMm),
        ["lengthAllCoversMm"] = Round(numbers.SeamsMm * result.Job.Covers),
        ["worstPartnerDifferenceMm"] = Round(numbers.WorstPartnerDifferenceMm),
        ["byMakeUp"] = List(result.Estimate.PerCover.Seams.Select(seam => new JsonObject
        {
            ["makeUp"] = seam.MakeUp,
            ["count"] = seam.Seams,
            ["lengthMm"] = Round(seam.LengthMm),
            ["rows"] = seam.Rows,
        })),
        ["notions"] = CostFields.Notions(result.Estimate.PerCover.Notions),
        ["closing"] = result.Job.Seam.Closing is { } closing ? ClosingFields.Write(result, closing) : null,
    };

    /// <summary>Crossings that are alike are one entry, named for the first of them; the thickest comes first.</summary>
    internal static JsonArray Crossings(ImmutableArray<CrossingBulk> bulks) => List(bulks
        .GroupBy(bulk => (bulk.Crossing.Place, bulk.Seams, bulk.Folds, bulk.Plies))
        .OrderByDescending(group => group.Key.Plies).ThenBy(group => group.Key)
        .Select(group => new JsonObject
        {
            ["place"] = Word(group.Key.Place.ToString()),
            ["seams"] = group.Key.Seams,
            ["folds"] = group.Key.Folds,
            ["plies"] = group.Key.Plies,
            ["thicknessMm"] = group.First().ThicknessMm is { } thickness ? Round(thickness) : null,
            ["count"] = group.Count(),
            ["first"] = group.First().Crossing.Label,
        }));

    internal static JsonArray Ties(ImmutableArray<Tie> ties) => List(ties.Select(tie => new JsonObject
    {
        ["hub"] = tie.Hub,
        ["seam"] = tie.Arc,
        ["distanceMm"] = Round(tie.DistanceMm),
    }));

    internal static JsonArray Fittings(ImmutableArray<Fitting> fittings) => List(fittings.Select(fitting => new JsonObject
    {
        ["what"] = fitting.What,
        ["opening"] = fitting.Opening,
        ["label"] = fitting.Label,
        ["lengthMm"] = Round(fitting.LengthMm),
        ["widthMm"] = Round(fitting.WidthMm),
        ["separating"] = fitting.IsSeparating,
    }));

    internal static JsonArray ClipPatches(ImmutableArray<ClipPatch> patches) => List(patches.Select(patch => new JsonObject
    {
        ["label"] = patch.Label,
        ["piece"] = patch.Piece,
        ["at"] = patch.Hub,
        ["diameterMm"] = Round(2 * patch.RadiusMm),
    }));

    internal static JsonArray Lays(Result result) => List(result.Lays.Zip(result.Estimate.Lays, (lay, count) => new JsonObject
    {
        ["cloth"] = lay.Cloth,
        ["number"] = count.Number,
        ["usableWidthMm"] = Round(lay.UsableWidthMm),
        ["lengthMm"] = Round(lay.LengthMm),
        ["roll"] = lay.Roll,
        ["fromMm"] = Round(lay.FromMm),
        ["plies"] = lay.Plies,
        ["style"] = Word(lay.Making.Style.ToString()),
        ["origin"] = Word(lay.Making.Origin.ToString()),
        ["utilisationPercent"] = Round(count.UtilisationPercent),
        ["rollPercent"] = Round(count.RollPercent),
        ["pieces"] = count.Pieces,
        ["weightKg"] = count.WeightKg is { } weight ? Round(weight) : null,
    }));

    internal static JsonObject Cloth(Estimate estimate) => new()
    {
        ["areaM2"] = Round(estimate.ClothAreaM2),
        ["pieceAreaM2"] = Round(estimate.PieceAreaM2),
        ["falloutM2"] = Round(estimate.FalloutM2),
        ["weightKg"] = estimate.WeightKg is { } weight ? Round(weight) : null,
    };

    internal static JsonArray Assumed(Job job) => List(job.Assumed.Select(one => new JsonObject
    {
        ["place"] = one.Place,
        ["value"] = one.Value,
        ["standing"] = one.Standing,
        ["confirmed"] = job.Confirmed.Contains(one.Place),
    }));

    internal static JsonArray Notices(ImmutableArray<Notice> notices) => List(notices.Select(one => new JsonObject
    {
        ["level"] = Word(one.Level.ToString()),
        ["code"] = one.Code,
        ["place"] = one.Place,
        ["text"] = one.Text,
    }));

    private static string Word(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    private static JsonArray List(System.Collections.Generic.IEnumerable<JsonObject> items) => new([.. items]);
}
