using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Lays;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Reports;

/// <summary>What was used to make a lay, in sentences; nothing where all is as usual.</summary>
internal static class LayWords
{
    public static string Of(Lay lay, Ruler ruler) => string.Join(" ", Sentences(lay, ruler));

    private static IEnumerable<string> Sentences(Lay lay, Ruler ruler)
    {
        if (lay.Roll > 0)
        {
            yield return FormattableString.Invariant($"Roll {lay.Roll}{(lay.RollName.Length > 0 ? " (" + lay.RollName + ")" : string.Empty)}, from {ruler.WithUnit(lay.FromMm)} on.");
        }

        if (lay.Plies > 1)
        {
            yield return FormattableString.Invariant($"{lay.Plies} plies of this length, {(lay.FaceToFace ? "face to face: every second one lies the other way up" : "all the same side up")}; the table names the top piece first, then those under it.");
        }

        if (!lay.Flaws.IsEmpty)
        {
            yield return FormattableString.Invariant($"{lay.Flaws.Length} flawed {(lay.Flaws.Length == 1 ? "area reaches" : "areas reach")} into it{OnPlies(lay)}; check them on the cloth before cutting.");
        }

        if (lay.Making.Style == LayStyle.ByHand)
        {
            yield return "Made for cutting by hand: rows with straight cuts.";
        }

        if (lay.Making.Origin != LayOrigin.Made)
        {
            yield return lay.Making.Origin == LayOrigin.Kept ? "Kept as an earlier lay had it." : "Searched on from an earlier lay.";
        }
    }

    private static string OnPlies(Lay lay) => lay.Plies == 1
        ? string.Empty
        : FormattableString.Invariant($" (counted from the table up: on ply {string.Join(", ", lay.Flaws.Select(flaw => flaw.Ply).Distinct().Order())})");
}
