using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Puts a seam's notches on one of its sides.</summary>
internal static class NotchMaker
{
    // A slit takes at most this share of the allowance and this length (common practice, no source): what is left carries the seam.
    internal const double LargestShare = 0.25;
    private const double LongestSlit = 4;
    private const double TickLength = 8;

    /// <summary>The notches of one run.</summary>
    /// <param name="edge">The run's sew edge.</param>
    /// <param name="run">Index of the run.</param>
    /// <param name="side">Which side of the seam it is.</param>
    /// <param name="makeUp">Says whether its edges may be slit.</param>
    /// <param name="fromOver">Distances from the start of the over side.</param>
    internal static ImmutableArray<Notch> Make(SewEdge edge, int run, EdgeSide side, MakeUp makeUp, ImmutableArray<double> fromOver)
    {
        var length = Point2.Distance(edge.From, edge.To);
        var distances = side == EdgeSide.Over ? fromOver : [.. fromOver.Select(at => length - at).Order()];
        return [.. distances.Select(at => MakeOne(edge, run, makeUp, at))];
    }

    private static Notch MakeOne(SewEdge edge, int run, MakeUp makeUp, double at)
    {
        var onSewLine = edge.From + (at * edge.Along);
        var outer = onSewLine + (edge.Allowance * edge.Outward);
        // An edge without allowance has nothing to slit but the piece.
        var form = makeUp.IsTicked || edge.Allowance <= 0 ? NotchForm.Tick : NotchForm.Slit;
        var depth = form == NotchForm.Tick ? TickLength : Math.Min(LongestSlit, LargestShare * edge.Allowance);
        return new Notch(run, at, form, Grid.Snap(onSewLine), Grid.Snap(outer), Grid.Snap(outer - (depth * edge.Outward)));
    }
}
