using System.Collections.Immutable;

namespace CoverPattern.Lays.Models;

/// <summary>A small model of one cover to be cut from paper and glued.</summary>
/// <param name="Wish">The paper, and the scale that was taken.</param>
/// <param name="Sheets">Sheets of paper.</param>
/// <param name="Placements">Its pieces, in the order of their labels.</param>
/// <param name="LeftOut">Labels of pieces of the cover that it does not have: what is sewn onto the shell, such as panes, rings and patches.</param>
public sealed record PaperModel(ModelWish Wish, int Sheets, ImmutableArray<ModelPlacement> Placements, ImmutableArray<string> LeftOut)
{
    /// <summary>Height of the strip at the foot of a sheet that is kept for its ruler, millimetres.</summary>
    public const double FootMm = 12;
}
