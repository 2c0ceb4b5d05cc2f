using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Reports;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Frames;

/// <summary>What to measure on a standing frame; with a job at hand, what the measures should be.</summary>
/// <remarks>Two measures are redundant on purpose, the string round the base hubs and those across the floor: they catch a slip.</remarks>
internal static class MeasuringItems
{
    // Classes and base hubs for which blanks are left before there is a job: those of a 3V 5/8 and some.
    private const int BlankHubs = 15;
    private static readonly ImmutableArray<string> BlankClasses = ["A", "B", "C", "D", "E", "F"];
    private static readonly ImmutableArray<string> FirstHubs = ["from hub 1", "from a hub a third of the way round", "from a hub two thirds round"];

    /// <summary>The measures, in order.</summary>
    /// <param name="job">Units and stand-off are read; null before there is a job.</param>
    /// <param name="frame">Its frame; null before there is one.</param>
    internal static ImmutableArray<MeasuringItem> Of(Job? job, Frame? frame)
    {
        var ruler = job is null ? new Ruler(IsInches: false) : Ruler.Of(job);
        return
        [
            new("1", "Struts: sort them by length, A the shortest. Measure three of each class, hole to hole, straight as built; count all.", "", []),
            .. Classes(frame, ruler, 2 * (job?.Frame.Struts?.EndAllowanceMm ?? 0)),
            new("2", "From the hole at an end to the hub centre; from hole to bend", job?.Frame.Struts is { } struts ? ruler.WithUnit(struts.EndAllowanceMm) : "", ["hole to centre", "hole to bend"]),
            .. Base(frame, ruler),
            new("7", "Tube, outer diameter; hub, from its centre to the top of the nut; padding", job is null ? "" : StandOff(job, ruler), ["tube", "hub", "padding"]),
            new("8", "Deck: which hubs touch it; edge beyond the hubs; thickness", "", ["touching", "edge", "thickness"]),
            new("9", "Door side, counted in base hubs from the front; stove pipe, diameter and place; trees, ropes, walls nearer than 1 m", "", ["door", "pipe", "near by"]),
        ];
    }

    /// <param name="frame">The frame; null before there is one.</param>
    /// <param name="ruler">How lengths are written.</param>
    /// <param name="cutOff">What hole to hole is shorter than from hub centre to hub centre, millimetres.</param>
    private static IEnumerable<MeasuringItem> Classes(Frame? frame, Ruler ruler, double cutOff)
    {
        ImmutableArray<string> blanks = ["", "", "", "count"];
        return frame is null
            ? BlankClasses.Select(name => new MeasuringItem("", name, "", blanks))
            : frame.Classes.Select(own => new MeasuringItem("", own.Label, FormattableString.Invariant($"{ruler.WithUnit(own.LengthMm - cutOff)} {(cutOff > 0 ? "hole to hole" : "between hub centres")}, {own.Count}"), blanks));
    }

    private static IEnumerable<MeasuringItem> Base(Frame? frame, Ruler ruler)
    {
        string Own(double millimetres) => frame is null ? "" : ruler.WithUnit(millimetres);
        var ground = frame is null ? [] : frame.Base.Select(hub => frame.Hubs[hub]).ToArray();
        var round = ground.Select((hub, i) => Point3.Distance(hub.Position, ground[(i + 1) % ground.Length].Position)).Sum();
        yield return new("3", "A string round all base hub centres, hub to hub", Own(round), [""]);
        yield return new("4", "Across the floor, straight from hub centre to hub centre, three times: from one base hub to the one farthest from it", "", []);
        foreach (var across in Across(frame, ruler))
        {
            yield return across;
        }

        yield return new("5", "Top hub centre over the lowest base hub centres, with a plumb line", Own(frame?.Hubs.Max(hub => hub.Position.Z) ?? 0), [""]);
        yield return new("6", "Height of each base hub centre over the deck, counter-clockwise seen from above, the first at or after the front", "", []);
        for (var i = 0; i < (frame is null ? BlankHubs : ground.Length); i++)
        {
            yield return new("", frame is null ? Printed.Count(i + 1) : ground[i].Label, frame is null ? "" : ruler.WithUnit(ground[i].Position.Z), [""]);
        }
    }

    private static IEnumerable<MeasuringItem> Across(Frame? frame, Ruler ruler) => frame is null
        ? FirstHubs.Select(from => new MeasuringItem("", from, "", ["to hub", ""]))
        : FloorMeasures.Across(frame).Select(one => new MeasuringItem("", $"{one.From.Label} to {one.To.Label}", ruler.WithUnit(one.Mm), [""]));

    private static string StandOff(Job job, Ruler ruler) =>
        $"tube {ruler.WithUnit(2 * job.StandOff.TubeRadius.Millimetres)}, hub {ruler.WithUnit(job.StandOff.HubHeight.Millimetres)}, padding {ruler.WithUnit(job.StandOff.Padding.Millimetres)}";
}
