using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Finds the family whose struts have the ratios of measured ones.</summary>
public static class StrutFamily
{
    /// <summary>Lengths that differ from those of a family by more than this share belong to none.</summary>
    public const double MostOff = 0.02;

    private static readonly ImmutableArray<FrameDivision> Divisions = [.. Enum.GetValues<FrameDivision>()];

    /// <summary>Families of the frequency with as many classes as there are lengths, the nearest first.</summary>
    /// <param name="wish">Frequency, cut and struts are read, family and division are not.</param>
    /// <returns>Each with the largest share by which a class is off, over the radius that fits best.</returns>
    public static ImmutableArray<(FrameWish Wish, double Off)> Rank(FrameWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        return
        [
            .. from family in Enum.GetValues<FrameFamily>()
               from division in Divisions
               where IsDivisible(family, division, wish.Frequency)
               let own = wish with { Family = family, Division = division }
               where Ball.Divide(own).Above(own, out _) is not null
               let off = Off(own)
               where off is not null
               // Divisions that are one and the same, as of the 2V, differ by rounding: the first word is told.
               orderby Math.Round(off.Value, 9)
               select (own, off.Value),
        ];
    }

    /// <summary>Whether a solid can be divided so.</summary>
    public static bool IsDivisible(FrameFamily family, FrameDivision division, int frequency) => division switch
    {
        FrameDivision.ClassTwo => frequency % 2 == 0,
        FrameDivision.LevelByEdgeHubs => family == FrameFamily.Icosahedron && frequency is 3 or 4,
        FrameDivision.LevelByInnerHubs => family == FrameFamily.Icosahedron && frequency == 4,
        _ => true,
    };

    /// <summary>Largest share by which a class is off; null where the names of the classes are not those of the frame.</summary>
    public static double? Off(FrameWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        var unit = Unit(wish);
        var measured = Straight(unit, wish.Struts!);
        if (!unit.Classes.Select(own => own.Label).Order(StringComparer.Ordinal).SequenceEqual(measured.Keys.Order(StringComparer.Ordinal)))
        {
            return null;
        }

        var radius = Radius(unit.Classes, measured);
        return unit.Classes.Max(own => Math.Abs((measured[own.Label] / (radius * own.LengthMm)) - 1));
    }

    /// <summary>The class that is off, where all others agree on one size; in words that go on after a sentence, else empty.</summary>
    /// <param name="wish">With struts, one for each class of its family.</param>
    public static string Suspect(FrameWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        var unit = Unit(wish);
        var measured = Straight(unit, wish.Struts!);
        foreach (var one in unit.Classes)
        {
            var others = unit.Classes.Remove(one);
            var radius = Radius(others, measured);
            if (others.Length > 1 && others.All(own => Math.Abs((measured[own.Label] / (radius * own.LengthMm)) - 1) <= MostOff))
            {
                return FormattableString.Invariant($"; the other classes agree, and would make {one.Label} {radius * one.LengthMm:0} mm long, hub centre to hub centre");
            }
        }

        return string.Empty;
    }

    /// <summary>Radius of the sphere that fits the lengths best, millimetres.</summary>
    /// <param name="wish">With struts, one for each class of its family.</param>
    public static double SphereRadius(FrameWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        var unit = Unit(wish);
        return Radius(unit.Classes, Straight(unit, wish.Struts!));
    }

    /// <summary>The frame as the family has it, at the radius that fits the lengths best.</summary>
    internal static Frame Nominal(FrameWish wish)
    {
        var unit = Unit(wish);
        return FrameBuilder.Build(Sized(wish, Radius(unit.Classes, Straight(unit, wish.Struts!))));
    }

    /// <summary>The length of every strut of the nominal frame, hub centre to hub centre.</summary>
    internal static ImmutableArray<double> Lengths(Frame nominal, StrutWish struts)
    {
        var straight = Straight(nominal, struts);
        var typed = struts.Lengths.ToDictionary(strut => strut.Name, strut => strut.Length.Millimetres, StringComparer.Ordinal);
        var odd = struts.Odd.ToDictionary(strut => strut.Name, strut => strut.Length.Millimetres, StringComparer.Ordinal);
        // A single strut was measured as its class was: along the tube before bending, or straight.
        return [.. nominal.Struts.Select(strut => straight[strut.Class] + (odd.TryGetValue(Name(nominal, strut), out var own) ? own - typed[strut.Class] : 0))];
    }

    /// <summary>The frame with each strut as long as the tube before it was bent, but for end allowances: what a saw cuts.</summary>
    internal static Frame Sawn(Frame frame, FrameWish wish)
    {
        var struts = wish.Struts!;
        var straight = Straight(Nominal(wish), struts);
        var bent = struts.Lengths.ToDictionary(strut => strut.Name, strut => strut.Length.Millimetres + (2 * struts.EndAllowanceMm) - straight[strut.Name], StringComparer.Ordinal);
        return frame with { Struts = [.. frame.Struts.Select(strut => strut with { LengthMm = strut.LengthMm + bent[strut.Class.Split(' ')[0]] })] };
    }

    /// <summary>How a single strut is named: by its hubs, the lower label first.</summary>
    public static string Name(Frame frame, Strut strut) => frame.Hubs[strut.From].Label + "-" + frame.Hubs[strut.To].Label;

    /// <summary>
    /// Hub centre to hub centre. Measured along the tube before bending by d at distance c from each hole, the straight length is
    /// shorter by 2 c (1 - cos d); d is the axial angle (own derivation).
    /// </summary>
    private static Dictionary<string, double> Straight(Frame any, StrutWish struts)
    {
        var lengths = struts.Lengths.ToDictionary(strut => strut.Name, strut => strut.Length.Millimetres, StringComparer.Ordinal);
        var radius = any.Hubs.Length > 0 && struts.BendAtMm > 0 && any.Classes.All(own => lengths.ContainsKey(own.Label))
            ? Radius(any.Classes, lengths) : double.PositiveInfinity;
        foreach (var own in any.Classes.Where(own => lengths.ContainsKey(own.Label)))
        {
            // Chord over sphere radius; the frame at hand may be of any size.
            var bend = double.IsFinite(radius) ? Math.Asin(own.LengthMm / (2 * SphereRadiusOf(any))) : 0;
            lengths[own.Label] += (2 * struts.EndAllowanceMm) - (2 * struts.BendAtMm * (1 - Math.Cos(bend)));
        }

        return lengths;
    }

    private static double SphereRadiusOf(Frame frame) => Geometry.SphereFit.Centre([.. frame.Hubs.Select(hub => hub.Position)]) is { } centre
        ? Geometry.Point3.Distance(centre, frame.Hubs[0].Position)
        : double.PositiveInfinity;

    private static Frame Unit(FrameWish wish) => FrameBuilder.Build(Sized(wish, 1));

    private static FrameWish Sized(FrameWish wish, double radius) =>
        wish with { Struts = null, Measure = FrameMeasure.Radius, Size = new Measure(radius, "") };

    /// <summary>Least squares over the classes.</summary>
    private static double Radius(ImmutableArray<StrutClass> classes, Dictionary<string, double> measured) =>
        classes.Sum(own => own.LengthMm * measured[own.Label]) / classes.Sum(own => own.LengthMm * own.LengthMm);
}
