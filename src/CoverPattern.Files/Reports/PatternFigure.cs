using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>Draws one pattern with everything a maker needs to set it out: lines, notches, grain, corners by number, lengths along the sides.</summary>
internal static class PatternFigure
{
    /// <summary>Width and height on paper that the cut line may take, millimetres; across the page, beside its facts, where many patterns share a page.</summary>
    internal static readonly Point2 BroadRoom = new(140, 60);
    internal static readonly Point2 Room = new(66, 56);
    internal static readonly Point2 SmallRoom = new(56, 28);

    private const double SideText = 2.1;
    private const double CornerText = 2;
    private const double SideGap = 0.6;
    private const double Margin = 2;

    // How far a text may be moved off its side in search of a free place, and in what steps, millimetres on paper.
    private const double FarthestMove = 40;
    private const double FarthestNumber = 12;
    private const double Step = 0.8;

    private static readonly double[] Scales = [1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100];
    private static readonly double[] NameHeights = [4, 3.2, 2.6, 2, 1.6, 1.3];
    private static readonly double[] HoleHeights = [SideText, 1.7, 1.4];
    private static readonly int[] CornerTurns = [0, 15, -15, 30, -30, 45, -45, 70, -70];
    private static readonly double[] AlongSide = [0.5, 0.4, 0.6, 0.3, 0.7];

    /// <summary>The first round scale at which a pattern fits.</summary>
    public static double Scale(Pattern pattern, Point2 room)
    {
        var box = Rings.Bounds(pattern.CutLine);
        return Scales.First(scale => scale == Scales[^1] || (box.Width <= room.X * scale && box.Height <= room.Y * scale));
    }

    /// <param name="pattern">The pattern, seen from outside.</param>
    /// <param name="sides">What is printed along its edges, one text an edge.</param>
    /// <param name="scale">One to how many.</param>
    /// <param name="ruler">How lengths are printed.</param>
    public static Figure Draw(Pattern pattern, ImmutableArray<string> sides, double scale, Ruler ruler)
    {
        var small = new SmallPattern(pattern, 1 / scale);
        var taken = new TakenPlaces();
        foreach (var line in small.Lines)
        {
            taken.TakeSteps(line);
        }

        var (texts, leaders, written) = (new List<FigureText>(), new List<FigureLine>(), new TakenPlaces());
        Add(texts, FreeText.First(Names(pattern, small), taken));
        foreach (var cutout in pattern.Cutouts)
        {
            ImmutableArray<Point2> hole = [.. cutout.CutLine.Reverse().Select(small.Apply)];
            var words = $"{cutout.Purpose} {RoundShapes.ShortSize(cutout.Rim, ruler)}";
            Add(texts, FreeText.First(HoleHeights.SelectMany(height => FreeText.Inside(hole, new FigureText("side", words, default, height, 0, TextAnchor.Middle))), taken));
        }

        // Short sides first: they have the fewest places.
        var beside = new (FigureText? Text, ImmutableArray<FigureLine> Leader)[pattern.Runs.Length];
        foreach (var i in Enumerable.Range(0, pattern.Runs.Length).OrderBy(i => Math.Round(pattern.Runs[i].LengthMm)))
        {
            beside[i] = Side(small, i, sides[i], (taken, written));
        }

        foreach (var (text, leader) in beside)
        {
            Add(texts, text);
            leaders.AddRange(leader);
        }

        foreach (var run in pattern.Runs.Where(run => !run.IsClosed))
        {
            Add(texts, FreeText.First(Corners(small, run.From), taken));
        }

        var reach = Rings.Bounds([.. small.CutLine, .. texts.SelectMany(text => text.Box())]);
        var margin = new Point2(Margin, Margin);
        return new Figure($"Pattern {pattern.Id}", new Box2(reach.Low - margin, reach.High + margin), [.. small.Lines, .. leaders], [.. texts]);
    }

    private static void Add(List<FigureText> texts, FigureText? text)
    {
        if (text is not null)
        {
            texts.Add(text);
        }
    }

    /// <summary>Places for the pattern's name, largest first: in its main face, then anywhere on the piece.</summary>
    private static IEnumerable<FigureText> Names(Pattern pattern, SmallPattern small) =>
        from height in NameHeights
        from ring in new[] { small.MainFace, small.SewLine }
        from place in FreeText.Inside(ring, new FigureText("name", pattern.Id, default, height, 0, TextAnchor.Middle))
        select place;

    /// <summary>The length along a side, outside it, as near as free room allows; none where there is no room, since the table has it too.</summary>
    /// <param name="small">The pattern on paper.</param>
    /// <param name="run">Index of the side.</param>
    /// <param name="text">What is written.</param>
    /// <param name="taken">All places taken, and of these the texts beside sides, which no leader crosses where another place is free.</param>
    private static (FigureText? Text, ImmutableArray<FigureLine> Leader) Side(SmallPattern small, int run, string text, (TakenPlaces All, TakenPlaces Texts) taken)
    {
        var (from, to, outward, allowance) = small.Side(run);
        var near = allowance + SmallPattern.NotchBeyond + SideGap + (SideText / 2);
        var first = new FigureText("side", text, Point2.Between(from, to, 0.5) + (near * outward), SideText, TextRoom.Readable(to - from), TextAnchor.Middle);
        var free = Tries(small, run, first, near).Where(entry => FreeText.IsFree(entry.Place, taken.All)).Select(entry => (entry.Place, Leader: Leader(entry.At, entry.Place, near))).ToArray();
        var (place, leader) = free.Where(entry => entry.Leader.All(line => taken.Texts.IsFree(line.Points))).Concat(free).FirstOrDefault();
        if (place is null)
        {
            return (null, []);
        }

        taken.All.Take(place.Box());
        taken.All.TakeLines(leader);
        taken.Texts.Take(place.Box());
        return (place, leader);
    }

    /// <summary>From the side to a text that does not stand beside it.</summary>
    private static ImmutableArray<FigureLine> Leader(Point2 at, FigureText place, double near) =>
        Point2.Distance(at, place.At) > near + (2 * Step) || place.Anchor != TextAnchor.Middle
            ? [new FigureLine("leader", [at, place.At - (0.5 * (place.At - at).Unit())], IsClosed: false)]
            : [];

    /// <summary>Places to try: along the side, then square to it, then farther out. With each the point of the side it speaks of.</summary>
    private static IEnumerable<(Point2 At, FigureText Place)> Tries(SmallPattern small, int run, FigureText text, double near)
    {
        var (from, to, outward, _) = small.Side(run);
        var anchor = outward.X > -1e-9 ? TextAnchor.Start : TextAnchor.End;
        for (var move = 0.0; move <= FarthestMove; move += Step)
        {
            foreach (var at in AlongSide.Select(part => Point2.Between(from, to, part)))
            {
                yield return (at, text with { At = at + ((near + move) * outward) });
            }

            var middle = Point2.Between(from, to, 0.5);
            yield return (middle, text with { At = middle + ((near + move) * outward), TurnDegrees = 0, Anchor = anchor });
            yield return (middle, text with { At = middle + ((near + move) * outward), TurnDegrees = TextRoom.Readable(outward), Anchor = anchor });
        }
    }

    /// <summary>Places for the number of a corner, inside it.</summary>
    private static IEnumerable<FigureText> Corners(SmallPattern small, int corner)
    {
        var ring = small.SewLine;
        var at = ring[corner];
        var (back, on) = ((ring[(corner + ring.Length - 1) % ring.Length] - at).Unit(), (ring[(corner + 1) % ring.Length] - at).Unit());
        // Toward the inside also where the corner is almost straight or turns inward.
        var inward = (on - back).Unit().QuarterTurned();
        var number = new FigureText("corner", Printed.Count(corner + 1), default, CornerText, 0, TextAnchor.Middle);
        for (var move = CornerText; move < FarthestNumber; move += Step / 2)
        {
            foreach (var turn in CornerTurns)
            {
                yield return number with { At = at + (move * RigidMap.FromDegrees(turn, default, mirrored: false).Apply(inward)) };
            }
        }
    }
}
