using System;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Plots;

/// <summary>A plot reaches beyond what the machine can count.</summary>
public sealed class PlotTooLargeException : WorkException
{
    /// <param name="label">Name of the plot.</param>
    /// <param name="reachMm">How far it reaches from the origin, millimetres.</param>
    /// <param name="limitMm">How far the machine counts, millimetres.</param>
    /// <param name="wayOut">What helps.</param>
    public PlotTooLargeException(string label, double reachMm, double limitMm, string wayOut)
        : base(label, FormattableString.Invariant($"{label} reaches {reachMm:0.0} mm from the plotter's origin; this machine counts to {limitMm:0.000} mm. {wayOut}"))
    {
    }

    /// <summary>What helps a machine that counts so far with a plot of this size; relative moves always do.</summary>
    /// <param name="size">Length and width of the plot, millimetres.</param>
    /// <param name="isCentred">Whether the origin is in the centre already.</param>
    /// <param name="limitMm">How far the machine counts, millimetres.</param>
    internal static string WayOut(Point2 size, bool isCentred, double limitMm)
    {
        var longest = Math.Floor(2 * limitMm);
        var helps = size.Y > 2 * limitMm
            ? FormattableString.Invariant($"The roll is {size.Y:0} mm wide, too wide from any origin: use")
            : FormattableString.Invariant($"{(isCentred ? "Plot" : "Put the origin in the centre and plot")} sections of at most {longest:0} mm, or use");
        return helps + " relative moves.";
    }
}
