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

    /// <summary>A place on a roll of a cloth, for a single ply.</summary>
    public static LaySpot On(Cloth cloth, int roll, double fromMm) => OnPlies(cloth, roll, fromMm, 1, (0, 0));

    /// <summary>
    /// A place on a roll from which several plies are spread one after the other, all one way: the flaws of every ply, seen through the plies.
    /// While the lay's length is known only roughly a flaw takes all the places that it can have.
    /// </summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="roll">Its roll, counted from 1; 0 when the job names none.</param>
    /// <param name="fromMm">Where the lowest ply begins.</param>
    /// <param name="plies">How many there are.</param>
    /// <param name="lengths">Least and greatest length that a ply may have, millimetres.</param>
    public static LaySpot OnPlies(Cloth cloth, int roll, double fromMm, int plies, (double Least, double Most) lengths)
    {
        if (roll == 0)
        {
            return Anywhere;
        }

        var wish = cloth.Rolls[roll - 1];
        var end = plies > 1 ? lengths.Most : Grid.LargestMillimetres;
        var flaws = Enumerable.Range(0, plies).SelectMany(ply => wish.Flaws.Select(flaw => Moved(flaw, fromMm, ply, lengths)));
        return new LaySpot(roll, wish.Name, fromMm, [.. flaws.Where(flaw => flaw.X + flaw.LongMm > 0 && flaw.X < end && flaw.X + flaw.LongMm < Grid.LargestMillimetres)]);
    }

    private static LayFlaw Moved(FlawWish flaw, double fromMm, int ply, (double Least, double Most) lengths)
    {
        var at = flaw.At.Millimetres - fromMm;
        var low = Grid.Snap(new Point2(at - (ply * lengths.Most), flaw.Across.Millimetres));
        var high = Grid.Snap(new Point2(at - (ply * lengths.Least) + flaw.Long.Millimetres, flaw.Across.Millimetres + flaw.Wide.Millimetres));
        return new LayFlaw(low.X, low.Y, high.X - low.X, high.Y - low.Y, flaw.Grade) { Ply = ply + 1 };
    }
}
