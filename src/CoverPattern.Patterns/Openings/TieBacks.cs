using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Where a flap is sewn that opens, and the tapes that hold it rolled: along a side of the rim.</summary>
internal static class TieBacks
{
    /// <summary>Purpose of their marks.</summary>
    internal const string Purpose = "tie-back";

    // Largest distance between two, and how far from the ends of their side (own choices), millimetres.
    private const double Spacing = 500;
    private const double FromEnd = 60;

    /// <summary>Places along the rim, rising; none for a flap that comes off whole.</summary>
    internal static IEnumerable<double> Along(LaidOpening opening) => opening.Wish.Flap is null ? [] : opening.Sides.Where(side => Bears(opening, side.Side)).SelectMany(side => Evenly(side.From, side.To));

    /// <summary>How much cloth is rolled: the height of a flap that rolls up, the width of a leaf that is drawn aside, millimetres.</summary>
    internal static double RolledLength(LaidOpening opening)
    {
        double LengthOf(RimSide which) => opening.Sides.Where(side => side.Side == which).Sum(side => side.To - side.From);
        return opening.Wish.Opens switch
        {
            OpensAt.Both => Math.Max(LengthOf(RimSide.Right), LengthOf(RimSide.Left)),
            OpensAt.Middle => LengthOf(RimSide.Head) / 2,
            _ => LengthOf(RimSide.Head),
        };
    }

    /// <summary>The straight pieces of the rim, in space, along which the flap is sewn and turns; none for one that comes off whole.</summary>
    internal static IEnumerable<(Point3 From, Point3 To)> SewnIn(Shell shell, LaidOpening opening)
    {
        var line = opening.Line;
        Point3 InSpace(int i) => FacePlane.Of(shell, opening.Region.Rim[line.Where[i].Stretch].Face).ToSpace(opening.Region.Rim[line.Where[i].Stretch].Points[line.Where[i].Index]);
        return opening.Wish.Flap is null ? [] :
            from side in opening.Sides
            where Bears(opening, side.Side)
            from i in Enumerable.Range(0, line.Points.Length - 1)
            where line.At[i] < side.To && line.At[i + 1] > side.From
            select (InSpace(i), InSpace(i + 1));
    }

    private static bool Bears(LaidOpening opening, RimSide side) => opening.Wish.Opens switch
    {
        OpensAt.Both => side == RimSide.Head,
        OpensAt.Middle => side is RimSide.Right or RimSide.Left,
        OpensAt.Right => side == RimSide.Left,
        OpensAt.Left => side == RimSide.Right,
        _ => false,
    };

    private static IEnumerable<double> Evenly(double from, double to)
    {
        var room = to - from - (2 * FromEnd);
        var bays = Math.Max(1, (int)Math.Ceiling(room / Spacing));
        return room <= 0 ? [(from + to) / 2] : Enumerable.Range(0, bays + 1).Select(i => from + FromEnd + (room * i / bays));
    }
}
