using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads openings of any outline.</summary>
internal static class OpeningReader
{
    private static readonly string[] WithFacet = ["right", "up"];
    private static readonly string[] WithHeight = ["towards"];

    private static readonly Dictionary<OutlineForm, string[]> SizesOf = new()
    {
        [OutlineForm.Circle] = ["width"],
        [OutlineForm.Rectangle] = ["width", "height"],
        [OutlineForm.Rounded] = ["width", "height", "corner"],
        [OutlineForm.Arch] = ["width", "height"],
        [OutlineForm.Regular] = ["width", "sides"],
        [OutlineForm.Polygon] = ["points"],
        [OutlineForm.Facets] = ["facets", "margin"],
        [OutlineForm.Line] = ["height"],
    };

    private static readonly string[] Sizes = ["width", "height", "corner", "sides", "points", "facets", "margin"];
    private static readonly string[] Places = ["facet", "right", "up", "above", "towards", "turned", "laid"];

    internal static ImmutableArray<OpeningWish> Read(ImmutableArray<JobSection> sections, ImmutableArray<Cloth> cloths, JobNotes notes) =>
        [.. sections.Select(section => Read(section, cloths, notes))];

    private static OpeningWish Read(JobSection section, ImmutableArray<Cloth> cloths, JobNotes notes)
    {
        var outline = ReadOutline(section, notes);
        var wish = new OpeningWish(
            outline,
            ReadPlace(section, outline.Form, notes),
            section.States("laid") ? section.Take<LayingRule>("laid", Values.Word) : LayingRule.Either,
            section.Take<Measure>("turnUnder", Values.Length));
        return FillReader.Read(wish, section, cloths, notes);
    }

    private static OutlineWish ReadOutline(JobSection section, JobNotes notes)
    {
        var form = section.Take<OutlineForm>("outline", Values.Word);
        if (!notes.AreClean(section.PlaceOf("outline")))
        {
            return new OutlineWish(form);
        }

        foreach (var key in Sizes)
        {
            var isWanted = SizesOf[form].Contains(key);
            if (isWanted != section.States(key))
            {
                notes.Refuse(section.PlaceOf(key), isWanted ? "nothing" : "stated", isWanted
                    ? $"required of a {Name(form)}: {JobKeys.Find("openings[]." + key)!.Allowed}"
                    : $"no such size of a {Name(form)}: it has {string.Join(" and ", SizesOf[form])}");
            }
        }

        Measure Size(string key) => section.States(key) ? section.Take<Measure>(key, Values.Length) : default;
        var outline = new OutlineWish(form)
        {
            Width = Size("width"),
            Height = Size("height"),
            Corner = Size("corner"),
            Sides = section.States("sides") ? section.Take<int>("sides", Values.Whole) : 0,
            Points = section.States("points") ? ReadPoints(section, notes) : [],
            Facets = section.States("facets") ? section.Take<ImmutableArray<string>>("facets", Values.Labels) : [],
            Margin = Size("margin"),
        };
        CheckSums(outline, section, notes);
        return outline;
    }

    private static void CheckSums(OutlineWish outline, JobSection section, JobNotes notes)
    {
        if (!notes.AreClean(section.Place))
        {
            return;
        }

        if (outline.Form == OutlineForm.Rounded && 2 * outline.Corner.Millimetres > Math.Min(outline.Width.Millimetres, outline.Height.Millimetres))
        {
            notes.Refuse(section.PlaceOf("corner"), outline.Corner.Typed, $"at most half of width and height, {outline.Width.Typed} and {outline.Height.Typed}");
        }

        if (outline.Form == OutlineForm.Arch && 2 * outline.Height.Millimetres < outline.Width.Millimetres)
        {
            notes.Refuse(section.PlaceOf("height"), outline.Height.Typed, $"at least half the width, {outline.Width.Typed}: the arch is a half circle");
        }
    }

    private static ImmutableArray<Point2> ReadPoints(JobSection section, JobNotes notes)
    {
        var points = ImmutableArray.CreateBuilder<Point2>();
        var words = section.Take<ImmutableArray<string>>("points", Values.Labels);
        foreach (var (word, i) in (words.IsDefault ? [] : words).Select((word, i) => (word, i)))
        {
            var parts = word.Split(';');
            if (parts.Length == 2 && TryRead(parts[0], out var right) && TryRead(parts[1], out var up))
            {
                points.Add(new Point2(right, up));
            }
            else
            {
                notes.Refuse(FormattableString.Invariant($"{section.PlaceOf("points")}[{i}]"), $"\"{word}\"", "right and up of the middle, parted by a semicolon, such as \"-300 mm; 200 mm\", each -10 m to 10 m");
            }
        }

        return points.ToImmutable();
    }

    private static bool TryRead(string text, out double value)
    {
        const double farthest = 10_000;
        return LengthParser.TryParse(text.Trim(), signed: true, out value, out _) && Math.Abs(value) <= farthest;
    }

    private static OpeningPlace ReadPlace(JobSection section, OutlineForm form, JobNotes notes)
    {
        if (form == OutlineForm.Facets)
        {
            foreach (var key in Places.Where(section.States))
            {
                notes.Refuse(section.PlaceOf(key), "stated", "no place: whole facets have their own");
            }

            return new OpeningPlace(string.Empty, default, default);
        }

        var byHeight = section.States("above");
        if (byHeight == section.States("facet") && !section.IsMissed)
        {
            notes.Refuse(section.Place, byHeight ? "facet and above" : "neither facet nor above", "one of them: \"facet\": \"F2.07\", or \"above\": \"1.5 m\" with \"towards\": 36");
        }

        if (byHeight && !section.States("towards"))
        {
            notes.Refuse(section.PlaceOf("towards"), "nothing", "required with above: " + JobKeys.Find("openings[].towards")!.Allowed);
        }

        foreach (var key in (byHeight ? WithFacet : WithHeight).Where(section.States))
        {
            notes.Refuse(section.PlaceOf(key), "stated", byHeight ? "right and up go with facet" : "towards goes with above");
        }

        Measure Shift(string key) => section.States(key) ? section.Take<Measure>(key, Values.SignedLength) : default;
        return new OpeningPlace(section.States("facet") ? section.Take<string>("facet", Values.Line) ?? string.Empty : string.Empty, Shift("right"), Shift("up"))
        {
            Above = byHeight ? section.Take<Measure>("above", Values.Length) : null,
            Towards = section.States("towards") ? section.Take<double>("towards", Values.Degrees) : 0,
            Turned = section.States("turned") ? section.Take<double>("turned", Values.Degrees) : 0,
        };
    }

    private static string Name(OutlineForm form) => form.ToString().ToLowerInvariant();
}
