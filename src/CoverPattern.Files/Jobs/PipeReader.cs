using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads stove pipes. A clear distance and the service temperature of the cloth are never assumed.</summary>
internal static class PipeReader
{
    // Cloth left between the pipe's sleeve and the free edges of flaps (own choice), millimetres.
    private const double FlapRoom = 10;

    internal static ImmutableArray<PipeWish> Read(ImmutableArray<JobSection> sections, ImmutableArray<Cloth> cloths, JobNotes notes) =>
        [.. sections.Select(section => Read(section, cloths, notes))];

    private static PipeWish Read(JobSection section, ImmutableArray<Cloth> cloths, JobNotes notes)
    {
        var isCone = section.States("boot") && string.Equals(section.Take<string>("boot", Values.Word), "cone", StringComparison.Ordinal);
        if (isCone != section.States("spread") && notes.AreClean(section.PlaceOf("boot")))
        {
            notes.Refuse(section.PlaceOf("spread"), isCone ? "nothing" : "stated", isCone ? "required of a cone boot: " + JobKeys.Find("pipes[].spread")!.Allowed : "a spread goes with \"boot\": \"cone\" only");
        }

        var wish = new PipeWish(
            ReadPlace(section, notes),
            section.Take<Measure>("diameter", Values.Length),
            section.Take<Measure>("clear", Values.Length),
            ReadCloth(section, cloths, notes))
        {
            Spread = section.States("spread") ? section.Take<double>("spread", Values.Degrees) : null,
            Gap = section.Take<Measure>("gap", Values.Length),
            Sleeve = section.Take<Measure>("sleeve", Values.Length),
            TurnUnder = section.Take<Measure>("turnUnder", Values.Length),
            Lap = section.Take<Measure>("lap", Values.Length),
            RainFlap = section.Take<Measure>("rainFlap", Values.Length),
            ClosingFlap = section.Take<Measure>("closingFlap", Values.Length),
        };
        if (!section.States("clear") && !section.IsMissed)
        {
            notes.Refuse(section.PlaceOf("clear"), "nothing", "required: the clear distance that the papers of stove and pipe state, for which there is no default. " + JobKeys.Find("pipes[].clear")!.Allowed);
        }

        CheckSums(wish, section, notes);
        return wish;
    }

    /// <summary>The heat cloth: without a service temperature on its maker's sheet nothing may be made of it.</summary>
    private static string ReadCloth(JobSection section, ImmutableArray<Cloth> cloths, JobNotes notes)
    {
        var name = WindowReader.Cloth("cloth", section, cloths, notes);
        var at = cloths.Select((cloth, i) => (cloth, i)).FirstOrDefault(entry => string.Equals(entry.cloth.Name, name, StringComparison.Ordinal));
        if (name is not null && at.cloth is { ServiceTemperature: null } && notes.AreClean(section.PlaceOf("cloth")) && notes.AreClean(FormattableString.Invariant($"cloths[{at.i}].serviceTemperature")))
        {
            notes.Refuse(
                section.PlaceOf("cloth"),
                $"\"{name}\", which states no service temperature",
                FormattableString.Invariant($"a cloth whose maker's sheet states one: cloths[{at.i}].serviceTemperature, in degrees Celsius. Cloth without it must not be near a stove pipe"));
        }

        return name ?? "";
    }

    private static PipePlace ReadPlace(JobSection section, JobNotes notes)
    {
        var run = section.Take<PipeRun>("run", Values.Word);
        var isKnown = notes.AreClean(section.PlaceOf("run")) && section.States("run");
        var (byFacet, byOther) = (section.States("facet"), run == PipeRun.Vertical ? section.States("x") || section.States("y") : section.States("above") || section.States("towards"));
        if (isKnown && byFacet == byOther && !section.IsMissed)
        {
            notes.Refuse(section.Place, byFacet ? "two places" : "no place", run == PipeRun.Vertical ? "one of them: \"facet\": \"F4.02\", or \"x\": \"1.2 m\" with \"y\": \"-400 mm\"" : "one of them: \"facet\": \"F2.07\", or \"above\": \"1.5 m\" with \"towards\": 36");
        }

        string[] foreign = run == PipeRun.Vertical ? ["above", "towards"] : ["x", "y"];
        string[] unused = [.. isKnown ? foreign : [], .. byFacet ? Array.Empty<string>() : ["right", "up"]];
        foreach (var key in unused.Where(section.States))
        {
            notes.Refuse(section.PlaceOf(key), "stated", key is "right" or "up" ? "right and up go with facet" : $"{string.Join(" and ", foreign)} go with a {(run == PipeRun.Vertical ? "level" : "vertical")} pipe");
        }

        string[] pair = run == PipeRun.Vertical ? ["x", "y"] : ["above", "towards"];
        foreach (var key in pair.Where(key => isKnown && byOther && !section.States(key)))
        {
            notes.Refuse(section.PlaceOf(key), "nothing", $"required with {pair.First(other => other != key)}: " + JobKeys.Find("pipes[]." + key)!.Allowed);
        }

        Measure Shift(string key) => section.States(key) ? section.Take<Measure>(key, Values.SignedLength) : default;
        return new PipePlace(run, byFacet ? section.Take<string>("facet", Values.Line) ?? string.Empty : string.Empty, Shift("right"), Shift("up"))
        {
            Plan = section.States("x") && section.States("y") ? (Shift("x"), Shift("y")) : null,
            Above = section.States("above") ? section.Take<Measure>("above", Values.Length) : null,
            Towards = section.States("towards") ? section.Take<double>("towards", Values.Degrees) : 0,
        };
    }

    private static void CheckSums(PipeWish wish, JobSection section, JobNotes notes)
    {
        if (!notes.AreClean(section.Place))
        {
            return;
        }

        var room = wish.ClearRadius - wish.SleeveRadius - FlapRoom;
        foreach (var (key, size) in new[] { ("rainFlap", wish.RainFlap), ("closingFlap", wish.ClosingFlap) })
        {
            if (size.Millimetres > room)
            {
                notes.Refuse(section.PlaceOf(key), size.Typed, FormattableString.Invariant($"at most {Math.Max(0, room):0.#} mm: the patch from sleeve to rim, less {FlapRoom:0} mm. A clear distance so short is rare: read the papers of stove and pipe again"));
            }
        }

        if (4 * wish.TurnUnder.Millimetres > wish.Diameter.Millimetres)
        {
            notes.Refuse(section.PlaceOf("turnUnder"), wish.TurnUnder.Typed, $"at most a quarter of the pipe's diameter, {wish.Diameter.Typed}");
        }
    }
}
