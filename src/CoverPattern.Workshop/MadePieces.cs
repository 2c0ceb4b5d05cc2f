using System.Collections.Immutable;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Workshop;

/// <summary>All pieces of a job, and the stages' results on the way to them.</summary>
/// <param name="Frame">The frame.</param>
/// <param name="Shell">The cover before anything is cut.</param>
/// <param name="Panels">What is cut as one piece.</param>
/// <param name="Plan">Seams and folds.</param>
/// <param name="Openings">Openings, slits and pipes as laid.</param>
/// <param name="Cut">The cover cut up.</param>
/// <param name="Set">The pieces, those of liner and roof screen too, and what is listed beside cloth.</param>
public sealed record MadePieces(Frame Frame, Shell Shell, PanelPlan Panels, SeamPlan Plan, OpeningLaying Openings, Subdivision Cut, PieceSet Set)
{
    /// <summary>Cloth on cloth where seams meet.</summary>
    public required ImmutableArray<CrossingBulk> Bulks { get; init; }

    /// <summary>The inner shell; null without one.</summary>
    public LinerMaking? Liner { get; init; }

    /// <summary>What finishing the pieces tells.</summary>
    public required ImmutableArray<Notice> Notices { get; init; }
}
