namespace CoverPattern.Geometry.Tests;

public class Box2Tests
{
    /// <summary>By hand: a box of 10 x 10 at the origin against boxes of 10 x 10 moved by so much.</summary>
    [Theory]
    [InlineData(10, 0, true)]
    [InlineData(0, -10, true)]
    [InlineData(10, 10, true)]
    [InlineData(9.999, 0, false)]
    [InlineData(-9.999, 9.999, false)]
    [InlineData(0, 0, false)]
    [InlineData(3, 25, true)]
    public void IsApartFrom_MovedBox_TouchingIsApart(double right, double up, bool isApart)
    {
        var box = new Box2(default, new Point2(10, 10));
        var moved = new Box2(new Point2(right, up), new Point2(right + 10, up + 10));

        Assert.Equal(isApart, box.IsApartFrom(moved));
        Assert.Equal(isApart, moved.IsApartFrom(box));
    }
}
