using System;
using System.Collections.Immutable;
using System.Linq;
using CsCheck;

namespace CoverPattern.Geometry.Tests;

public class ConvexRoomsTests
{
    private static readonly Gen<double[]> Stars = Gen.Double[0.2, 1].Array[5, 60];

    [Fact]
    public void Within_CircleOfManyCorners_HasFewAndMostOfTheArea()
    {
        ImmutableArray<Point2> circle = [.. Enumerable.Range(0, 720).Select(i => 100 * new Point2(Math.Cos(i * Math.PI / 360), Math.Sin(i * Math.PI / 360)))];

        var room = ConvexRooms.Within(circle);

        // Limits at 0.98 of the radius: the circle they touch has 0.96 of the area; one that is found 1 % of the size aside has 0.92 of it at least.
        Assert.InRange(room.Length, 4, 24);
        Assert.InRange(Rings.SignedArea(room), 0.92 * Math.PI * 100 * 100, Math.PI * 100 * 100);
    }

    [Fact]
    public void Within_Triangle_HasMostOfIt()
    {
        ImmutableArray<Point2> triangle = [new(0, 0), new(60, 0), new(20, 45)];

        // Sides moved in by 2 % of the inradius about a middle that is found to 1 % of the size.
        Assert.InRange(Rings.SignedArea(ConvexRooms.Within(triangle)), 0.85 * Rings.SignedArea(triangle), Rings.SignedArea(triangle));
    }

    [Fact]
    public void Within_NothingInside_IsEmpty() => Assert.Empty(ConvexRooms.Within([new(0, 0), new(10, 0), new(20, 0)]));

    [Fact]
    public void Within_RandomStars_LieInsideAndAreConvex() => Stars.Sample(LiesInside);

    // An edge of the outline along its box, to the rounding.
    [Theory]
    [InlineData("csHx12A82gD1")]
    public void Within_StarsFoundOnce_LieInsideAndAreConvex(string seed) => Stars.Sample(LiesInside, seed: seed, iter: 1, threads: 1);

    private static void LiesInside(double[] reaches)
    {
        ImmutableArray<Point2> star = [.. reaches.Select((reach, i) => 50 * reach * new Point2(Math.Cos(2 * Math.PI * i / reaches.Length), Math.Sin(2 * Math.PI * i / reaches.Length)))];

        var room = ConvexRooms.Within(star);

        var edges = star.Select((from, i) => (From: from, To: star[(i + 1) % star.Length])).ToArray();
        Assert.True(Rings.SignedArea(room) > 0);
        Assert.All(Enumerable.Range(0, room.Length), i =>
        {
            var (before, at, after) = (room[i], room[(i + 1) % room.Length], room[(i + 2) % room.Length]);
            Assert.True(Point2.Cross(at - before, after - at) >= -1e-9);

            // From just inside half way between two corners a ray to the right leaves the star an odd number of times.
            var middle = Point2.Between(before, at, 0.5) + (1e-6 * (at - before).QuarterTurned());
            Assert.True(edges.Count(edge => edge.From.Y > middle.Y != edge.To.Y > middle.Y && middle.X < edge.From.X + ((middle.Y - edge.From.Y) / (edge.To.Y - edge.From.Y) * (edge.To.X - edge.From.X))) % 2 == 1);
        });
        Assert.All(edges, edge => Assert.True(ConvexOutlines.AreApart(room, [edge.From, edge.To])));
    }
}
