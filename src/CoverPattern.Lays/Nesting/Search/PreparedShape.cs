using System.Collections.Immutable;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>One outline in one turn, made ready for millions of questions. Coordinates are grid steps from the item's origin.</summary>
/// <remarks>
/// The edges are those of the outline grown by half the spacing (and the holes shrunk), inside on their left. Steps are
/// whole numbers held as doubles: with outlines below <see cref="LargestSize"/> every cross product of two differences stays
/// below 2^53, so that sums and products are exact and the answers do not depend on the processor.
/// </remarks>
internal sealed class PreparedShape
{
    /// <summary>Largest width or height of an outline, steps (32 m).</summary>
    public const int LargestSize = 1 << 25;

    /// <summary>Circles of a shape: one vector of floats.</summary>
    public const int PoleCount = 8;

    /// <summary>Index of a shape that was turned on the way and is in no table.</summary>
    public const int NoIndex = -1;

    /// <summary>Number of this shape among all of the task, or <see cref="NoIndex"/>.</summary>
    public required int Index { get; init; }

    /// <summary>Index of the item in the task.</summary>
    public required int Item { get; init; }

    public required double TurnDegrees { get; init; }

    public required bool Mirrored { get; init; }

    /// <summary>Which flaws the item bears.</summary>
    public required int Grade { get; init; }

    /// <summary>For flawed areas the least grade that may lie on them; more than any grade else.</summary>
    public required int LeastGrade { get; init; }

    /// <summary>Whether it stands for a flawed area.</summary>
    public bool IsFlaw => LeastGrade < int.MaxValue;

    /// <summary>Number of edges, without padding.</summary>
    public required int EdgeCount { get; init; }

    /// <summary>Start of each edge, ring after ring; padded with NaN to a multiple of four.</summary>
    public required double[] X { get; init; }

    /// <inheritdoc cref="X"/>
    public required double[] Y { get; init; }

    /// <summary>Step from start to end of each edge; padded with NaN.</summary>
    public required double[] StepX { get; init; }

    /// <inheritdoc cref="StepX"/>
    public required double[] StepY { get; init; }

    /// <summary>The edge before each edge in its ring.</summary>
    public required int[] Previous { get; init; }

    /// <summary>First edge of each ring, and the number of edges as last entry.</summary>
    public required ImmutableArray<int> RingStarts { get; init; }

    /// <summary>Box of the grown outline: what other pieces must keep clear of.</summary>
    public required StepBox Box { get; init; }

    /// <summary>Box of the true outline: what must stay on the strip.</summary>
    public required StepBox TrueBox { get; init; }

    /// <summary>Centres and radii of circles inside, largest first; padded with radius 0.</summary>
    public required float[] PoleX { get; init; }

    /// <inheritdoc cref="PoleX"/>
    public required float[] PoleY { get; init; }

    /// <inheritdoc cref="PoleX"/>
    public required float[] PoleRadius { get; init; }

    /// <summary>Circles in use, 1 to <see cref="PoleCount"/>.</summary>
    public required int Poles { get; init; }

    /// <summary>Fourth root of the hull's area: the shape's share in the weight of an overlap.</summary>
    public required float Bulk { get; init; }

    /// <summary>Greatest distance across the box, steps.</summary>
    public required float Diameter { get; init; }

    /// <summary>Area of the true outline, holes taken off, square steps.</summary>
    public required double Area { get; init; }
}
