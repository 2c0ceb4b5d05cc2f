using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Tells what follows from measured struts, and holds it against a measured raise.</summary>
public static class StrutCheck
{
    // 2 mm in B or C explains 2.6 mm of raise on a 24 ft 3V; more than this is a slip (own calculation).
    private const double MostGap = 10;

    // Circles of the base hubs that part by more than the family's do, as a share (own choice): 1 % of a 24 ft base is 36 mm.
    private const double MostLobe = 0.01;

    /// <summary>Yields the notices; none for a frame that is not made from struts.</summary>
    /// <param name="wish">What was measured.</param>
    /// <param name="frame">The frame that follows.</param>
    public static IEnumerable<Notice> Check(FrameWish wish, Frame frame)
    {
        ArgumentNullException.ThrowIfNull(wish);
        ArgumentNullException.ThrowIfNull(frame);
        if (wish.Struts is not { } struts)
        {
            yield break;
        }

        var raise = frame.Base.Max(hub => frame.Hubs[hub].Position.Z);
        var low = frame.Base.Where(hub => frame.Hubs[hub].Position.Z < 0.5).Average(hub => frame.Hubs[hub].Position.Plan.Length);
        yield return new Notice(NoticeLevel.Note, "frame-from-struts", string.Empty, FormattableString.Invariant(
            $"The frame follows the struts, {wish.Family} {wish.Frequency}V, {wish.Division}: every strut within {StrutFrame.Residuals(frame).Values.Max():0.0000} mm. {(struts.FloorDiameter is null ? Closed(wish) : "The lowest base hubs were put as near to the measured circle as the struts allow")}, for struts alone leave {Math.Max(0, frame.Base.Length - 3)} flexes and do not fix a base: low hubs at a diameter of {2 * low:0} mm, highest base hubs {raise:0.0} mm over the lowest, top {frame.Hubs.Max(hub => hub.Position.Z):0} mm high."));
        if (struts.FloorDiameter is { } floor && Math.Abs(floor.Millimetres - (2 * low)) > MostGap)
        {
            yield return new Notice(NoticeLevel.Warning, "floor-gap", "frame.struts.floorDiameter", FormattableString.Invariant(
                $"The measured floor diameter of {floor.Typed} is {Math.Abs(floor.Millimetres - (2 * low)):0.0} mm off the {2 * low:0.0} mm that the struts allow with the low hubs on one level; more than {MostGap:0} mm is a slip in one of them. Measure the floor in three directions and three struts of each class again."));
        }

        if (struts.FloorDiameter is not null && Lobes(wish, frame) is { } lobes)
        {
            yield return new Notice(NoticeLevel.Warning, "floor-lobes", "frame.struts.floorDiameter", lobes);
        }

        if (struts.Raise is { } measured && Math.Abs(measured.Millimetres - raise) > MostGap)
        {
            yield return new Notice(NoticeLevel.Warning, "raise-gap", "frame.struts.raise", FormattableString.Invariant(
                $"The measured raise of {measured.Typed} is {Math.Abs(measured.Millimetres - raise):0.0} mm off the {raise:0.0} mm that follows from the struts; more than {MostGap:0} mm is a slip in one of them. Measure the raise, the floor diameter and three struts of each class again."));
        }
    }

    /// <summary>A floor diameter that struts allow but no upright dome has; null where the base is as round as the family's own.</summary>
    private static string? Lobes(FrameWish wish, Frame frame)
    {
        var nominal = StrutFamily.Nominal(wish);
        var low = nominal.Base.Where(hub => nominal.Hubs[hub].Position.Z < 0.5).ToArray();
        var high = nominal.Base.Except(low).ToArray();
        double Ratio(Frame own) => high.Average(hub => own.Hubs[hub].Position.Plan.Length) / low.Average(hub => own.Hubs[hub].Position.Plan.Length);
        if (high.Length == 0 || Math.Abs((Ratio(frame) / Ratio(nominal)) - 1) <= MostLobe)
        {
            return null;
        }

        return FormattableString.Invariant($"With the measured floor diameter of {wish.Struts!.FloorDiameter!.Value.Typed} the {high.Length} higher base hubs would stand {100 * (Ratio(frame) - 1):0.0} % farther out than the {low.Length} lowest, where this family has {100 * (Ratio(nominal) - 1):0.0} %: the base would be lobed. The diameter is that of the circle through the lowest hubs, not a tape between two of them: of {low.Length} even hubs, two that are k apart measure sin(180 k / {low.Length} degrees) of it.");
    }

    private static string Closed(FrameWish wish) => StrutFrame.Circles(StrutFamily.Nominal(wish)).Length is var circles and > 1
        ? FormattableString.Invariant($"The base hubs were put on {circles} circles, as the family has them")
        : "All base hubs were put on one circle";
}
