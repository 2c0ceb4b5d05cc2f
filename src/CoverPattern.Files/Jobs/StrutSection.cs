using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads the measured struts of a frame and finds the family they belong to.</summary>
internal static class StrutSection
{
    private const int LongestLine = 60;

    // One wrong strut opens two facets; a wrong class opens many, all for one reason.
    private const int MostOpen = 10;

    // Own choice: 1 mm of base radius is 0.12 mm of raise, so a floor this far off is a wrong number, not a bent frame.
    private const double MostFloorOff = 0.05;

    private static readonly ImmutableArray<(string Name, string Instead)> OfSizesOnly =
    [
        ("stretch", "struts alone make an upright dome"),
        ("riser", "over a wall up to 3 m high the skirt hangs as well: say its height as deck.plinth"),
    ];

    /// <summary>Reads the struts.</summary>
    /// <param name="frame">The section of the frame; it states struts.</param>
    /// <param name="wish">Family, frequency and cut, as read.</param>
    /// <param name="notes">Takes faults and assumptions.</param>
    internal static FrameWish Read(JobSection frame, FrameWish wish, JobNotes notes)
    {
        if (frame.States("size"))
        {
            notes.Refuse(frame.PlaceOf("size"), "stated beside struts", "either size or struts; the struts give the size");
        }

        foreach (var (name, instead) in OfSizesOnly.Where(entry => frame.States(entry.Name)))
        {
            notes.Refuse(frame.PlaceOf(name), "stated beside struts", "a frame of a stated size, or the measured hubs as a survey; " + instead);
        }

        var section = frame.Section("struts");
        var struts = new StrutWish(Lengths(section, "lengths", notes), Lengths(section, "odd", notes))
        {
            EndAllowanceMm = section.Take<Measure>("endAllowance", Values.Length).Millimetres,
            BendAtMm = section.States("bendAt") ? section.Take<Measure>("bendAt", Values.Length).Millimetres : 0,
            FloorDiameter = section.States("floorDiameter") ? section.Take<Measure>("floorDiameter", Values.Length) : null,
            Raise = section.States("raise") ? section.Take<Measure>("raise", Values.Length) : null,
        };
        RefuseLongBend(section, struts, notes);
        return notes.AreClean("frame") ? Recognised(frame, wish with { Struts = struts }, notes) : wish;
    }

    /// <summary>Both bends of a tube lie on it.</summary>
    private static void RefuseLongBend(JobSection section, StrutWish struts, JobNotes notes)
    {
        var shortest = struts.Lengths.Concat(struts.Odd).Select(strut => strut.Length.Millimetres).DefaultIfEmpty(double.PositiveInfinity).Min();
        if (2 * struts.BendAtMm >= shortest)
        {
            notes.Refuse(section.PlaceOf("bendAt"), FormattableString.Invariant($"{struts.BendAtMm:0.#} mm"), FormattableString.Invariant($"less than half the shortest strut, which is {shortest:0.#} mm long: the distance from an end's hole to its own bend"));
        }
    }

    /// <summary>The stated division if the struts fit it, else the one they fit.</summary>
    private static FrameWish Recognised(JobSection frame, FrameWish wish, JobNotes notes)
    {
        var ranked = StrutFamily.Rank(wish);
        var place = frame.PlaceOf("struts") + ".lengths";
        if (ranked.IsEmpty)
        {
            var own = FrameBuilder.Build(wish with { Struts = null, Measure = FrameMeasure.Radius, Size = new Measure(1000, "") });
            notes.Refuse(place, "classes " + string.Join(", ", wish.Struts!.Lengths.Select(length => length.Name)), FormattableString.Invariant($"one length for each class of the frame, the shortest first: {own.Classes[0].Label} to {own.Classes[^1].Label} in equal chords"));
            return wish;
        }

        var fits = ranked.Where(one => one.Wish.Family == wish.Family && (!frame.States("division") || one.Wish.Division == wish.Division)).ToArray();
        if (fits.Length > 0 && fits[0].Off <= StrutFamily.MostOff)
        {
            return Checked(frame, fits[0].Wish, notes);
        }

        var (best, off) = ranked[0];
        notes.Refuse(
            place,
            string.Join(", ", wish.Struts!.Lengths.Select(length => length.Name + " " + length.Length.Typed)),
            off <= StrutFamily.MostOff
                ? FormattableString.Invariant($"lengths of {Words(wish)}; these are those of {Words(best)}, within {100 * off:0.0} %: say so, or measure again")
                : FormattableString.Invariant($"ratios within {100 * StrutFamily.MostOff:0} % of a family; the nearest is {Words(best)}, where a class is {100 * off:0.0} % off{StrutFamily.Suspect(best)}: measure three struts of each class again, or give the hubs as a survey"));
        return wish;
    }

    /// <summary>As the job says it.</summary>
    private static string Words(FrameWish wish) =>
        $"\"family\": \"{JsonNamingPolicy.CamelCase.ConvertName(wish.Family.ToString())}\", \"division\": \"{JsonNamingPolicy.CamelCase.ConvertName(wish.Division.ToString())}\"";

    /// <summary>The frame is made once, so that lengths which close no facet are told before any work.</summary>
    private static FrameWish Checked(JobSection frame, FrameWish wish, JobNotes notes)
    {
        var place = frame.PlaceOf("struts");
        try
        {
            RefuseSize(place, wish, notes);
            RefuseUnclosed(place, wish, notes);
            if (notes.AreClean(place))
            {
                RefuseFarFloor(place, wish, notes);
            }

            if (notes.AreClean(place))
            {
                FrameBuilder.Build(wish);
            }
        }
        catch (StrutsException fault)
        {
            notes.Refuse(place, fault.Label, fault.Message);
        }

        return wish;
    }

    /// <summary>The limits of a stated radius hold for the one that the struts make.</summary>
    private static void RefuseSize(string place, FrameWish wish, JobNotes notes)
    {
        var limits = JobKeys.Find("frame.size.radius")!;
        var radius = StrutFamily.SphereRadius(wish);
        if (radius < limits.Least || radius > limits.Most)
        {
            var lengths = wish.Struts!.Lengths;
            notes.Refuse(place + ".lengths", FormattableString.Invariant($"{lengths[0].Name} {lengths[0].Length.Typed}, which makes a sphere radius of {radius:0} mm"), FormattableString.Invariant($"struts whose sphere radius is {limits.Least:0} to {limits.Most:0} mm; look at the unit"));
        }
    }

    /// <summary>Odd struts that the frame has not, and facets whose struts cannot meet, all of them before the frame is made.</summary>
    private static void RefuseUnclosed(string place, FrameWish wish, JobNotes notes)
    {
        var (strays, open) = StrutClosing.Find(wish);
        foreach (var name in strays.Names)
        {
            notes.Refuse(place + ".odd", name, $"a strut of this frame by its two hubs, the lower label first, such as \"{strays.Such}\"");
        }

        foreach (var (facet, sides) in open.Take(MostOpen))
        {
            notes.Refuse(
                wish.Struts!.Odd.IsEmpty ? place + ".lengths" : place + ".odd",
                FormattableString.Invariant($"facet {facet} of {string.Join(", ", sides.Select(side => FormattableString.Invariant($"{side.Name} {side.Length.Millimetres:0.#} mm")))}"),
                FormattableString.Invariant($"three struts of which the longest is shorter than the two others together, {sides.SkipLast(1).Sum(side => side.Length.Millimetres):0.#} mm here; measure them again"));
        }
    }

    /// <summary>A floor far from the one on which all base hubs stand on a circle bends the frame inward somewhere: the floor is told, not the hub.</summary>
    private static void RefuseFarFloor(string place, FrameWish wish, JobNotes notes)
    {
        if (wish.Struts!.FloorDiameter is not { } floor)
        {
            return;
        }

        var round = FrameBuilder.Build(wish with { Struts = wish.Struts with { FloorDiameter = null } });
        var own = 2 * round.Base.Where(hub => round.Hubs[hub].Position.Z < 0.5).Average(hub => round.Hubs[hub].Position.Plan.Length);
        if (Math.Abs((floor.Millimetres / own) - 1) > MostFloorOff)
        {
            notes.Refuse(
                place + ".floorDiameter",
                floor.Typed,
                FormattableString.Invariant($"a diameter within {100 * MostFloorOff:0} % of the {own:0} mm that these struts make when their base hubs stand on a circle; measure the floor in three directions and three struts of each class again, or leave it out"));
        }
    }

    /// <summary>Lines such as "A 50 1/4 in": a name, a blank, a length.</summary>
    private static ImmutableArray<StrutLength> Lengths(JobSection section, string name, JobNotes notes)
    {
        var lengths = ImmutableArray.CreateBuilder<StrutLength>();
        foreach (var (place, element) in section.Items(name))
        {
            var line = element.ValueKind == JsonValueKind.String ? element.GetString()!.Trim() : "";
            var blank = line.IndexOf(' ', StringComparison.Ordinal);
            var trouble = "a name, a blank and a length";
            if (line.Length is 0 or > LongestLine || blank < 0 || !LengthParser.TryParse(line[(blank + 1)..], signed: false, out var millimetres, out trouble) || !(millimetres > 0))
            {
                notes.Refuse(place, JobNotes.Said(element), $"{trouble}; a line such as \"A 50 1/4 in\" or \"H0.07-H1.03 1510 mm\"");
            }
            else if (lengths.Any(other => other.Name == line[..blank]))
            {
                notes.Refuse(place, line[..blank] + " a second time", "each name once");
            }
            else
            {
                lengths.Add(new StrutLength(line[..blank], new Measure(millimetres, line[(blank + 1)..].Trim())));
            }
        }

        return lengths.ToImmutable();
    }
}
