using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Lays.Sheets;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays.Models;

/// <summary>Plans a paper model of one cover: net outlines with tabs, put on sheets.</summary>
public static class ModelPlanner
{
    // Scales tried where none was asked for; the first is what a maker folds up in an hour.
    private static readonly ImmutableArray<double> Scales = [10, 12.5, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200];

    /// <summary>Plans the model of the first cover.</summary>
    /// <param name="set">All pieces of cloth, at least one.</param>
    /// <param name="wish">Scale and paper.</param>
    /// <param name="cancel">Looked at before each piece is laid.</param>
    /// <exception cref="ModelPieceTooLargeException">A piece does not go on a sheet.</exception>
    /// <exception cref="OperationCanceledException">The work was to end.</exception>
    public static PaperModel Plan(PieceSet set, ModelWish wish, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(wish);

        var (shell, leftOut) = ModelPieces.OfFirstCover(set);
        var scale = wish.Scale ?? Scales.FirstOrDefault(scale => ModelPieces.Make(set, shell, scale).All(piece => Excess(piece, wish) <= 1), Scales[^1]);
        var pieces = ModelPieces.Make(set, shell, scale);
        if (pieces.FirstOrDefault(piece => Excess(piece, wish) > 1) is { } large)
        {
            throw new ModelPieceTooLargeException(large.Label, scale, Math.Ceiling(scale * pieces.Max(piece => Excess(piece, wish))));
        }

        var (sheets, places) = Pack(pieces, Room(wish), cancel);
        var corner = new Point2(wish.MarginMm, wish.MarginMm + PaperModel.FootMm);
        return new PaperModel(
            wish with { Scale = scale },
            sheets,
            [.. pieces.Select((piece, i) => new ModelPlacement(piece, places[i].Sheet + 1, places[i].Map with { Shift = places[i].Map.Shift + corner }))],
            leftOut);
    }

    private static SheetSize Room(ModelWish wish) =>
        new(Math.Floor(wish.Sheet.WidthMm - (2 * wish.MarginMm)), Math.Floor(wish.Sheet.HeightMm - (2 * wish.MarginMm) - PaperModel.FootMm));

    private static ImmutableArray<ImmutableArray<Point2>> Rings(ModelPiece piece) => [piece.Outline, .. piece.Tabs.Select(tab => tab.Shape)];

    /// <summary>How many times too large a piece is in the way in which it fits best; at most 1 when it fits.</summary>
    private static double Excess(ModelPiece piece, ModelWish wish)
    {
        var room = Room(wish);
        return SheetPacker.Sizes(piece.Outline, Rings(piece)).Min(size => Math.Max(size.Width / room.WidthMm, size.Height / room.HeightMm));
    }

    private static (int Sheets, (int Sheet, RigidMap Map)[] Places) Pack(ImmutableArray<ModelPiece> pieces, SheetSize room, CancellationToken cancel)
    {
        var packer = new SheetPacker((int)room.WidthMm, (int)room.HeightMm);
        var turns = new Dictionary<string, ImmutableArray<SheetPacker.Turn>>(StringComparer.Ordinal);
        var places = new (int Sheet, RigidMap Map)[pieces.Length];
        var names = pieces.Select(Name).ToArray();
        foreach (var i in Enumerable.Range(0, pieces.Length).OrderByDescending(i => Math.Abs(Geometry.Rings.SignedArea(pieces[i].Outline))).ThenBy(i => names[i], StringComparer.Ordinal).ThenBy(i => i))
        {
            cancel.ThrowIfCancellationRequested();
            if (!turns.TryGetValue(names[i], out var ways))
            {
                ways = SheetPacker.Turns(pieces[i].Outline, Rings(pieces[i]));
                turns.Add(names[i], ways);
            }

            places[i] = packer.Place(names[i], ways) ?? throw new InvalidOperationException($"{pieces[i].Label} was found to fit a sheet and does not.");
        }

        return (packer.Count, places);
    }

    /// <summary>Equal for equal shapes only.</summary>
    private static string Name(ModelPiece piece) => string.Join(';', Rings(piece).SelectMany(ring => ring).Select(point => FormattableString.Invariant($"{point.X:F4} {point.Y:F4}")));
}
