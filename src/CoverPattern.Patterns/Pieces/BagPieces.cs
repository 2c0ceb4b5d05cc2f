using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes the bag of a cover: a body that is front, bottom, back and lid in one, and two ends sewn into it.</summary>
public static class BagPieces
{
    // Room beyond the folded cover (common practice, no source).
    private const double Room = 1.3;

    // A bag is twice as long as wide and high where nobody says (own choice).
    private const double LengthToWidth = 2;

    // Sizes are rounded up to whole centimetres, millimetres.
    private const double Step = 10;

    // How far the lid reaches down the front (own choice), millimetres; never more than the front is high.
    private const double LidLap = 150;

    // Turned edges (common practice, no source), millimetres.
    private const double TurnUnder = 20;

    /// <summary>What keeps a bag from being made: without sizes of its own the thickness of every cloth must be known.</summary>
    /// <param name="job">Bag and cloths are read.</param>
    /// <param name="added">All pieces beside panels and bag.</param>
    public static ImmutableArray<Fault> Faults(Job job, ImmutableArray<AddedPiece> added)
    {
        ArgumentNullException.ThrowIfNull(job);
        if (job.Bag is not { Size: null })
        {
            return [];
        }

        return
        [
            .. Packed(added).Select(piece => piece.Cloth).Prepend(job.Cloths[0].Name).Distinct(StringComparer.Ordinal)
                .Select(name => (name, at: job.Cloths.Select((cloth, i) => (cloth, i)).First(entry => string.Equals(entry.cloth.Name, name, StringComparison.Ordinal))))
                .Where(entry => entry.at.cloth.Thickness is null)
                .Select(entry => new Fault(
                    "bag",
                    FormattableString.Invariant($"a bag without sizes, of a cover whose cloth \"{entry.name}\" has no thickness"),
                    FormattableString.Invariant($"cloths[{entry.at.i}].thickness, from which the folded volume is told, or the bag's length, width and height"))),
        ];
    }

    /// <summary>The pieces "Y1" (body), "Y2" and "Y3" (right and left end, seen from the front); none where no bag is wished.</summary>
    /// <param name="job">Bag and cloths are read.</param>
    /// <param name="panels">Panels laid flat.</param>
    /// <param name="added">All other pieces.</param>
    public static ImmutableArray<AddedPiece> Make(Job job, ImmutableArray<Panel> panels, ImmutableArray<AddedPiece> added)
    {
        ArgumentNullException.ThrowIfNull(job);
        if (job.Bag is not { } wish)
        {
            return [];
        }

        var (length, width, height) = wish.Size is { } typed
            ? (typed.Length.Millimetres, typed.Width.Millimetres, typed.Height.Millimetres)
            : SizeFor(FoldedVolume(job, panels, added));
        return [Body(wish.Cloth, length, width, height), End(wish.Cloth, "Y2", ("YR1", "YR2", "YR3"), (width, height)), End(wish.Cloth, "Y3", ("YL3", "YL2", "YL1"), (width, height))];
    }

    /// <summary>Length, width and height of a bag for a folded cover, millimetres, rounded up to centimetres.</summary>
    /// <param name="folded">Volume of the folded cover, cubic millimetres.</param>
    internal static (double Length, double Width, double Height) SizeFor(double folded)
    {
        var width = Math.Cbrt(folded * Room / LengthToWidth);
        static double Rounded(double size) => Step * Math.Ceiling(size / Step);
        return (Rounded(LengthToWidth * width), Rounded(width), Rounded(width));
    }

    /// <summary>Area times thickness of all finished pieces, times the packing factor, cubic millimetres.</summary>
    internal static double FoldedVolume(Job job, ImmutableArray<Panel> panels, ImmutableArray<AddedPiece> added)
    {
        double ThicknessOf(string name) => job.Cloths.First(cloth => string.Equals(cloth.Name, name, StringComparison.Ordinal)).Thickness?.Millimetres ?? 0;
        var cover = panels.Sum(panel => Rings.SignedArea([.. panel.Outline.Select(edge => edge.From)])) * ThicknessOf(job.Cloths[0].Name);
        return job.Bag!.Packing * (cover + Packed(added).Sum(piece => Rings.SignedArea(piece.Corners) * ThicknessOf(piece.Cloth)));
    }

    /// <summary>What goes into the bag beside the panels; insulation does not.</summary>
    private static IEnumerable<AddedPiece> Packed(ImmutableArray<AddedPiece> added) => added.Where(piece => piece.Kind != PieceKind.Pad);

    /// <summary>From the front's upper edge down, along the bottom, up the back and over the top: that way runs the warp, +x; the bag's length lies across.</summary>
    private static AddedPiece Body(string cloth, double length, double width, double height)
    {
        var lap = Math.Min(LidLap, height);
        double[] ways = [0, height, height + width, (2 * height) + width, (2 * (height + width)) + lap];
        var right = ways.Take(4).Select((way, i) => (new Point2(way, 0), i < 3 ? AddedEdge.Plain("YR" + "123"[i], isSecond: false) : Turned("YE2")));
        var left = ways.Reverse().Take(4).Select((way, i) => (new Point2(way, length), i == 0 ? Turned("YE4") : AddedEdge.Plain("YL" + "321"[i - 1], isSecond: false)));
        return AddedPiece.Polygon("Y1", cloth, PieceKind.Bag, [(new Point2(0, length), Turned("YE1")), .. right, (new Point2(ways[4], 0), Turned("YE3")), .. left]) with
        {
            Folds = [.. ways[1..4].Select(way => new FoldLine(new Point2(way, 0), new Point2(way, length)))],
            Lines = [.. ways[1..3].SelectMany(way => new[] { Clip(new Point2(way, length), 1), Clip(new Point2(way, 0), -1) })],
        };
    }

    /// <summary>Where the body turns round a lower corner of an end its allowance is clipped.</summary>
    private static MarkLine Clip(Point2 corner, double outward)
    {
        const double shortOf = 2;
        return new MarkLine([corner + new Point2(0, outward * AddedEdge.PlainWidth), corner + new Point2(0, outward * shortOf)], InsideCorner.ClipPurpose);
    }

    private static AddedPiece End(string cloth, string label, (string Left, string Foot, string Right) arcs, (double Width, double Height) size) => AddedPiece.Polygon(
        label,
        cloth,
        PieceKind.Bag,
        [
            (new Point2(0, 0), AddedEdge.Plain(arcs.Foot, isSecond: true)),
            (new Point2(size.Width, 0), AddedEdge.Plain(arcs.Right, isSecond: true)),
            (new Point2(size.Width, size.Height), Turned(label + "e")),
            (new Point2(0, size.Height), AddedEdge.Plain(arcs.Left, isSecond: true)),
        ]);

    private static AddedEdge Turned(string arc) => AddedEdge.Turned(arc, TurnUnder);
}
