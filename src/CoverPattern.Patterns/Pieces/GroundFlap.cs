using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes the strips of a ground flap, one along each part of the finished edge, and the gussets between them.</summary>
/// <remarks>
/// A strip is as long as its part of the edge and lies flat on the ground, so where the edge turns by an angle two strips part by it on one side and lie over
/// each other by it on the other. Parting ones get a gusset, a triangle of that angle; others are hemmed and lap, to a line that is drawn.
/// </remarks>
public static class GroundFlap
{
    /// <summary>Purpose of the line to which the neighbour's side comes where strips lap.</summary>
    public const string LapPurpose = "neighbour's edge";

    // Where the edge turns by less than this strips are sewn to each other (own choice), radians: 5 mm on 300 mm.
    private const double Straight = Math.PI / 180;

    // Turned edges (common practice, no source), millimetres.
    private const double TurnUnder = 15;

    /// <summary>The pieces: "N001" and so on along the edge, gussets "N001g" at the right end of a strip; none where no flap is wished.</summary>
    /// <param name="job">Its ground flap is read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The surface cut up.</param>
    public static ImmutableArray<AddedPiece> Make(Job job, Shell shell, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(cut);
        if (job.GroundFlap is not { } wish)
        {
            return [];
        }

        var edges = Edges(shell, cut);
        return [.. edges.SelectMany(edge => Pieces(wish, edge, edges))];
    }

    private static IEnumerable<AddedPiece> Pieces(GroundFlapWish wish, HemPart edge, ImmutableArray<HemPart> edges)
    {
        var (length, width) = (edge.LengthMm, wish.Width.Millimetres);
        var before = edges.FirstOrDefault(other => other.Next == edge.Number);
        var (atRight, atLeft) = (JointAt(wish, edge, edges), before is null ? Joint.None : JointAt(wish, before, edges));
        AddedEdge right = Side(edge.Number, 'r', atRight, isSecond: false), left = before is null ? Turned(edge.Number + "s") : Side(before.Number, 'l', atLeft, isSecond: true);
        yield return AddedPiece.Polygon(edge.Number, wish.Cloth, PieceKind.GroundFlap,
        [
            (new Point2(0, 0), Turned(edge.Number + "e")),
            (new Point2(length, 0), right),
            (new Point2(length, width), new AddedEdge(edge.Arc, IsSecond: true, EdgeRole.Turned, TurnUnder)),
            (new Point2(0, width), left),
        ]) with
        {
            Lines = atRight == Joint.Lapped && width * Math.Tan(Math.Min(1, Math.Abs(edge.Turn))) < length ? [new MarkLine([new Point2(length, width), new Point2(length - (width * Math.Tan(Math.Abs(edge.Turn))), 0)], LapPurpose)] : [],
        };
        if (atRight == Joint.Gusset)
        {
            var (sin, cos) = Math.SinCos(edge.Turn / 2);
            var (half, height) = (width * Math.Abs(sin), width * cos);
            yield return AddedPiece.Polygon(edge.Number + "g", wish.Cloth, PieceKind.GroundFlap,
            [
                (new Point2(0, 0), Turned(edge.Number + "ge")),
                (new Point2(2 * half, 0), AddedEdge.Plain(edge.Number + "l", isSecond: false)),
                (new Point2(half, height), AddedEdge.Plain(edge.Number + "r", isSecond: true)),
            ]);
        }
    }

    /// <summary>A strip's side: sewn to the neighbour or to the gusset between, or hemmed.</summary>
    private static AddedEdge Side(string corner, char side, Joint joint, bool isSecond) => joint switch
    {
        Joint.Sewn => AddedEdge.Plain(corner + "r", isSecond),
        Joint.Gusset => AddedEdge.Plain(corner + side, isSecond),
        _ => Turned(corner + side),
    };

    private static Joint JointAt(GroundFlapWish wish, HemPart edge, ImmutableArray<HemPart> edges)
    {
        if (edge.Next.Length == 0 || edges.All(other => other.Number != edge.Next))
        {
            return Joint.None;
        }

        var opens = wish.IsInward ? -edge.Turn : edge.Turn;
        return Math.Abs(edge.Turn) <= Straight ? Joint.Sewn : opens > 0 ? Joint.Gusset : Joint.Lapped;
    }

    /// <summary>The parts of the finished edge, counter-clockwise seen from above as the cover's own edges run, each with the one behind it.</summary>
    private static ImmutableArray<HemPart> Edges(Shell shell, Subdivision cut)
    {
        var hems = Enumerable.Range(0, cut.Arcs.Length).Where(arc => cut.Arcs[arc].Role == EdgeRole.Hem).ToArray();
        var digits = Math.Max(3, hems.Length.ToString(CultureInfo.InvariantCulture).Length);
        var numbers = hems.Select((arc, i) => (arc, Number: "N" + (i + 1).ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0'))).ToDictionary(entry => entry.arc, entry => entry.Number);

        // Round a corner of the edge the arcs stand counter-clockwise from edge to edge: the first leaves it with cloth on its left, the last comes to it.
        var next = CrossingFinder.Find(shell, cut).Where(crossing => crossing.Arcs.Length > 1 && numbers.ContainsKey(crossing.Arcs[0]) && numbers.ContainsKey(crossing.Arcs[^1]) && crossing.Arcs[0] != crossing.Arcs[^1])
            .ToDictionary(crossing => crossing.Arcs[^1], crossing => crossing.Arcs[0]);
        return [.. hems.Select(arc => new HemPart(numbers[arc], cut.Arcs[arc].Label, cut.Arcs[arc].LengthMm, next.TryGetValue(arc, out var after) ? numbers[after] : string.Empty, next.TryGetValue(arc, out after) ? Turn(shell, cut, arc, after) : 0))];
    }

    /// <summary>By how much the edge turns on the ground from one part to the next, counter-clockwise, radians.</summary>
    private static double Turn(Shell shell, Subdivision cut, int arc, int after)
    {
        var (here, there) = (Direction(shell, cut, arc), Direction(shell, cut, after));
        return Math.Atan2(Point2.Cross(here, there), Point2.Dot(here, there));
    }

    private static Point2 Direction(Shell shell, Subdivision cut, int arc)
    {
        var side = cut.Arcs[arc].First;
        var patch = cut.Patches[side.Patch];
        var plane = FacePlane.Of(shell, patch.Face);
        return plane.ToSpace(patch.Corners[(side.Edge + 1) % patch.Corners.Length]).Plan - plane.ToSpace(patch.Corners[side.Edge]).Plan;
    }

    private static AddedEdge Turned(string arc) => AddedEdge.Turned(arc, TurnUnder);

    /// <summary>How two strips meet.</summary>
    private enum Joint
    {
        None,
        Sewn,
        Gusset,
        Lapped,
    }

    /// <summary>A part of the finished edge.</summary>
    /// <param name="Number">Label of its strip.</param>
    /// <param name="Arc">Label of the edge.</param>
    /// <param name="LengthMm">Its length.</param>
    /// <param name="Next">Label of the strip behind it; empty where the edge ends.</param>
    /// <param name="Turn">By how much the edge turns there, radians.</param>
    private sealed record HemPart(string Number, string Arc, double LengthMm, string Next, double Turn);
}
