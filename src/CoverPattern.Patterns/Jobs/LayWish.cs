namespace CoverPattern.Patterns.Jobs;

/// <summary>How pieces are laid on the roll.</summary>
/// <param name="Spacing">Least distance between two pieces.</param>
/// <param name="EndAllowance">Cloth left free at each end of the lay.</param>
/// <param name="Turns">How pieces may turn; a one-way nap narrows it to 0 degrees.</param>
/// <param name="FaceDown">Whether the cloth lies face down on the table, so that drawn marks land inside.</param>
/// <param name="Effort">Work units for the search; more is shorter and slower; 1 to 1,000,000.</param>
/// <param name="Seed">Seed of the search's chance; same seed, same lay.</param>
public sealed record LayWish(Measure Spacing, Measure EndAllowance, TurnRule Turns, bool FaceDown, int Effort, int Seed);
