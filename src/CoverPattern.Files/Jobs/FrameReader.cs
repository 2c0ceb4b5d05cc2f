using System;
using System.Collections.Immutable;
using System.Linq;
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

    internal static FrameWish Read(JobSection frame, JobNotes notes)
    {
        var family = frame.Take<FrameFamily>("family", Values.Word);
        var frequency = frame.Take<int>("frequency", Values.Whole);
        var isKnown = frame.States("frequency") && notes.AreClean(frame.PlaceOf("frequency"));
        var cut = frame.Take("cut", CutReader.For(isKnown ? frequency : 0)) ?? new CutName("", 0);
        var (measure, size) = ReadSize(frame.Section("size"), notes);
        var wish = new FrameWish(family, frequency, cut.Rows, cut.Name, measure, size);
        if (notes.AreClean("frame"))
        {
            CheckRadius(wish, notes);
        }

        return wish;
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
}
