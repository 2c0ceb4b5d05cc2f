using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text;
using System.Text.Json;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads job files: JSON with comments and trailing commas, every wish stated or assumed, all faults at once.</summary>
/// <remarks>Never throws for what stands in the file. The form is told in docs/job-file.md.</remarks>
public static class JobReader
{
    // Reads halves of characters as broken bytes, which are then a fault like any other.
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: false);

    /// <summary>Reads a job from text.</summary>
    /// <param name="json">The whole file.</param>
    /// <param name="beside">Gives the bytes of a file beside the job by its name, null when there is none.</param>
    public static JobReading Read(string json, Func<string, byte[]?>? beside = null) => Read(Utf8.GetBytes(json), beside);

    /// <summary>Reads a job from bytes.</summary>
    /// <param name="json">The whole file, UTF-8 with or without byte order mark; more than 4 MB are refused.</param>
    /// <param name="beside">Gives the bytes of a file beside the job by its name, null when there is none.</param>
    public static JobReading Read(ReadOnlySpan<byte> json, Func<string, byte[]?>? beside = null)
    {
        var notes = new JobNotes();
        using var document = JobText.Parse(json, notes.Faults);
        var job = document is null ? null : ReadJob(document.RootElement, notes, beside);
        return new JobReading(notes.Faults.Count == 0 ? job : null, [.. notes.Faults]);
    }

    private static Job? ReadJob(JsonElement root, JobNotes notes, Func<string, byte[]?>? beside)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            notes.Refuse("", JobNotes.Said(root), "a job in braces with " + JobKeys.Listing(""));
            return null;
        }

        var top = new JobSection("", root, notes);
        var version = top.Take<int>("schemaVersion", Version);
        var title = top.Take<string>("title", Values.Line) ?? "";
        var date = top.Take<DateOnly>("date", Values.Day);
        var covers = top.Take<int>("covers", Values.Whole);
        var frame = FrameReader.Read(top.Section("frame"), notes, beside);
        var standOff = ReadStandOff(top.Section("standOff"), HasOpenings(top) || top.States("insulation"));
        var ease = top.Take<double>("ease", Values.Ratio);
        var deck = DeckReader.Read(top.Section("deck"), notes);
        var skirt = ReadSkirt(top.Section("skirt"));
        var table = MakeUpTable.Read(top.Sections("makeUps"), notes);
        var seam = SeamReader.Read(top.Section("seam"), table, notes);
        var hem = HemReader.Read(top.Section("hem"), seam.MakeUp.Form, notes);
        var panels = PanelReader.Read(top.Sections("panels"), notes);
        var limits = ReadLimits(top.Section("limits"));
        var marks = MarkReader.Read(top.Section("marks"), seam);
        var cloths = ClothReader.Read(top.Sections("cloths"), notes);
        table.CheckJoins(cloths);
        CheckSplash(skirt, cloths, notes);
        var rates = RatesReader.Read(top.Section("rates"), cloths, notes);
        var windows = WindowReader.Read(top.Sections("windows"), cloths, notes);
        var openings = OpeningReader.Read(top.Sections("openings"), cloths, notes);
        var pipes = PipeReader.Read(top.Sections("pipes"), cloths, notes);
        var vents = top.States("vents") ? VentReader.Read(top.Section("vents"), notes) : null;
        var roof = top.States("roof") ? RoofReader.Read(top.Section("roof"), cloths, notes) : null;
        var liner = top.States("liner") ? LinerReader.Read(top.Section("liner"), cloths, notes) : null;
        var insulation = top.States("insulation") ? LinerReader.ReadInsulation(top.Section("insulation"), cloths, notes) : null;
        var flap = top.States("groundFlap") ? BagReader.ReadFlap(top.Section("groundFlap"), cloths, notes) : null;
        var bag = top.States("bag") ? BagReader.Read(top.Section("bag"), cloths, notes) : null;
        var notions = NotionReader.Read(top.Section("notions"), seam, hem, marks, openings, roof is not null);
        var outside = OutsideReader.Read(top.Sections("outside"), cloths, notes, beside);
        var clearances = WindowReader.ReadClearances(top.Section("clearances"), HasOpenings(top));
        var lay = LayReader.Read(top.Section("lay"), notes, beside);
        LayReader.CheckFlaws(lay, cloths, notes);
        // Where the list of cloths is refused as a whole, nobody knows how many there are.
        var countOfCloths = notes.AreClean("cloths") ? cloths.Length : (int)JobKeys.Find("cloths")!.Most;
        var confirmed = ConfirmedReader.Read(top.Items("confirmed"), (countOfCloths, windows.Length, openings.Length, pipes.Length), notes);
        var job = new Job(version, title, date, covers, frame, standOff, ease, skirt, hem, seam, cloths, lay, notes.Assumed, confirmed)
        {
            Deck = deck,
            Panels = panels,
            MakeUps = table.Entries,
            Notions = notions,
            Rates = rates,
            Windows = windows,
            Openings = openings,
            Pipes = pipes,
            Vents = vents,
            Roof = roof,
            Liner = liner,
            Insulation = insulation,
            GroundFlap = flap,
            Bag = bag,
            Clearances = clearances,
            Outside = outside,
            Limits = limits,
            Marks = marks,
        };
        DeckReader.Check(job, notes);
        return job;
    }

    private static bool HasOpenings(JobSection top) => top.States("windows") || top.States("openings") || top.States("pipes");

    private static bool Version(JobKey key, JsonElement element, out int value, out string hint)
    {
        var isNewer = element.ValueKind == JsonValueKind.Number && element.GetDouble() > key.Most;
        var allowed = Values.Whole(key, element, out value, out hint);
        hint = isNewer ? "the job was written for a newer program, this one reads version 1" : "this program reads version 1";
        return allowed;
    }

    private static StandOffWish ReadStandOff(JobSection section, bool hasOpenings)
    {
        var standOff = new StandOffWish(
            section.Take<Measure>("tubeRadius", Values.Length),
            section.Take<Measure>("hubHeight", Values.Length),
            section.Take<Measure>("padding", Values.Length));
        // Only openings keep clear of hubs; without them nothing is assumed.
        return hasOpenings || section.States("hubRadius") ? standOff with { HubRadius = section.Take<Measure>("hubRadius", Values.Length) } : standOff;
    }

    private static SkirtWish ReadSkirt(JobSection section) => new(
        section.Take<Measure>("drop", Values.Length),
        section.Take<SkirtShape>("shape", Values.Word))
    {
        Splash = section.States("splash") ? ReadSplash(section.Section("splash")) : null,
    };

    private static SplashWish ReadSplash(JobSection section) => new(
        section.Take<string>("cloth", Values.ClothName) ?? "",
        section.Take<Measure>("width", Values.Length));

    private static void CheckSplash(SkirtWish skirt, ImmutableArray<Cloth> cloths, JobNotes notes)
    {
        if (skirt.Splash is { Cloth.Length: > 0 } splash && cloths.All(cloth => !string.Equals(cloth.Name, splash.Cloth, StringComparison.Ordinal)) && notes.AreClean("cloths"))
        {
            notes.Refuse("skirt.splash.cloth", $"\"{splash.Cloth}\"", "the name of one of the cloths: " + string.Join(", ", cloths.Select(cloth => $"\"{cloth.Name}\"")));
        }
    }

    private static LimitWish ReadLimits(JobSection section) => new(
        section.Take<Measure>("thickness", Values.Length),
        section.Take<int>("felledSeamsAtHub", Values.Whole),
        section.Take<int>("seamsAtHub", Values.Whole),
        section.Take<int>("seamsElsewhere", Values.Whole));
}
