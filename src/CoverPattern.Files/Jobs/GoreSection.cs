using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads a roof of gores.</summary>
internal static class GoreSection
{
    private static readonly ImmutableArray<string> Instead = ["family", "frequency", "division", "up", "cut", "size", "stretch", "struts"];
    private static readonly ImmutableArray<string> ByRule = ["chords", "radius", "height", "crown"];

    /// <summary>Reads the roof and the wall under it.</summary>
    /// <param name="frame">The section of the frame; it states gores.</param>
    /// <param name="notes">Takes faults and assumptions.</param>
    internal static FrameWish Read(JobSection frame, JobNotes notes)
    {
        foreach (var name in Instead.Where(frame.States))
        {
            notes.Refuse(frame.PlaceOf(name), "stated beside gores", "either gores, or family, frequency, cut and size");
        }

        var section = frame.Section("gores");
        var sides = section.Take<int>("sides", Values.Whole);
        var meridian = section.Take<GoreMeridian>("meridian", Values.Word);
        var isMeridianKnown = notes.AreClean(section.PlaceOf("meridian"));
        var gores = meridian == GoreMeridian.Points
            ? Points(section, sides, notes)
            : isMeridianKnown ? Ruled(section, sides, meridian, notes) : null;
        return new FrameWish(default, 0, 0, "", default, NoSize.Measure) { Gores = gores, RiserMm = Riser(frame) };
    }

    /// <summary>Height of the wall under a frame; 0 where none is stated.</summary>
    internal static double Riser(JobSection frame) => frame.States("riser") ? frame.Take<Measure>("riser", Values.Length).Millimetres : 0;

    /// <summary>How a divided solid is drawn out; null where nothing is stated.</summary>
    internal static Point3? Stretch(JobSection frame)
    {
        if (!frame.States("stretch"))
        {
            return null;
        }

        var section = frame.Section("stretch");
        double Along(string name) => section.States(name) ? section.Take<double>(name, Values.Ratio) : 1;
        return new Point3(Along("front"), Along("side"), Along("height"));
    }

    private static GoreWish? Ruled(JobSection section, int sides, GoreMeridian meridian, JobNotes notes)
    {
        foreach (var name in ByRule.Take(3).Where(name => !section.States(name)))
        {
            notes.Refuse(section.PlaceOf(name), "nothing", "required, unless the meridian is given by points");
        }

        if (section.States("points"))
        {
            notes.Refuse(section.PlaceOf("points"), "stated beside another meridian", "\"meridian\": \"points\", or no points");
        }

        if (!notes.AreClean(section.Place))
        {
            return null;
        }

        var gores = new GoreWish(
            sides, meridian, section.Take<int>("chords", Values.Whole), section.Take<Measure>("radius", Values.Length), section.Take<Measure>("height", Values.Length))
        {
            Crown = section.States("crown") ? section.Take<Measure>("crown", Values.Length) : null,
        };
        Check(section, gores, notes);
        return gores;
    }

    private static void Check(JobSection section, GoreWish gores, JobNotes notes)
    {
        if (notes.AreClean(section.Place) && gores.Meridian == GoreMeridian.Circle && gores.Height.Millimetres > gores.Radius.Millimetres)
        {
            notes.Refuse(section.PlaceOf("height"), gores.Height.Typed, $"not more than the radius, {gores.Radius.Typed}: a higher arc would lean out above the eaves; take an ellipse, or a riser");
        }

        if (notes.AreClean(section.Place) && gores.Crown is { } crown && !(crown.Millimetres < 0.9 * gores.Radius.Millimetres))
        {
            notes.Refuse(section.PlaceOf("crown"), crown.Typed, $"less than nine tenths of the radius, {gores.Radius.Typed}");
        }
    }

    private static GoreWish? Points(JobSection section, int sides, JobNotes notes)
    {
        foreach (var name in ByRule.Where(section.States))
        {
            notes.Refuse(section.PlaceOf(name), "stated beside points", "points alone: radius and height over the eaves of each ring");
        }

        var points = ImmutableArray.CreateBuilder<Point2>();
        foreach (var (place, element) in section.Items("points"))
        {
            if (ReadPoint(element) is { } point)
            {
                points.Add(point);
                RefuseFar(place, element, point, notes);
            }
            else
            {
                notes.Refuse(place, JobNotes.Said(element), "radius; height, such as \"1200 mm; 800 mm\"");
            }
        }

        if (!notes.AreClean(section.Place))
        {
            return null;
        }

        var isFalling = points.Count >= 2 && points.Skip(1).Zip(points, (below, above) => below.X > above.X && below.Y < above.Y).All(falls => falls);
        if (!isFalling || points[^1].Y != 0)
        {
            notes.Refuse(section.PlaceOf("points"), FormattableString.Invariant($"{points.Count} rings"), "two rings or more from the top down, each wider and lower than the one before, the last at height 0; an upright wall below them is frame.riser");
            return null;
        }

        return new GoreWish(sides, GoreMeridian.Points, points.Count - 1, new Measure(points[^1].X, ""), new Measure(points[0].Y, "")) { Points = points.ToImmutable() };
    }

    /// <summary>No farther than radius and height may say.</summary>
    private static void RefuseFar(string place, JsonElement element, Point2 point, JobNotes notes)
    {
        var (radius, height) = (JobKeys.Find("frame.gores.radius")!.Most, JobKeys.Find("frame.gores.height")!.Most);
        if (point.X > radius || point.Y > height)
        {
            notes.Refuse(place, JobNotes.Said(element), FormattableString.Invariant($"a radius of at most {radius / 1000:0} m and a height of at most {height / 1000:0} m"));
        }
    }

    private static Point2? ReadPoint(JsonElement element)
    {
        var parts = element.ValueKind == JsonValueKind.String ? element.GetString()!.Split(';') : [];
        return parts.Length == 2
            && LengthParser.TryParse(parts[0], signed: false, out var radius, out _)
            && LengthParser.TryParse(parts[1], signed: false, out var height, out _)
            ? new Point2(radius, height)
            : null;
    }
}
