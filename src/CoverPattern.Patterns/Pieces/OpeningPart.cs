using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Pieces;

/// <summary>One layer of one cloth that fills an opening.</summary>
/// <param name="Letter">What its labels end in: "f" for a flap, "p" for a sheet, "s" for a screen.</param>
/// <param name="Cloth">Name of its cloth.</param>
/// <param name="Kind">What it is.</param>
/// <param name="IsFirst">Whether it is the partner of the cover's rim; the others are made for the same line.</param>
internal sealed record OpeningPart(string Letter, string Cloth, PieceKind Kind, bool IsFirst)
{
    /// <summary>Whether it is sewn in all round though another part opens.</summary>
    internal bool IsFixed { get; init; }

    /// <summary>Whether its edges are turned back or under; sheet and mesh are bound, or lie flat.</summary>
    internal bool IsTurned => Kind == PieceKind.Flap;

    /// <summary>The parts of an opening, the first the partner of its rim.</summary>
    internal static ImmutableArray<OpeningPart> Of(OpeningWish wish)
    {
        (string Letter, string? Cloth, PieceKind Kind)[] all = [("f", wish.Flap, PieceKind.Flap), ("p", wish.Sheet, PieceKind.Pane), ("s", wish.Screen, PieceKind.Screen)];
        if (wish is { Kind: OpeningKind.HighVent, Flap: { } flap, Screen: { } screen })
        {
            return [new OpeningPart("s", screen, PieceKind.Screen, IsFirst: true) { IsFixed = true }, new OpeningPart("f", flap, PieceKind.Flap, IsFirst: false)];
        }

        return [.. all.Where(part => part.Cloth is not null).Select((part, i) => new OpeningPart(part.Letter, part.Cloth!, part.Kind, i == 0))];
    }
}
