using System.Collections.Generic;
using System.Linq;
using CoverPattern.Lays.Estimates;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Workshop;

/// <summary>Words of caution that go with every cover, and with heavy ones.</summary>
internal static class Cautions
{
    // The guideline figure for one man near the waist (HSE guide to manual handling, INDG143, from memory); twice that for two.
    private const double OnePerson = 25;
    private const double TwoPersons = 50;

    internal static IEnumerable<Notice> For(Job job, Estimate estimate)
    {
        yield return Caution("wind-and-snow", "The cover carries no wind or snow rating: frame, anchors and cover in wind or under snow are for local codes and somebody licensed to check. Do not put it up or take it down in wind; clear snow from the first fall.");
        yield return Caution("fire-and-air", "A fire, stove or heater under cloth can burn the cover and fill it with carbon monoxide: flame certificates, clear distances, vents and alarms are for local codes and the papers of stove and cloth.");
        if (!job.Pipes.IsEmpty)
        {
            yield return Caution("stove-pipe", StovePipeCaution.Text);
        }

        yield return Caution("frame", "Never leave out or cut struts to suit the cover: the frame must be checked by somebody licensed to do it.");
        var weight = estimate.WeightKg / job.Covers;
        if (weight > OnePerson)
        {
            yield return new Notice(
                NoticeLevel.Caution,
                "weight",
                string.Empty,
                System.FormattableString.Invariant($"One cover weighs about {weight:0.#} kg without thread and fittings: more than {(weight > TwoPersons ? TwoPersons : OnePerson):0} kg, the guideline for {(weight > TwoPersons ? "two persons" : "one person")}. Lift it with more hands, and not from a ladder."));
        }
        else if (weight is null)
        {
            var silent = job.Cloths.Index().Where(entry => entry.Item.MassPerArea is null).ToArray();
            yield return new Notice(
                NoticeLevel.Note,
                "no-mass",
                string.Join(", ", silent.Select(entry => System.FormattableString.Invariant($"cloths[{entry.Index}].mass"))),
                $"No weight is given: the job does not state the mass of {string.Join(", ", silent.Select(entry => entry.Item.Name))}.");
        }
    }

    private static Notice Caution(string code, string text) => new(NoticeLevel.Caution, code, string.Empty, text);
}
