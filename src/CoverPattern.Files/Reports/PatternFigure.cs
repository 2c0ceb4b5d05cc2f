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
    /// <summary>Width and height on paper that the cut line may take, millimetres; the second where many patterns share a page.</summary>
    internal static readonly Point2 Room = new(84, 72);
    internal static readonly Point2 SmallRoom = new(56, 28);

    private const double SideText = 2.1;
    private const double CornerText = 2;
    private const double NameText = 4;
    private const double SideGap = 0.6;
    private const double Margin = 2;

    // How far a text may be moved off its side in search of a free place, and in what steps, millimetres on paper.
    private const double FarthestMove = 24;
    private const double Step = 0.8;

    private static readonly double[] Scales = [1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100];
    private static readonly double[] AlongSide = [0.5, 0.4, 0.6, 0.3, 0.7];

    /// <summary>The first round scale at which every pattern fits.</summary>
    public static double Scale(ImmutableArray<Pattern> patterns, Point2 room)
    {
        var boxes = patterns.Select(pattern => Rings.Bounds(pattern.CutLine)).ToArray();
        return Scales.First(scale => scale == Scales[^1] || boxes.All(box => box.Width <= room.X * scale && box.Height <= room.Y * scale));
    }

    /// <param name="pattern">The pattern, seen from outside.</param>
    /// <param name="sides">What is printed along its edges, one text an edge.</param>
    /// <param name="scale">One to how many.</param>
    /// <param name="ruler">How lengths are printed.</param>
    public static Figure Draw(Pattern pattern, ImmutableArray<string> sides, double scale, Ruler ruler)
    {
        var small = new SmallPattern(pattern, 1 / scale);
        var taken = new TakenPlaces();
        taken.TakeEdges(small.CutLine);
        taken.TakeEdges(small.SewLine);
        foreach (var line in small.Inside.Concat(small.Notches.Select(notch => notch.Points)))
        {
            taken.Take(line);
        }

        var texts = new List<FigureText>();
        var leaders = new List<FigureLine>();
        Add(texts, taken, Name(pattern, small));
        for (var i = 0; i < pattern.Runs.Length; i++)
        {
            var (text, leader) = Side(small, i, sides[i], taken);
            Add(texts, taken, text);
            leaders.AddRange(leader);
        }

        foreach (var run in pattern.Runs.Where(run => !run.IsClosed))
        {
            Add(texts, taken, Corner(small, run.From, taken));
        }

        foreach (var cutout in pattern.Cutouts)
        {
            var place = small.Apply(Rings.Bounds(cutout.Rim).Centre);
            Add(texts, taken, new FigureText("side", $"{cutout.Purpose} {RoundShapes.Diameter(cutout.Rim, ruler)}", place, SideText, 0, TextAnchor.Middle));
        }

        var reach = Rings.Bounds([.. small.CutLine, .. texts.SelectMany(text => text.Box())]);
        var margin = new Point2(Margin, Margin);
        return new Figure($"Pattern {pattern.Id}", new Box2(reach.Low - margin, reach.High + margin), [.. small.Lines, .. leaders], [.. texts]);
    }

    private static void Add(List<FigureText> texts, TakenPlaces taken, FigureText? text)
    {
        if (text is not null)
        {
            texts.Add(text);
            taken.Take(text.Box());
        }
    }

    /// <summary>The pattern's name in its main face, above or below the grain line.</summary>
    private static FigureText? Name(Pattern pattern, SmallPattern small)
    {
        var wish = new FigureText("name", pattern.Id, default, NameText, 0, TextAnchor.Middle);
        return TextLimit.Beside(small.MainFace, wish, 1, [new TextLimit(small.Apply(pattern.Grain.From), new Point2(0, 1))]);
    }

    /// <summary>The length along a side, outside it, as near as free room allows.</summary>
    private static (FigureText Text, ImmutableArray<FigureLine> Leader) Side(SmallPattern small, int run, string text, TakenPlaces taken)
    {
        var (from, to, outward, allowance) = small.Side(run);
        var near = allowance + SmallPattern.NotchBeyond + SideGap + (SideText / 2);
        var first = new FigureText("side", text, Point2.Between(from, to, 0.5) + (near * outward), SideText, TextRoom.Readable(to - from), TextAnchor.Middle);
        foreach (var (at, place) in Tries(small, run, first, near))
        {
            if (taken.IsFree(place.Box()))
            {
                var isFar = Point2.Distance(at, place.At) > near + (2 * Step) || place.Anchor != TextAnchor.Middle;
                return (place, isFar ? [new FigureLine("leader", [at, place.At - (0.5 * (place.At - at).Unit())], IsClosed: false)] : []);
            }
        }

        return (first, []);
    }

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

    /// <summary>The number of a corner, inside it.</summary>
    private static FigureText? Corner(SmallPattern small, int corner, TakenPlaces taken)
    {
        var ring = small.SewLine;
        var at = ring[corner];
        var (back, on) = ((ring[(corner + ring.Length - 1) % ring.Length] - at).Unit(), (ring[(corner + 1) % ring.Length] - at).Unit());
        // Toward the inside also where the corner is almost straight or turns inward.
        var inward = (on - back).Unit().QuarterTurned();
        var number = new FigureText("corner", Printed.Count(corner + 1), default, CornerText, 0, TextAnchor.Middle);
        for (var move = CornerText; move < FarthestMove; move += Step / 2)
        {
            foreach (var turn in new[] { 0, 15, -15, 30, -30, 45, -45 })
            {
                var direction = RigidMap.FromDegrees(turn, default, mirrored: false).Apply(inward);
                var place = number with { At = at + (move * direction) };
                if (taken.IsFree(place.Box()))
                {
                    return place;
                }
            }
        }

        return null;
    }
}
