using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Makes the frame that measured struts make.</summary>
/// <remarks>
/// Facets always follow the struts. A free-standing dome has as many flexes as base hubs less three; they are closed by
/// wishes: the lowest hubs of the nominal frame at one height, and all base hubs on one circle or the lowest ones on a measured
/// one; where the base hubs of the family's own frame stand on circles of plainly unlike radius, as of a 3V 7/9, on one circle each. Never by the raise: 1 mm of it moves the base by 8 mm (own calculation).
/// </remarks>
public static class StrutFrame
{
    // Base hubs of the nominal frame within this of the lowest stand on the deck, share of the sphere's radius.
    private const double Lowest = 1e-6;

    // Base hubs of the nominal frame nearer than this to the next stand on one circle, share of the sphere's radius. Own choice: those
    // of a 3V 5/8 differ by 0.3 %, those of a 3V 7/9 by 8 %.
    private const double OneCircle = 0.02;

    // A strut differs from its class by more than this when it is named as a likely slip, millimetres.
    private const double Odd = 2;

    // A strut this far from its length after the last step was not met, millimetres.
    private const double Met = 1e-6;

    /// <summary>Builds the frame.</summary>
    /// <param name="wish">With struts; the reader has found that they fit its family.</param>
    /// <exception cref="StrutsException">The struts close no frame that bulges outward everywhere.</exception>
    public static Frame Build(FrameWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        ArgumentNullException.ThrowIfNull(wish.Struts);
        var nominal = StrutFamily.Nominal(wish);
        var lengths = StrutFamily.Lengths(nominal, wish.Struts);
        return Solve(nominal, lengths, wish.Struts.FloorDiameter?.Millimetres, nominal.Hubs.Select(hub => hub.Position).ToArray());
    }

    /// <summary>Builds the frame from given places to start from.</summary>
    /// <param name="nominal">The frame as the family has it, about as large.</param>
    /// <param name="lengths">Length of each of its struts, hub centre to hub centre, millimetres.</param>
    /// <param name="floorDiameter">Measured, millimetres; null for all base hubs on one circle.</param>
    /// <param name="start">Places of the hubs to start from.</param>
    /// <exception cref="StrutsException">The struts close no frame that bulges outward everywhere.</exception>
    public static Frame Solve(Frame nominal, ImmutableArray<double> lengths, double? floorDiameter, IReadOnlyList<Point3> start)
    {
        ArgumentNullException.ThrowIfNull(nominal);
        CheckFacets(nominal, lengths);
        ImmutableArray<Bar> bars = [.. nominal.Struts.Select((strut, i) => new Bar(strut.From, strut.To, lengths[i]))];
        var size = nominal.Hubs.Max(hub => hub.Position.Length);
        var low = nominal.Base.Where(hub => nominal.Hubs[hub].Position.Z < Lowest * size).ToArray();
        ImmutableArray<JointWish> wishes =
        [
            .. low.Select(hub => new JointWish(hub, JointWishKind.Height, 0)),
            .. floorDiameter is { } diameter
                ? low.Select(hub => new JointWish(hub, JointWishKind.Radius, diameter / 2))
                : Circles(nominal).SelectMany((hubs, circle) => hubs.Select(hub => new JointWish(hub, JointWishKind.OneCircle, circle))),
        ];
        var solution = BarSolver.Solve(start, bars, wishes);
        if (!(solution.WorstBar <= Met))
        {
            throw NotMet(nominal, bars, solution);
        }

        CheckBulges(nominal, bars, solution.Joints);
        return Finish(nominal, solution.Joints, lengths);
    }

    /// <summary>Base hubs that stand on one circle, the innermost first.</summary>
    /// <param name="nominal">The frame as the family has it.</param>
    internal static ImmutableArray<ImmutableArray<int>> Circles(Frame nominal)
    {
        var size = nominal.Hubs.Max(hub => hub.Position.Length);
        double Radius(int hub) => nominal.Hubs[hub].Position.Plan.Length;
        var circles = new List<List<int>>();
        foreach (var hub in nominal.Base.OrderBy(Radius).ThenBy(hub => hub))
        {
            if (circles.Count == 0 || Radius(hub) - Radius(circles[^1][^1]) > OneCircle * size)
            {
                circles.Add([]);
            }

            circles[^1].Add(hub);
        }

        return [.. circles.Select(circle => circle.Order().ToImmutableArray())];
    }

    /// <summary>How far the frame's struts are from their lengths, the worst of each class, millimetres.</summary>
    public static ImmutableSortedDictionary<string, double> Residuals(Frame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        return frame.Struts.GroupBy(strut => strut.Class, StringComparer.Ordinal).ToImmutableSortedDictionary(
            group => group.Key, group => group.Max(strut => Math.Abs(Point3.Distance(frame.Hubs[strut.From].Position, frame.Hubs[strut.To].Position) - strut.LengthMm)), StringComparer.Ordinal);
    }

    private static StrutsException NotMet(Frame nominal, ImmutableArray<Bar> bars, BarSolution solution)
    {
        double Off(Bar bar) => Math.Abs(Point3.Distance(solution.Joints[bar.From], solution.Joints[bar.To]) - bar.Length);
        var worst = Enumerable.Range(0, bars.Length).MaxBy(i => Off(bars[i]) is var off && double.IsNaN(off) ? double.MaxValue : off);
        var name = StrutFamily.Name(nominal, nominal.Struts[worst]);
        return new StrutsException(name, FormattableString.Invariant($"No frame has struts of these lengths: after {solution.Rounds} steps strut {name}, class {nominal.Struts[worst].Class}, is still {Off(bars[worst]):0.###} mm off its {bars[worst].Length:0.0} mm, where {Met:0.000000} mm are allowed. Measure three struts of each class again: class {nominal.Struts[worst].Class} is {nominal.Struts[worst].LengthMm:0} mm long on such a frame.{OddOnes(nominal, bars)}"));
    }

    /// <summary>Struts that were named as unlike their class, the most unlike first: where lengths do not fit, one of them is likely the slip.</summary>
    private static string OddOnes(Frame nominal, ImmutableArray<Bar> bars)
    {
        var lengths = bars.Select(bar => bar.Length).ToImmutableArray();
        var odd = nominal.Struts.Select((strut, i) => (Name: StrutFamily.Name(nominal, strut), strut.Class, Length: lengths[i], Own: ClassLength(nominal, lengths, strut.Class)))
            .Where(strut => Math.Abs(strut.Length - strut.Own) > Odd).OrderByDescending(strut => Math.Abs(strut.Length - strut.Own)).Take(5)
            .Select(strut => FormattableString.Invariant($"{strut.Name} {strut.Length:0.#} mm, where class {strut.Class} has {strut.Own:0.#} mm")).ToArray();
        return odd.Length == 0 ? "" : " Named as unlike their class: " + string.Join("; ", odd) + ".";
    }

    private static void CheckFacets(Frame nominal, ImmutableArray<double> lengths)
    {
        if (StrutClosing.Open(nominal, lengths).FirstOrDefault() is ({ } facet, { } sides))
        {
            throw new StrutsException(facet, FormattableString.Invariant($"Facet {facet} does not close: its struts are {sides[0].LengthMm:0.#}, {sides[1].LengthMm:0.#} and {sides[^1].LengthMm:0.#} mm, and the longest must be shorter than the two others together. Measure them again."));
        }
    }

    /// <summary>All lengths also fit a frame with a hub pushed in; the covers made here lie over frames that bulge outward.</summary>
    private static void CheckBulges(Frame nominal, ImmutableArray<Bar> bars, ImmutableArray<Point3> joints)
    {
        var normals = nominal.Facets.Select(facet => Point3.Cross(joints[facet.Hubs[1]] - joints[facet.Hubs[0]], joints[facet.Hubs[2]] - joints[facet.Hubs[0]]).Unit()).ToArray();
        var left = new Dictionary<(int, int), int>();
        foreach (var (facet, i) in nominal.Facets.Select((facet, i) => (facet, i)))
        {
            for (var at = 0; at < facet.Hubs.Length; at++)
            {
                var (from, to) = (facet.Hubs[at], facet.Hubs[(at + 1) % facet.Hubs.Length]);
                left[(from, to)] = i;
                if (left.TryGetValue((to, from), out var other)
                    && Point3.Dot(Point3.Cross(normals[i], normals[other]), joints[to] - joints[from]) < 0)
                {
                    var bend = Math.Acos(Math.Clamp(Point3.Dot(normals[i], normals[other]), -1, 1)) * 180 / Math.PI;
                    throw new StrutsException(nominal.Hubs[from].Label, FormattableString.Invariant($"At the strut {nominal.Hubs[from].Label}-{nominal.Hubs[to].Label} the frame bends inward by {bend:0.0###} degrees, and 0 are allowed: a hub is popped in, lengths are mixed up, or on a very flat frame they are rounded too far. Look at the frame, then measure the struts of this hub again, to a tenth of a millimetre where the bend is small.{OddOnes(nominal, bars)}"));
                }
            }
        }
    }

    private static Frame Finish(Frame nominal, ImmutableArray<Point3> joints, ImmutableArray<double> lengths)
    {
        var deck = nominal.Base.Min(hub => joints[hub].Z);
        var struts = nominal.Struts.Select((strut, i) => strut with
        {
            LengthMm = lengths[i],
            Class = Math.Abs(lengths[i] - ClassLength(nominal, lengths, strut.Class)) < Met ? strut.Class : strut.Class + " odd",
        }).ToImmutableArray();
        return nominal with
        {
            Hubs = [.. nominal.Hubs.Select((hub, i) => hub with { Position = joints[i] - new Point3(0, 0, deck) })],
            Struts = struts,
            Classes = [.. struts.GroupBy(strut => (strut.Class, strut.LengthMm)).OrderBy(group => group.Key.Class, StringComparer.Ordinal).ThenBy(group => group.Key.LengthMm).Select(group => new StrutClass(group.Key.Class, group.Key.LengthMm, group.Count()))],
        };
    }

    /// <summary>The length that most struts of a class have.</summary>
    private static double ClassLength(Frame nominal, ImmutableArray<double> lengths, string name) => nominal.Struts
        .Select((strut, i) => (strut.Class, Length: lengths[i])).Where(pair => pair.Class == name)
        .GroupBy(pair => pair.Length).OrderByDescending(group => group.Count()).ThenBy(group => group.Key).First().Key;
}
