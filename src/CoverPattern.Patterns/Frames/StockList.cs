using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>The cutting list of a frame's struts.</summary>
/// <param name="Bars">What is cut from each bar.</param>
/// <param name="BarMm">Length of a bar, millimetres.</param>
/// <param name="KerfMm">What the saw takes at a cut, millimetres.</param>
/// <param name="Fewest">No cutting takes fewer bars.</param>
public sealed record StockList(ImmutableArray<StockBar> Bars, double BarMm, double KerfMm, int Fewest)
{
    /// <summary>Makes the list.</summary>
    /// <param name="wish">Bars, and the end allowance of measured struts: tubes are twice that shorter than from hub centre to hub centre.</param>
    /// <param name="frame">The frame that follows from the wish.</param>
    /// <returns>Null where no bars are wished, or a strut is longer than they are.</returns>
    public static StockList? Make(FrameWish wish, Frame frame)
    {
        ArgumentNullException.ThrowIfNull(wish);
        if (wish.Stock is not { } stock)
        {
            return null;
        }

        var (bar, kerf, cutOff) = (stock.Bar.Millimetres, stock.Kerf.Millimetres, CutOff(wish));
        var sawn = Sawn(wish, frame);
        return StockCutting.Cut(sawn, cutOff, bar, kerf) is { } bars
            ? new StockList(bars, bar, kerf, StockCutting.FewestBars(sawn, cutOff, bar, kerf))
            : null;
    }

    /// <summary>Refuses bars that the longest strut does not fit, and tubes of no length.</summary>
    /// <inheritdoc cref="Make"/>
    public static ImmutableArray<Fault> Faults(FrameWish wish, Frame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        return wish?.Stock is { } stock && Make(wish, frame) is null
            ? [new Fault("frame.stock.bar", stock.Bar.Typed, FormattableString.Invariant($"bars of at least {Sawn(wish, frame).Struts.Max(strut => strut.LengthMm) - CutOff(wish):0.0} mm, the longest strut without its end allowances; and struts longer than these"))]
            : [];
    }

    private static Frame Sawn(FrameWish wish, Frame frame) => wish.Struts is { BendAtMm: > 0 } ? StrutFamily.Sawn(frame, wish) : frame;

    private static double CutOff(FrameWish wish) => 2 * (wish.Struts?.EndAllowanceMm ?? 0);
}
