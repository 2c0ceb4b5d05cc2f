using System.Collections.Immutable;

namespace CoverPattern.Lays.Nesting;

/// <summary>Turns an item may take on the strip.</summary>
/// <param name="Degrees">Allowed turns, degrees counter-clockwise; ignored when <paramref name="IsFree"/>.</param>
/// <param name="IsFree">Whether every turn is allowed.</param>
public sealed record AllowedTurns(ImmutableArray<double> Degrees, bool IsFree)
{
    public static AllowedTurns None { get; } = new([0], IsFree: false);

    public static AllowedTurns HalfTurn { get; } = new([0, 180], IsFree: false);

    public static AllowedTurns Free { get; } = new([], IsFree: true);

    /// <summary>How far a turn may stand off an allowed one either way, degrees, 0 or more: how crooked the grain may run. Ignored when <see cref="IsFree"/>.</summary>
    public double Within { get; init; }
}
