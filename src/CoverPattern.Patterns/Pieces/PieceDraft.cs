using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A piece turned to its grain, before it is known which pieces are equal: a panel of the shell, or an added piece.</summary>
/// <param name="Label">Label of the piece on the first cover.</param>
/// <param name="Cloth">Name of its cloth.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Corners">Corners of the sew line, grain along +x, up the cover along +y, unsnapped millimetres.</param>
/// <param name="Runs">Edges in order, without gap, the first from the first corner.</param>
internal sealed record PieceDraft(
    string Label,
    string Cloth,
    PieceKind Kind,
    ImmutableArray<Point2> Corners,
    ImmutableArray<DraftRun> Runs)
{
    /// <summary>Rings of the shell's faces in the same coordinates, main one first; none in an added piece.</summary>
    internal ImmutableArray<ImmutableArray<Point2>> Faces { get; init; } = [];

    /// <summary>Their labels.</summary>
    internal ImmutableArray<string> FaceLabels { get; init; } = [];

    /// <summary>Fold lines in the same coordinates.</summary>
    internal ImmutableArray<FoldLine> Folds { get; init; } = [];

    /// <summary>The upper line of a splash band that lies on the piece, in the same coordinates.</summary>
    internal ImmutableArray<FoldLine> SplashLines { get; init; } = [];

    /// <summary>Lines drawn on it, in the same coordinates; a draft with any equals no other.</summary>
    internal ImmutableArray<MarkLine> Drawn { get; init; } = [];

    /// <summary>Holes.</summary>
    internal ImmutableArray<DraftCutout> Cutouts { get; init; } = [];

    /// <summary>The edges round the outline, then those of the holes: the order in which a pattern counts its runs.</summary>
    internal ImmutableArray<DraftRun> AllRuns => [.. Runs, .. Cutouts.Select(cutout => cutout.Run)];

    /// <summary>Index of the corner at which a run of the outline begins.</summary>
    internal int Start(int run) => Runs.Take(run).Sum(before => before.Steps);

    /// <summary>Index of the corner at which a run of the outline ends.</summary>
    internal int End(int run) => (Start(run) + Runs[run].Steps) % Corners.Length;
}
