using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Plots;

/// <summary>A machine's answers in a file of its own, so that they are asked once.</summary>
/// <remarks>JSON of one section: marks, origin, moves, sixteenBit, section (longest it takes; left out where it takes all), drawPen, notchPen, knifePen; only marks must be there.</remarks>
public static class MachineFile
{
    private const int MostPens = 8;

    private static readonly ImmutableArray<string> Keys = ["marks", "origin", "moves", "sixteenBit", "section", "drawPen", "notchPen", "knifePen"];

    /// <summary>Least length of a section, millimetres.</summary>
    public const double ShortestSectionMm = 200;

    /// <summary>Writes a machine; reading it gives the same.</summary>
    public static byte[] Write(PlotWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);

        var machine = wish.Machine;
        var file = new JsonObject
        {
            ["marks"] = JsonWords.Of(machine.Marks),
            ["origin"] = JsonWords.Of(machine.Origin),
            ["moves"] = JsonWords.Of(machine.Moves),
            ["sixteenBit"] = machine.IsSixteenBit,
            ["drawPen"] = machine.DrawPen,
            ["notchPen"] = machine.NotchPen,
            ["knifePen"] = machine.KnifePen,
        };
        if (wish.LongestMm is { } longest)
        {
            file["section"] = JsonWords.Of(longest);
        }

        return JsonLayout.Write(file);
    }

    /// <summary>Reads a machine.</summary>
    /// <param name="bytes">The file.</param>
    /// <returns>The machine, null after faults; all faults.</returns>
    public static (PlotWish? Wish, ImmutableArray<Fault> Faults) Read(ReadOnlySpan<byte> bytes)
    {
        var faults = new List<Fault>();
        using var document = JobText.Parse(bytes, faults);
        if (document is null)
        {
            return (null, [.. faults]);
        }

        if (document.RootElement.ValueKind != JsonValueKind.Object)
        {
            return (null, [new Fault("", JobNotes.Said(document.RootElement), "a section in braces with " + string.Join(", ", Keys))]);
        }

        var wish = Read(document.RootElement, faults);
        return (faults.Count == 0 ? wish : null, [.. faults]);
    }

    private static PlotWish Read(JsonElement file, List<Fault> faults)
    {
        faults.AddRange(file.EnumerateObject().Where(member => !Keys.Contains(member.Name)).Select(member => new Fault(member.Name, "a key that is not known", "keys " + string.Join(", ", Keys))));
        faults.AddRange(file.EnumerateObject().CountBy(member => member.Name).Where(name => name.Value > 1).Select(name => new Fault(name.Key, "said more than once", "each key once")));
        if (!file.TryGetProperty("marks", out _))
        {
            faults.Add(new Fault("marks", "nothing", "required: which side of the cloth the machine marks, \"up\" or \"table\""));
        }

        var machine = new PlotMachine(
            Word<MarkedSide>(file, "marks", faults),
            Pen(file, "drawPen", 1, faults),
            Pen(file, "notchPen", 2, faults),
            Pen(file, "knifePen", 3, faults),
            Word<PlotOrigin>(file, "origin", faults),
            Word<PenMoves>(file, "moves", faults),
            Flag(file, "sixteenBit", faults));
        return new PlotWish(machine, Section(file, faults));
    }

    private static T Word<T>(JsonElement file, string key, List<Fault> faults)
        where T : struct, Enum
    {
        var words = Enum.GetValues<T>();
        if (!file.TryGetProperty(key, out var said))
        {
            return words[0];
        }

        var at = said.ValueKind == JsonValueKind.String ? Array.FindIndex(words, word => JsonWords.Of(word) == said.GetString()) : -1;
        if (at < 0)
        {
            faults.Add(new Fault(key, JobNotes.Said(said), "one of " + string.Join(", ", words.Select(word => $"\"{JsonWords.Of(word)}\""))));
        }

        return words[Math.Max(at, 0)];
    }

    private static int Pen(JsonElement file, string key, int usual, List<Fault> faults)
    {
        if (!file.TryGetProperty(key, out var said))
        {
            return usual;
        }

        if (said.ValueKind == JsonValueKind.Number && said.TryGetInt32(out var pen) && pen is >= 1 and <= MostPens)
        {
            return pen;
        }

        faults.Add(new Fault(key, JobNotes.Said(said), FormattableString.Invariant($"a whole number, 1 to {MostPens}")));
        return usual;
    }

    private static bool Flag(JsonElement file, string key, List<Fault> faults)
    {
        if (file.TryGetProperty(key, out var said) && said.ValueKind is not (JsonValueKind.True or JsonValueKind.False))
        {
            faults.Add(new Fault(key, JobNotes.Said(said), "true or false"));
        }

        return said.ValueKind == JsonValueKind.True;
    }

    private static double? Section(JsonElement file, List<Fault> faults)
    {
        if (!file.TryGetProperty("section", out var said))
        {
            return null;
        }

        var isRead = said.ValueKind == JsonValueKind.Number
            ? said.TryGetDouble(out var length)
            : LengthParser.TryParse(said.ToString(), signed: false, out length, out _);
        if (isRead && length >= ShortestSectionMm && double.IsFinite(length))
        {
            return length;
        }

        faults.Add(new Fault("section", JobNotes.Said(said), FormattableString.Invariant($"{LengthParser.Allowed}; {ShortestSectionMm} mm or more")));
        return null;
    }
}
