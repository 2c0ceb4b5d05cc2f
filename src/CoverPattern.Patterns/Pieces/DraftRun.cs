using System.Collections.Immutable;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>An edge of a draft.</summary>
/// <param name="At">The line on the cover that it lies on, and which side of it.</param>
/// <param name="Class">Class of the line.</param>
/// <param name="Side">Which side of the seam it is.</param>
/// <param name="Allowance">Cloth beyond the sew line, millimetres.</param>
internal sealed record DraftRun(ArcSide At, ArcClass Class, EdgeSide Side, double Allowance)
{
    /// <summary>From how many corners to the next it runs: 1 for a straight edge, all of them for a closed one.</summary>
    internal int Steps { get; init; } = 1;

    /// <summary>Places along a rim that bear a mark, each by its way from where the arc begins, counter-clockwise round the opening, millimetres, with its purpose.</summary>
    internal ImmutableArray<(double At, string Purpose)> Places { get; init; } = [];

    /// <summary>Whether it runs along its arc as the cover does, though it has the second side.</summary>
    internal bool RunsBack { get; init; }

    /// <summary>Whether it runs along a rim from where that begins.</summary>
    internal bool RunsForward => At.IsSecond && !RunsBack;

    /// <summary>Lengths at its start and end where a felled seam is sewn plain and trimmed, millimetres; mostly none.</summary>
    internal (double AtStart, double AtEnd) Stops { get; init; }

    /// <summary>Whether a seam's start and end lie over hubs; elsewhere it was cut off, and nothing is tied there.</summary>
    internal (bool AtStart, bool AtEnd) Hubs { get; init; }

    /// <summary>Allowance on these lengths, millimetres.</summary>
    internal double PlainAllowance { get; init; }

    /// <summary>Radius of the patch over the hub at its first corner, millimetres; 0 without one.</summary>
    internal double PatchRadius { get; init; }

    /// <summary>Its circle, when it is one; null elsewhere.</summary>
    internal RoundEdge? Round { get; init; }
}
