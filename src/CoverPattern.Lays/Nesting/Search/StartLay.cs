using System;
using System.Linq;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>A first lay: bulky copies first, each as far left as some tries find room.</summary>
internal sealed class StartLay
{
    private const int Tries = 150;

    private readonly SearchScene _scene;
    private readonly Strip _strip;
    private readonly PlaceCost _cost;
    private readonly Chance _chance;
    private int _used;
    private int _clear;

    private StartLay(SearchScene scene, Chance chance)
    {
        (_scene, _chance) = (scene, chance);
        // On a round strip of this length nothing is near enough to meet itself; a strip that ends needs none.
        _strip = new Strip(scene) { Length = scene.IsRound ? int.MaxValue / 4 : int.MaxValue };
        _cost = new PlaceCost(_strip, scene.Tables);
    }

    public static FoundLay Make(SearchScene scene, Chance chance)
    {
        var start = new StartLay(scene, chance);
        var weights = new PairWeights(scene.Copies.Length);
        foreach (var (k, flaw) in scene.Flaws.Index())
        {
            start._strip.Place(scene.Pieces + k, flaw);
            start._clear = Math.Max(start._clear, flaw.Shape.Box.Right);
        }

        foreach (var copy in Enumerable.Range(0, scene.Pieces).OrderByDescending(i => scene.Shapes[scene.Copies[i]][0].Bulk).ThenBy(i => i))
        {
            start._cost.Open(copy, weights);
            start.Lay(copy);
            start._cost.Close(weights);
        }

        return scene.IsRound ? start.Bent() : new FoundLay(start._used, start._strip.Copy());
    }

    /// <summary>Bent round behind the last box nothing overlaps.</summary>
    private FoundLay Bent()
    {
        var spots = _strip.Copy();
        var low = spots.Min(spot => spot.X + spot.Shape.Box.Left);
        return new FoundLay(spots.Max(spot => spot.X + spot.Shape.Box.Right) - low, [.. spots.Select(spot => spot with { X = spot.X - low })]);
    }

    private void Lay(int copy)
    {
        var shapes = _scene.Shapes[_scene.Copies[copy]];
        var best = AtEnd(shapes.MinBy(shape => shape.TrueBox.Width)!);
        for (var k = 0; k < Tries; k++)
        {
            var shape = shapes[_chance.Below(shapes.Length)];
            var x = _chance.Between(-shape.TrueBox.Left, _used - shape.TrueBox.Left);
            var y = _chance.Between(-shape.TrueBox.Bottom, _scene.Width - shape.TrueBox.Top);
            var spot = new Spot(shape, x, y);
            if (Rank(spot) < Rank(best) && IsFree(spot))
            {
                best = Slid(spot);
            }
        }

        best = Slid(best);
        _strip.Place(copy, best);
        _used = Math.Max(_used, best.X + best.Shape.TrueBox.Right);
    }

    // Right end first; a tenth of the height keeps equal ends low.
    private static double Rank(in Spot spot) => spot.X + spot.Shape.TrueBox.Right + (0.1 * (spot.Y + spot.Shape.TrueBox.Bottom));

    /// <summary>Right of everything, clear of the grown outlines too.</summary>
    private Spot AtEnd(PreparedShape shape) => new(shape, Math.Max(_used, _clear) - (2 * shape.Box.Left) + shape.TrueBox.Left, -shape.TrueBox.Bottom);

    private bool IsFree(in Spot spot) => _cost.Of(spot, double.Epsilon) <= 0;

    /// <summary>Slides left and down by ever smaller steps.</summary>
    private Spot Slid(Spot spot)
    {
        for (var step = (int)spot.Shape.Diameter / 2; step > 0; step /= 2)
        {
            var moved = true;
            while (moved)
            {
                moved = Slide(ref spot, step, 0) | Slide(ref spot, 0, step);
            }
        }

        return spot;
    }

    private bool Slide(ref Spot spot, int left, int down)
    {
        var next = spot with
        {
            X = Math.Max(-spot.Shape.TrueBox.Left, spot.X - left),
            Y = Math.Max(-spot.Shape.TrueBox.Bottom, spot.Y - down),
        };
        if ((next.X == spot.X && next.Y == spot.Y) || !IsFree(next))
        {
            return false;
        }

        spot = next;
        return true;
    }
}
