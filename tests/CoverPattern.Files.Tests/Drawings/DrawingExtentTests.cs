using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Tests.Drawings;

public class DrawingExtentTests
{
    [Fact]
    public void Measure_NothingDrawn_NoSizeAtTheOrigin() =>
        Assert.Equal(default, DrawingExtent.Measure(new Drawing("", [], [], [], [])));

    [Fact]
    public void Measure_MirroredTurnedMovedBlock_IsMeasuredWhereItLies()
    {
        // By hand: (10, 20) mirrored is (10, -20), turned a quarter (20, 10), moved by (100, 200) is (120, 210); the origin goes to (100, 200).
        var block = new DrawnBlock("a", [new DrawnLine(DrawingLayers.Cut, [default, new Point2(10, 20)], IsClosed: false)]);
        var drawing = new Drawing("", [block], [new BlockInsertion("a", new Point2(100, 200), 90, IsMirrored: true)], [], []);

        Assert.Equal(new Box2(new Point2(100, 200), new Point2(120, 210)), DrawingExtent.Measure(drawing));
    }

    [Theory]
    [InlineData(TextAnchor.Start, 0, 0, 95)]
    [InlineData(TextAnchor.Middle, 0, -47.5, 47.5)]
    [InlineData(TextAnchor.End, 0, -95, 0)]
    [InlineData(TextAnchor.Start, 180, -95, 0)]
    [InlineData(TextAnchor.Start, 90, -5, 5)]
    public void Measure_Text_ReachesFromItsAnchor(TextAnchor anchor, double turn, double low, double high)
    {
        // Ten digits of height 10: 0.95 x 10 each.
        var text = new DrawnText(DrawingLayers.Label, "0123456789", default, 10, turn, anchor);

        var box = DrawingExtent.Measure(new Drawing("", [], [], [], [text]));

        Assert.Equal(low, box.Low.X, 9);
        Assert.Equal(high, box.High.X, 9);
    }
}
