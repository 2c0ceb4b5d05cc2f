using System;
using System.Linq;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>The last slide: every copy moves left until it touches, those at the left first, as long as that gains.</summary>
internal static class Settling
{
    private const int MostRounds = 20;

    /// <summary>Slides a lay together.</summary>
    /// <returns>A lay free of overlaps that is no longer.</returns>
    public static FoundLay Slide(SearchScene scene, FoundLay lay)
    {
        var strip = new Strip(scene) { Length = lay.Length };
        strip.Take(lay.Spots);
        var cost = new PlaceCost(strip, scene.Tables);
        var weights = new PairWeights(lay.Spots.Length);
        var moved = true;
        for (var round = 0; round < MostRounds && moved; round++)
        {
            moved = false;
            foreach (var copy in Enumerable.Range(0, strip.Count).Where(i => !scene.Locked[i]).OrderBy(i => strip.X[i] + strip.Shapes[i].Box.Left).ThenBy(i => i).ToArray())
            {
                cost.Open(copy, weights);
                var (from, to) = (strip.At(copy), Slid(cost, strip.At(copy)));
                cost.Close(weights);
                strip.Place(copy, to);
                moved |= to != from;
            }
        }

        return new FoundLay(strip.UsedLength(), strip.Copy());
    }

    /// <summary>Moves left by ever smaller steps, down to one of the grid, into places free of overlap.</summary>
    private static Spot Slid(PlaceCost cost, Spot spot)
    {
        for (var step = (int)spot.Shape.Diameter / 2; step > 0; step /= 2)
        {
            while (true)
            {
                var next = spot with { X = Math.Max(-spot.Shape.TrueBox.Left, spot.X - step) };
                if (next.X == spot.X || cost.Of(next, double.Epsilon) > 0)
                {
                    break;
                }

                spot = next;
            }
        }

        return spot;
    }
}
