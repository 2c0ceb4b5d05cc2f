using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays;

/// <summary>Where on which roll a lay begins.</summary>
/// <param name="Roll">Roll of the cloth, counted from 1; 0 when the job names none.</param>
/// <param name="RollName">What is written on it.</param>
/// <param name="FromMm">Millimetres from its cut end.</param>
/// <param name="Flaws">Flawed areas from there on, in lay coordinates.</param>
internal sealed record LaySpot(int Roll, string RollName, double FromMm, ImmutableArray<LayFlaw> Flaws)
{
    /// <summary>Cloth as it comes, of any length.</summary>
    public static LaySpot Anywhere { get; } = new(0, string.Empty, 0, []);

    /// <summary>A place on a roll of a cloth.</summary>
    public static LaySpot On(Cloth cloth, int roll, double fromMm)
    {
        if (roll == 0)
        {
            return Anywhere;
        }

        var wish = cloth.Rolls[roll - 1];
        return new LaySpot(roll, wish.Name, fromMm, [.. wish.Flaws.Select(flaw => Moved(flaw, fromMm)).Where(flaw => flaw.X + flaw.LongMm > 0 && flaw.X + flaw.LongMm < Grid.LargestMillimetres)]);
    }

    private static LayFlaw Moved(FlawWish flaw, double fromMm)
    {
        var low = Grid.Snap(new Point2(flaw.At.Millimetres - fromMm, flaw.Across.Millimetres));
        var high = Grid.Snap(new Point2(flaw.At.Millimetres - fromMm + flaw.Long.Millimetres, flaw.Across.Millimetres + flaw.Wide.Millimetres));
        return new LayFlaw(low.X, low.Y, high.X - low.X, high.Y - low.Y, flaw.Grade);
    }
}
