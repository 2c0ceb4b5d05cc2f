using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads the frame of a job.</summary>
internal static class FrameReader
{
    private static readonly ImmutableArray<(string Name, FrameMeasure Measure)> Measures =
    [
        ("radius", FrameMeasure.Radius),
        ("diameter", FrameMeasure.Diameter),
        ("floorDiameter", FrameMeasure.FloorDiameter),
        ("height", FrameMeasure.Height),
    ];

    /// <param name="frame">The section.</param>
    /// <param name="notes">Takes faults and assumptions.</param>
    /// <param name="beside">Gives the bytes of a file beside the job, null when there is none.</param>
    internal static FrameWish Read(JobSection frame, JobNotes notes, Func<string, byte[]?>? beside)
    {
        var stock = frame.States("stock") ? Stock(frame.Section("stock")) : null;
        return ReadShape(frame, notes, beside) with { Stock = stock };
    }

    private static StockWish Stock(JobSection section) =>
        new(section.Take<Measure>("bar", Values.Length), section.Take<Measure>("kerf", Values.Length));

    private static FrameWish ReadShape(JobSection frame, JobNotes notes, Func<string, byte[]?>? beside)
    {
        if (frame.States("survey"))
        {
            return SurveySection.Read(frame, notes, beside);
        }

        if (frame.States("gores"))
        {
            return GoreSection.Read(frame, notes);
        }

        var family = frame.Take<FrameFamily>("family", Values.Word);
        var frequency = frame.Take<int>("frequency", Values.Whole);
        var isKnown = frame.States("frequency") && notes.AreClean(frame.PlaceOf("frequency"));
        var division = frame.States("division") ? frame.Take<FrameDivision>("division", Values.Word) : default;
        var up = frame.States("up") ? frame.Take<FrameUp>("up", Values.Word) : default;
        isKnown &= notes.AreClean(frame.PlaceOf("family"), frame.PlaceOf("division"), frame.PlaceOf("up")) && IsDivisible(frame, family, frequency, division, notes);
        var solid = new FrameWish(family, isKnown ? frequency : 0, 0, "", default, NoSize.Measure) { Division = division, Up = up };
        var cut = CutReader.Read(frame, solid, notes);
        if (frame.States("struts"))
        {
            return StrutSection.Read(frame, cut with { Frequency = frequency }, notes);
        }

        var (measure, size) = ReadSize(frame.Section("size"), notes);
        var wish = cut with { Frequency = frequency, Measure = measure, Size = size, Stretch = GoreSection.Stretch(frame), RiserMm = GoreSection.Riser(frame) };
        if (notes.AreClean("frame"))
        {
            CheckRadius(wish, notes);
        }

        if (wish.Stretch is { } stretch && notes.AreClean("frame"))
        {
            CheckStretch(wish, stretch, notes);
        }

        return wish;
    }

    private static bool IsDivisible(JobSection frame, FrameFamily family, int frequency, FrameDivision division, JobNotes notes)
    {
        var allowed = StrutFamily.IsDivisible(family, division, frequency) ? "" : division switch
        {
            FrameDivision.ClassTwo => "an even frequency, or another division",
            FrameDivision.LevelByEdgeHubs => "the icosahedron at frequency 3 or 4, or another division",
            FrameDivision.LevelByInnerHubs => "the icosahedron at frequency 4, or another division",
            _ => "",
        };
        if (allowed.Length > 0)
        {
            notes.Refuse(frame.PlaceOf("division"), FormattableString.Invariant($"{division} of {family} at frequency {frequency}"), allowed);
        }

        return allowed.Length == 0;
    }

    private static (FrameMeasure Measure, Measure Size) ReadSize(JobSection section, JobNotes notes)
    {
        var stated = Measures.Where(pair => section.States(pair.Name)).ToArray();
        if (stated.Length != 1 && !section.IsMissed && notes.AreClean(section.Place))
        {
            var said = stated.Length == 0 ? "none of the four" : string.Join(" and ", stated.Select(pair => pair.Name));
            notes.Refuse(section.Place, said, "exactly one of " + JobKeys.Listing(section.Place));
        }

        // Each is read, so that all faults come at once.
        var sizes = stated.Select(pair => (pair.Measure, Size: section.Take<Measure>(pair.Name, Values.Length))).ToArray();
        return sizes.FirstOrDefault();
    }

    /// <summary>A small height or floor may belong to a huge sphere: the limits of the radius hold for it too.</summary>
    private static void CheckRadius(FrameWish wish, JobNotes notes)
    {
        var limits = JobKeys.Find("frame.size.radius")!;
        var radius = SphereRadius.Of(wish);
        if (radius < limits.Least || radius > limits.Most)
        {
            var (name, _) = Measures.First(pair => pair.Measure == wish.Measure);
            notes.Refuse(
                "frame.size." + name,
                FormattableString.Invariant($"{wish.Size.Typed}, which makes a sphere radius of {radius:0} mm"),
                FormattableString.Invariant($"a size whose sphere radius is {limits.Least:0} to {limits.Most:0} mm"));
        }
    }

    /// <summary>Drawn out, no half axis is longer than the radius of a ball may be.</summary>
    private static void CheckStretch(FrameWish wish, Point3 stretch, JobNotes notes)
    {
        var (most, radius) = (JobKeys.Find("frame.size.radius")!.Most, SphereRadius.Of(wish));
        foreach (var (name, ratio) in new[] { ("front", stretch.X), ("side", stretch.Y), ("height", stretch.Z) }.Where(pair => pair.Item2 * radius > most))
        {
            notes.Refuse("frame.stretch." + name, FormattableString.Invariant($"{100 * ratio:0.#} %, which makes a half axis of {ratio * radius:0} mm"), FormattableString.Invariant($"half axes of at most {most:0} mm"));
        }
    }
}
