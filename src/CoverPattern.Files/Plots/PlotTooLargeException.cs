using System;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Plots;

/// <summary>A plot reaches beyond what the machine can count.</summary>
public sealed class PlotTooLargeException : WorkException
{
    /// <param name="label">Name of the plot.</param>
    /// <param name="reachMm">How far it reaches from the origin, millimetres.</param>
    /// <param name="limitMm">How far the machine counts, millimetres.</param>
    public PlotTooLargeException(string label, double reachMm, double limitMm)
        : base(label, FormattableString.Invariant($"{label} reaches {reachMm:0.0} mm from the plotter's origin; this machine counts to {limitMm:0.000} mm. Put the origin in the centre, plot shorter sections, or use relative moves."))
    {
    }
}
