using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads what cloth and work cost; what is not stated stays unknown.</summary>
internal static class RatesReader
{
    internal static RatesWish Read(JobSection section, ImmutableArray<Cloth> cloths, JobNotes notes)
    {
        var rates = new RatesWish(
            section.Take<string>("currency", Values.Line) ?? "",
            Stated("perHour"),
            Stated("piece"),
            Stated("hem"),
            ReadCloths(section.Sections("cloths"), cloths, notes),
            ReadSeams(section.Sections("seams"), notes));
        return rates.IsEmpty ? RatesWish.None : rates;

        double? Stated(string name) => section.States(name) ? section.Take<double>(name, Values.Amount) : null;
    }

    private static ImmutableArray<ClothRate> ReadCloths(ImmutableArray<JobSection> sections, ImmutableArray<Cloth> cloths, JobNotes notes)
    {
        var names = cloths.Select(cloth => cloth.Name).ToArray();
        var rates = ImmutableArray.CreateBuilder<ClothRate>(sections.Length);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var section in sections)
        {
            var rate = new ClothRate(section.Take<string>("cloth", Values.ClothName) ?? "", section.Take<double>("perMetre", Values.Amount));
            if (notes.AreClean("cloths", section.PlaceOf("cloth")) && !names.Contains(rate.Cloth, StringComparer.Ordinal))
            {
                notes.Refuse(section.PlaceOf("cloth"), $"\"{rate.Cloth}\"", "a cloth of this job: " + string.Join(", ", names));
            }

            RefuseTwice(seen, rate.Cloth, section.PlaceOf("cloth"), notes);
            rates.Add(rate);
        }

        return rates.ToImmutable();
    }

    /// <summary>Names are not held against the job: a shop keeps one list of minutes for all its jobs.</summary>
    private static ImmutableArray<SeamRate> ReadSeams(ImmutableArray<JobSection> sections, JobNotes notes)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var rates = ImmutableArray.CreateBuilder<SeamRate>(sections.Length);
        foreach (var section in sections)
        {
            var rate = new SeamRate(section.Take<string>("makeUp", Values.Line) ?? "", section.Take<double>("perMetre", Values.Amount));
            RefuseTwice(seen, rate.MakeUp, section.PlaceOf("makeUp"), notes);
            rates.Add(rate);
        }

        return rates.ToImmutable();
    }

    private static void RefuseTwice(HashSet<string> seen, string name, string place, JobNotes notes)
    {
        if (name.Length > 0 && !seen.Add(name))
        {
            notes.Refuse(place, $"\"{name}\" again", "each name once; leave one");
        }
    }
}
