using System;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Tests.Frames;

/// <summary>Gore roofs against stations made apart from this project (own calculation).</summary>
public class GoreRoofTests
{
    [Theory]
    [InlineData(12, 6, "252.3114 505.7908 761.2806 1019.0724 1278.8411 1539.7445", "66.9873 129.4095 183.0127 224.1439 250.0000 258.8190", 261.0524)]
    [InlineData(8, 4, "361.6550 731.5568 1112.8170 1501.9087", "146.4466 270.5981 353.5534 382.6834", 390.1806)]
    public void Build_HemisphereOfGores_HasItsStations(int sides, int chords, string stations, string halfWidths, double seam)
    {
        var frame = Roof(sides, GoreMeridian.Circle, chords, 1000, 1000);

        var (along, found, widths) = (0.0, "", "");
        foreach (var row in frame.Facets.GroupBy(facet => facet.Row).OrderByDescending(row => row.Key))
        {
            var corners = row.First().Hubs.Select(hub => frame.Hubs[hub].Position).ToArray();
            var low = corners.OrderBy(corner => corner.Z).Take(2).ToArray();
            var high = corners.OrderBy(corner => corner.Z).Skip(2).ToArray();
            along += Point3.Distance(Point3.Between(low[0], low[1], 0.5), Point3.Between(high[0], high[^1], 0.5));
            found += along.ToString("0.0000 ", CultureInfo.InvariantCulture);
            widths += (Point3.Distance(low[0], low[1]) / 2).ToString("0.0000 ", CultureInfo.InvariantCulture);
        }

        Assert.Equal(stations, found.Trim());
        Assert.Equal(halfWidths, widths.Trim());
        var seams = frame.Struts.Where(strut => frame.Hubs[strut.From].Ring != frame.Hubs[strut.To].Ring).ToArray();
        Assert.Equal(sides * chords, seams.Length);
        Assert.All(seams, strut => Assert.Equal(seam, strut.LengthMm, 0.00006));
    }

    [Fact]
    public void Build_SixteenGores_HaveTheirLengthAndArea()
    {
        // n = 16, 9 chords: length 1553.7679, base half width 195.0903, edges 174.3115; n = 12: area 6 088 642.
        var sixteen = Roof(16, GoreMeridian.Circle, 9, 1000, 1000);
        Assert.Contains(sixteen.Classes, own => Math.Abs(own.LengthMm - 174.3115) < 0.00006 && own.Count == 144);
        Assert.Contains(sixteen.Classes, own => Math.Abs(own.LengthMm - (2 * 195.0903)) < 0.0002 && own.Count == 16);

        var twelve = Roof(12, GoreMeridian.Circle, 6, 1000, 1000);
        Assert.Equal(6_088_642, twelve.Facets.Sum(facet => MeshArea(twelve, facet)), 1.0);
    }

    [Fact]
    public void Build_CrownAndRiser_AreOpeningAndWall()
    {
        var wish = Wish(10, GoreMeridian.Cone, 3, 2000, 900);
        var frame = FrameBuilder.Build(wish with { Gores = wish.Gores! with { Crown = new Measure(200, "") }, RiserMm = 1800 });

        Assert.Equal(10, Assert.Single(frame.Openings).Length);
        Assert.Equal(40, frame.Facets.Length);
        Assert.All(frame.Facets.Where(facet => facet.Row == 1), facet => Assert.Equal(2, facet.Hubs.Count(hub => frame.Hubs[hub].Position.Z == 0)));
        Assert.Equal(1800 + (900 * 0.9), frame.Hubs.Max(hub => hub.Position.Z), 1e-9);
    }

    [Fact]
    public void Build_StretchedDome_IsHigherAndLonger()
    {
        var plain = new FrameWish(FrameFamily.Icosahedron, 4, 6, "1/2", FrameMeasure.Radius, new Measure(2000, ""));

        var frame = FrameBuilder.Build(plain with { Stretch = new Point3(1.5, 1, 1.2) });

        // An ellipsoid of half axes 3000, 2000 and 2400 mm: every hub lies on it.
        Assert.All(frame.Hubs, hub => Assert.Equal(1, Math.Pow(hub.Position.X / 3000, 2) + Math.Pow(hub.Position.Y / 2000, 2) + Math.Pow(hub.Position.Z / 2400, 2), 1e-9));
        Assert.Equal(FrameBuilder.Build(plain).Facets.Length, frame.Facets.Length);
    }

    private static double MeshArea(Frame frame, Facet facet)
    {
        var corners = facet.Hubs.Select(hub => frame.Hubs[hub].Position).ToArray();
        return Enumerable.Range(1, corners.Length - 2).Sum(i => Point3.Cross(corners[i] - corners[0], corners[i + 1] - corners[0]).Length / 2);
    }

    private static Frame Roof(int sides, GoreMeridian meridian, int chords, double radius, double height) => FrameBuilder.Build(Wish(sides, meridian, chords, radius, height));

    private static FrameWish Wish(int sides, GoreMeridian meridian, int chords, double radius, double height) => new(default, 0, 0, "", default, default)
    {
        Gores = new GoreWish(sides, meridian, chords, new Measure(radius, ""), new Measure(height, "")),
    };
}
