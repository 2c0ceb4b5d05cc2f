using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>How pieces are laid on the roll.</summary>
/// <param name="Spacing">Least distance between two pieces.</param>
/// <param name="EndAllowance">Cloth left free at each end.</param>
/// <param name="Turns">How pieces may turn; a one-way nap narrows it to 0 degrees.</param>
/// <param name="FaceDown">Whether the cloth lies face down on the table, so that drawn marks land inside.</param>
/// <param name="Effort">Work units for the search; more is shorter and slower; 1 to 1,000,000.</param>
/// <param name="Seed">Seed of the search's chance; same seed, same lay.</param>
public sealed record LayWish(Measure Spacing, Measure EndAllowance, TurnRule Turns, bool FaceDown, int Effort, int Seed)
{
    /// <summary>What the lay is made for.</summary>
    public LayStyle Style { get; init; }

    /// <summary>How far the grain may run off an allowed turn either way, degrees, 0 to 15.</summary>
    public double OffGrainDegrees { get; init; }

    /// <summary>Whether smaller pieces may lie in the openings of others.</summary>
    public bool InHoles { get; init; } = true;

    /// <summary>Longest lay, end allowances included; null: as long as it gets.</summary>
    public Measure? Table { get; init; }

    /// <summary>Plies cut at once, 1 or more.</summary>
    public int Plies { get; init; } = 1;

    /// <summary>How plies lie upon each other.</summary>
    public PlySpread Spread { get; init; }

    /// <summary>Which pieces bear flaws; all others bear none. Of two that name one piece the later holds.</summary>
    public ImmutableArray<GradeWish> Grades { get; init; } = [];

    /// <summary>Lays to search on from; null when there are none.</summary>
    public EarlierLays? Start { get; init; }

    /// <summary>Labels of pieces that stay where <see cref="Start"/> has them.</summary>
    public ImmutableArray<string> Locked { get; init; } = [];

    /// <summary>Lays to be checked and used as they are; null when there are none.</summary>
    public EarlierLays? Keep { get; init; }
}
