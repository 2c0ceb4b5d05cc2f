using System.Collections.Immutable;

namespace CoverPattern.Lays.Nesting;

/// <summary>Outlines to be placed on a strip of fixed width so that the strip is short. Knows outlines only, no trade.</summary>
/// <param name="Width">Width of the strip, millimetres: all of it may be used.</param>
/// <param name="Spacing">Least distance between two items, millimetres; 0 lets them touch. Items may touch the strip's edges.</param>
/// <param name="Items">What is to be placed.</param>
/// <param name="Effort">Work units to spend; 1 or more. Same task, effort and seed: same layout.</param>
/// <param name="Seed">Seed of the search's chance.</param>
public sealed record NestingTask(double Width, double Spacing, ImmutableArray<NestingItem> Items, int Effort, int Seed)
{
    /// <summary>Areas of the strip that only some items may lie on.</summary>
    public ImmutableArray<FlawedArea> Flaws { get; init; } = [];

    /// <summary>Copies that lie already and stay; each is one of its item's quantity.</summary>
    public ImmutableArray<NestingPlacement> Fixed { get; init; } = [];

    /// <summary>An earlier or hand-moved layout of the same task to start from; one that its check refuses is refused.</summary>
    public NestingLayout? Start { get; init; }
}
