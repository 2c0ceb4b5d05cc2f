using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays;

/// <summary>Ways to take the rolls that there are, the most promising first.</summary>
internal static class RollWays
{
    // Of more rolls than these not every choice is looked at.
    private const int MostChosen = 10;

    // What a lay takes beyond the area of its pieces, guessed: below it a choice is not promising.
    private const double GuessedDensity = 0.85;

    /// <summary>Rolls counted from 1, in the order in which they are used up.</summary>
    /// <param name="cloth">The cloth with its rolls.</param>
    /// <param name="least">Cloth that is needed at the very least, millimetres.</param>
    public static IEnumerable<ImmutableArray<int>> Of(Cloth cloth, double least)
    {
        var all = cloth.Rolls.Select((roll, i) => (Number: i + 1, Length: roll.Length?.Millimetres ?? double.PositiveInfinity)).ToArray();
        if (Array.Exists(all, roll => double.IsPositiveInfinity(roll.Length)) || all.Length > MostChosen)
        {
            // The one without end comes last: what is left of the others is used up first.
            return [[.. all.OrderBy(roll => roll.Length).Select(roll => roll.Number)], [.. all.Select(roll => roll.Number)]];
        }

        var promising = Enumerable.Range(1, (1 << all.Length) - 1)
            .Select(choice => all.Where((_, i) => (choice >> i & 1) == 1).OrderBy(roll => roll.Length).ThenBy(roll => roll.Number).ToArray())
            .Where(rolls => rolls.Sum(roll => roll.Length) >= least)
            .OrderBy(rolls => rolls.Sum(roll => roll.Length) * GuessedDensity < least)
            .ThenByDescending(rolls => Remnants(all, rolls, least / GuessedDensity))
            .ThenBy(rolls => rolls.Length)
            .Select(rolls => rolls.Select(roll => roll.Number).ToImmutableArray());
        return promising.Take(4)
            .Append([.. all.OrderBy(roll => roll.Length).Select(roll => roll.Number)])
            .Append([.. all.OrderByDescending(roll => roll.Length).Select(roll => roll.Number)]);
    }

    /// <summary>Squares of what is left when the rolls are used up in order: greater when it lies in few long pieces.</summary>
    private static double Remnants((int Number, double Length)[] all, (int Number, double Length)[] rolls, double needed)
    {
        var sum = all.Except(rolls).Sum(roll => roll.Length * roll.Length);
        foreach (var (_, length) in rolls)
        {
            var rest = Math.Max(0, length - needed);
            needed = Math.Max(0, needed - length);
            sum += rest * rest;
        }

        return sum;
    }
}
