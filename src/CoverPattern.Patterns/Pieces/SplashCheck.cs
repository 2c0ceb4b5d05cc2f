using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Refuses a splash band that reaches above the second ring of hubs or under the ring of a window.</summary>
public static class SplashCheck
{
    /// <summary>A fault for each of the two.</summary>
    /// <param name="job">Its skirt is read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="windows">Windows at their places.</param>
    public static ImmutableArray<Fault> Faults(Job job, Shell shell, ImmutableArray<LaidWindow> windows)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);

        return job.Skirt.Splash is { } splash ? [.. OverHubs(splash, shell), .. UnderWindows(splash, shell, windows)] : [];
    }

    private static IEnumerable<Fault> OverHubs(SplashWish splash, Shell shell)
    {
        var lowest = shell.Nodes.Where(node => node.Label[^1] != 'f' && !node.Label.StartsWith("H0.", StringComparison.Ordinal) && !node.Label.StartsWith("H00.", StringComparison.Ordinal))
            .MinBy(node => node.AboveHem);
        if (lowest is not null && lowest.AboveHem <= splash.Width.Millimetres)
        {
            yield return Refused(splash, FormattableString.Invariant($"less than {lowest.AboveHem:0} mm, the height of hub {lowest.Label} above the finished edge: a splash band stays below the second ring of hubs"));
        }
    }

    /// <summary>The band would lie under the ring's stitching, and its upper edge across the window.</summary>
    private static IEnumerable<Fault> UnderWindows(SplashWish splash, Shell shell, ImmutableArray<LaidWindow> windows)
    {
        (LaidWindow Window, double Above)[] low = [.. windows.Select(window => (window, LowestAbove(shell, window))).Where(entry => entry.Item2 < splash.Width.Millimetres)];
        if (low.Length > 0)
        {
            var (window, above) = low.MinBy(entry => entry.Above);
            yield return Refused(splash, FormattableString.Invariant($"at most {Math.Max(0, above):0} mm: so far above the finished edge the ring of window {window.Label} comes down, {splash.Width.Millimetres - above:0} mm lower than the band reaches; {(low.Length == 1 ? "1 window lies" : FormattableString.Invariant($"{low.Length} windows lie"))} over it. Take a lower band, or a smaller or higher window"));
        }
    }

    /// <summary>A fault for the sheet behind an opening that reaches down behind the band: the band's upper edge would be stitched through it.</summary>
    /// <param name="job">Its skirt is read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="openings">Openings at their places; rims that come down to the band themselves are refused where openings are held against it.</param>
    public static ImmutableArray<Fault> LapFaults(Job job, Shell shell, ImmutableArray<LaidOpening> openings)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);
        if (job.Skirt.Splash is not { } splash)
        {
            return [];
        }

        var width = splash.Width.Millimetres;
        (LaidOpening Opening, double Rim, double Lap)[] low = [.. openings.Where(opening => opening.Wish.Sheet is not null)
            .Select(opening => (opening, opening.Region.Rim.Min(stretch => LowestOf(shell, stretch, 0)), opening.Region.Rim.Min(stretch => LowestOf(shell, stretch, opening.Wish.Lap.Millimetres))))
            .Where(entry => entry.Item2 >= width && entry.Item3 < width)];
        if (low.Length == 0)
        {
            return [];
        }

        var (lowest, _, reach) = low.MinBy(entry => entry.Lap);
        return
        [
            Refused(splash, FormattableString.Invariant(
                $"at most {Math.Floor(reach):0} mm: so far above the finished edge the sheet of opening {lowest.Label} comes down behind the cover, {lowest.Wish.Lap.Typed} beyond its rim. Take a lower band, or a smaller or higher opening")),
        ];
    }

    /// <summary>Height above the finished edge of the lowest place of a rim, or so far below it along the cloth.</summary>
    private static double LowestOf(Shell shell, RimStretch stretch, double below)
    {
        var height = FaceHeight.Of(shell, shell.Faces[stretch.Face]);
        return stretch.Points.Min(height.At) - (below * height.Slope.Length);
    }

    private static double LowestAbove(Shell shell, LaidWindow window)
    {
        var height = FaceHeight.Of(shell, shell.Faces[window.Region.Centre.Face]);
        return height.At(window.Region.Centre.At) - (window.Wish.OuterRadius * height.Slope.Length);
    }

    private static Fault Refused(SplashWish splash, string allowed) => new("skirt.splash.width", splash.Width.Typed, allowed);
}
