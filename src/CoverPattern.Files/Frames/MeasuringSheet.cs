using System;
using System.Linq;
using System.Text;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;

namespace CoverPattern.Files.Frames;

/// <summary>What to measure on a standing frame, and how; with a frame at hand, what the measures should be.</summary>
/// <remarks>Two measures are redundant on purpose, the string round the base hubs and the third floor diameter: they catch a slip.</remarks>
public static class MeasuringSheet
{
    private const string Blank = "__________";

    /// <summary>Writes the sheet.</summary>
    /// <param name="frame">The frame of a job, or null before there is one.</param>
    /// <param name="title">Title of the job; empty before there is one.</param>
    public static string Write(Frame? frame, string title)
    {
        var text = new StringBuilder("MEASURING SHEET").Append(title is { Length: > 0 } ? ": " + title : "").Append("\nEverything is seen from outside. Steel tape, one unit for the whole sheet: ______\n");
        text.Append(frame is null ? "\n" : "The job's own number stands in brackets; more than 10 mm apart is a slip in one of them.\n\n");
        WriteStruts(text, frame);
        WriteBase(text, frame);
        text.Append("7. Tube, outer diameter ").Append(Blank).Append("   hub, from its centre to the top of the nut ").Append(Blank).Append("   padding ").Append(Blank).Append('\n');
        text.Append("8. Deck: which hubs touch it ").Append(Blank).Append("   edge beyond the hubs ").Append(Blank).Append("   thickness ").Append(Blank).Append('\n');
        text.Append("9. Door side, counted in base hubs from the front ").Append(Blank).Append("   stove pipe, diameter and place ").Append(Blank).Append("   trees, ropes, walls nearer than 1 m ").Append(Blank).Append('\n');
        text.Append("\nMeasured by ").Append(Blank).Append("   day ").Append(Blank).Append("   The measures are right: customer ").Append(Blank).Append('\n');
        return text.ToString();
    }

    private static void WriteStruts(StringBuilder text, Frame? frame)
    {
        text.Append("1. Struts: sort them by length, A the shortest. Measure three of each class, hole to hole, straight as built; count all.\n");
        var classes = frame is null
            ? ["A", "B", "C", "D", "E", "F"]
            : frame.Classes.Select(own => FormattableString.Invariant($"{own.Label} [{own.LengthMm:0} mm between hub centres, {own.Count}]")).ToArray();
        foreach (var own in classes)
        {
            text.Append("   ").Append(own).Append(": ").Append(Blank).Append("  ").Append(Blank).Append("  ").Append(Blank).Append("   count ______\n");
        }

        text.Append("2. From the hole at an end to the hub centre ").Append(Blank).Append("   from hole to bend ").Append(Blank).Append('\n');
    }

    private static void WriteBase(StringBuilder text, Frame? frame)
    {
        var ground = frame is null ? [] : frame.Base.Select(hub => frame.Hubs[hub]).ToArray();
        var round = ground.Select((hub, i) => Point3.Distance(hub.Position, ground[(i + 1) % ground.Length].Position)).Sum();
        text.Append("3. A string round all base hub centres, hub to hub: ").Append(Own(frame, round)).Append(Blank).Append('\n');
        text.Append("4. Floor diameter between hub centres in three directions; between the lowest hubs, through the middle: ");
        text.Append(Own(frame, ground.Length == 0 ? 0 : 2 * ground.MinBy(hub => hub.Position.Z)!.Position.Plan.Length)).Append(Blank).Append("  ").Append(Blank).Append("  ").Append(Blank).Append('\n');
        text.Append("5. Top hub centre over the lowest base hub centres, with a plumb line: ").Append(Own(frame, frame?.Hubs.Max(hub => hub.Position.Z) ?? 0)).Append(Blank).Append('\n');
        text.Append("6. Height of each base hub centre over the deck, counter-clockwise seen from above, the first at or after the front:\n");
        foreach (var name in frame is null ? Enumerable.Range(1, 15).Select(i => FormattableString.Invariant($"{i}")) : ground.Select(hub => FormattableString.Invariant($"{hub.Label} [{hub.Position.Z:0}]")))
        {
            text.Append("   ").Append(name).Append(": ").Append(Blank).Append('\n');
        }
    }

    private static string Own(Frame? frame, double millimetres) => frame is null ? "" : FormattableString.Invariant($"[{millimetres:0} mm] ");
}
