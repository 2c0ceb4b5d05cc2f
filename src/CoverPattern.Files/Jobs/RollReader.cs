using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads the rolls of a cloth.</summary>
internal static class RollReader
{
    internal static ImmutableArray<RollWish> Read(JobSection cloth, JobNotes notes)
    {
        var sections = cloth.Sections("rolls");
        ImmutableArray<RollWish> rolls = [.. sections.Select(Read)];
        foreach (var section in sections.SkipLast(1).Where(section => !section.States("length")))
        {
            notes.Refuse(section.PlaceOf("length"), "nothing", "a length; only the last roll may be as long as is needed");
        }

        CheckFlaws(cloth, sections, rolls, notes);
        return rolls;
    }

    private static RollWish Read(JobSection section) => new(
        section.States("name") ? section.Take<string>("name", Values.ClothName) ?? "" : "",
        section.States("length") ? section.Take<Measure>("length", Values.Length) : null,
        [.. section.Sections("flaws").Select(ReadFlaw)]);

    private static FlawWish ReadFlaw(JobSection section) => new(
        section.Take<Measure>("at", Values.Length),
        section.Take<Measure>("across", Values.Length),
        section.Take<Measure>("long", Values.Length),
        section.Take<Measure>("wide", Values.Length),
        section.States("grade") ? section.Take<int>("grade", Values.Whole) : null);

    /// <summary>A flaw off its roll is a slip: somebody measured from another end or edge.</summary>
    private static void CheckFlaws(JobSection cloth, ImmutableArray<JobSection> sections, ImmutableArray<RollWish> rolls, JobNotes notes)
    {
        if (!notes.AreClean(cloth.PlaceOf("rolls"), cloth.PlaceOf("rollWidth")) || sections.Any(section => !notes.AreClean(section.Place)))
        {
            return;
        }

        var width = cloth.Take<Measure>("rollWidth", Values.Length);
        foreach (var (section, roll) in sections.Zip(rolls))
        {
            foreach (var (place, flaw) in section.Sections("flaws").Select(flaw => flaw.Place).Zip(roll.Flaws))
            {
                if (roll.Length is { } length && flaw.At.Millimetres >= length.Millimetres)
                {
                    notes.Refuse(place + ".at", flaw.At.Typed, $"less than the roll's length, {length.Typed}");
                }

                if (width.Millimetres > 0 && flaw.Across.Millimetres >= width.Millimetres)
                {
                    notes.Refuse(place + ".across", flaw.Across.Typed, $"less than the roll's width, {width.Typed}");
                }
            }
        }
    }
}
