using System.Linq;
using CoverPattern.Lays.Nesting;
using CoverPattern.Lays.Nesting.Search;

namespace CoverPattern.Lays.Tests.Nesting.Search;

public class StripTests
{
    // 40 copies are looked through eight at a time, 600 through bins; the walk over all copies is the truth.
    [Theory]
    [InlineData(40)]
    [InlineData(600)]
    public void Collect_RandomBoxes_FindsExactlyTheBoxesThatMeet(int copies)
    {
        var chance = new Chance(copies, 0);
        var items = Enumerable.Range(0, 4).Select(_ => RandomOutlines.Item(RandomOutlines.Star(chance, 7, 30), copies / 4, AllowedTurns.HalfTurn));
        var scene = new SearchScene(new NestingTask(500, 0, [.. items], 1, 1), SearchSettings.Default, SearchOptions.None);
        var strip = new Strip(scene);
        var found = new int[copies];
        for (var k = 0; k < 5 * copies; k++)
        {
            var copy = k % copies;
            strip.Place(copy, new Spot(scene.Shapes[scene.Copies[copy]][0], chance.Between(-100, 5000) * 1024, chance.Between(0, 500) * 1024));
        }

        for (var k = 0; k < 200; k++)
        {
            var box = new StepBox(0, 0, 60 * 1024, 60 * 1024).Moved(chance.Between(-100, 5000) * 1024, chance.Between(0, 500) * 1024);

            var count = strip.Collect(box, found);

            var truth = Enumerable.Range(0, copies).Where(copy => Meets(strip.At(copy), box));
            Assert.Equal(truth, found.Take(count).Order());
        }
    }

    private static bool Meets(Spot spot, StepBox box)
    {
        var own = spot.Shape.Box.Moved(spot.X, spot.Y);
        return own.Left < box.Right && own.Right > box.Left && own.Bottom < box.Top && own.Top > box.Bottom;
    }
}
