using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Lays;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>A piece where it lies; all in lay coordinates, millimetres.</summary>
internal sealed class LaidPiece
{
    private const double LargestText = 2.6;

    private readonly ImmutableArray<Point2> mainFace;
    private readonly RigidMap map;

    private LaidPiece(Placement placement, Pattern pattern)
    {
        Placement = placement;
        Pattern = pattern;
        map = RigidMap.FromDegrees(placement.TurnDegrees, new Point2(placement.X, placement.Y), placement.Mirrored);
        var face = map.Apply(RoundShapes.NameRoom(pattern));
        mainFace = placement.Mirrored ? [.. face.Reverse()] : face;
        Box = Rings.Bounds(map.Apply(pattern.CutLine));
    }

    public Placement Placement { get; }

    public Pattern Pattern { get; }

    public string Label => Placement.Name;

    /// <summary>The upright rectangle round its cut line.</summary>
    public Box2 Box { get; }

    public double Low => Box.Low.X;

    public double High => Box.High.X;

    public Point2 FirstCorner => Corner(0);

    /// <summary>Middle of the free circle in which its label may stand.</summary>
    public Point2 LabelSpot => map.Apply(Pattern.LabelSpot);

    public static ImmutableArray<LaidPiece> Of(Lay lay, PieceSet set)
    {
        var patterns = set.Patterns.ToDictionary(pattern => pattern.Id, StringComparer.Ordinal);
        var byPiece = set.Pieces.ToDictionary(piece => piece.Label, piece => patterns[piece.Pattern], StringComparer.Ordinal);
        return [.. lay.Placements.Select(placement => new LaidPiece(placement, byPiece[placement.Piece]))];
    }

    /// <summary>A corner of the sew line.</summary>
    public Point2 Corner(int index) => map.Apply(Pattern.SewLine[index]);

    /// <summary>Its grain line.</summary>
    /// <param name="ratio">Millimetres on paper for one of cloth.</param>
    public IEnumerable<FigureLine> Grain(double ratio) =>
        SmallPattern.Arrow(ratio * map.Apply(Pattern.Grain.From), ratio * map.Apply(Pattern.Grain.To));

    /// <summary>Its label in its main face, beside the grain line.</summary>
    /// <param name="ratio">Millimetres on paper for one of cloth.</param>
    /// <param name="least">Least height of capitals, millimetres on paper.</param>
    /// <param name="limits">Where it must stand on paper.</param>
    /// <returns>Null when it does not fit.</returns>
    public FigureText? Name(double ratio, double least, params TextLimit[] limits) => Write(Label, ratio, least, limits);

    /// <summary>A short text that stands for its label, as <see cref="Name"/> is placed.</summary>
    public FigureText? Key(string key, double ratio, double least, params TextLimit[] limits) => Write(key, ratio, least, limits);

    private FigureText? Write(string words, double ratio, double least, TextLimit[] limits)
    {
        var face = ImmutableArray.CreateRange(mainFace, point => ratio * point);
        var text = new FigureText("piece", words, default, LargestText, 0, TextAnchor.Middle);
        var (from, to) = (ratio * map.Apply(Pattern.Grain.From), ratio * map.Apply(Pattern.Grain.To));
        return from == to ? TextRoom.Fit(face, text, least, limits) : TextLimit.Beside(face, text, least, [TextLimit.Left(from, to), .. limits]);
    }
}
