using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Tests.Frames;

public class FrameBuilderTests
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void Build_NearlyWholeBall_HasTheTableOfClasses(int frequency)
    {
        // The cut of one row less than the ball has every class but lacks the lowest cap's struts;
        // factors, angles and dihedrals do not depend on the cut.
        var frame = Unit(frequency, (3 * frequency) - 1);
        var expected = FrameTables.ClassesOf(frequency).ToArray();

        var dihedrals = Dihedrals(frame);

        Assert.Equal(expected.Select(line => line[1]), frame.Classes.Select(c => c.Label));
        foreach (var (line, strutClass) in expected.Zip(frame.Classes))
        {
            Assert.Equal(double.Parse(line[2], Plain), strutClass.LengthMm, 0.000006);
            Assert.Equal(double.Parse(line[3], Plain), Degrees(Math.Asin(strutClass.LengthMm / 2)), 0.0006);
            var said = line[4].Split(',').Select(part => double.Parse(part.Split('x')[0], Plain)).ToArray();
            var found = frame.Struts.Where(s => s.Class == line[1]).Where(s => dihedrals.ContainsKey((s.From, s.To))).Select(s => dihedrals[(s.From, s.To)]).ToArray();
            Assert.NotEmpty(found);
            Assert.All(found, angle => Assert.Contains(said, one => Math.Abs(one - angle) < 0.0006));
            Assert.All(said, one => Assert.Contains(found, angle => Math.Abs(one - angle) < 0.0006));
        }
    }

    [Theory]
    [MemberData(nameof(FrameTables.Cuts), MemberType = typeof(FrameTables))]
    public void Build_Cut_CountsHubsStrutsFacetsAndClasses(int frequency, int rows, int hubs, int struts, int facets, string byClass)
    {
        var frame = Unit(frequency, rows);

        Assert.Equal((hubs, struts, facets), (frame.Hubs.Length, frame.Struts.Length, frame.Facets.Length));
        Assert.Equal(byClass, string.Join(' ', frame.Classes.Select(c => c.Count.ToString(Plain))));
        // Euler for a disc, and E = 3V - 3 - b for a triangulated one.
        Assert.Equal(1, hubs - struts + facets);
        Assert.Equal((3 * hubs) - 3 - frame.Base.Length, struts);
    }

    [Theory]
    [MemberData(nameof(FrameTables.Bases), MemberType = typeof(FrameTables))]
    public void Build_Cut_HasBaseLevelsAndArea(int frequency, int rows, string levels, double area)
    {
        var frame = Unit(frequency, rows);
        var centre = 1 - frame.Hubs.Max(hub => hub.Position.Z);

        var found = frame.Base.Select(hub => frame.Hubs[hub].Position.Z + centre)
            .GroupBy(z => Math.Round(z, 6)).OrderBy(group => group.Key)
            .Select(group => FormattableString.Invariant($"{(group.Key == 0 ? 0 : group.Key):0.000000}x{group.Count()}"));
        var expected = levels.Split(' ').Select(pair => FormattableString.Invariant($"{double.Parse(pair.Split('x')[0], Plain):0.000000}x{pair.Split('x')[1]}"));

        Assert.Equal(expected, found);
        if (area > 0)
        {
            Assert.Equal(area, frame.Facets.Sum(facet => Area(frame, facet)), 0.0000006);
        }
    }

    [Fact]
    public void Build_Raise_Of24FootDome_IsTwoPointThreeInches()
    {
        // 0.0159530 R: 2.297 in at R = 144 in on ten of fifteen base hubs (own calculation; "two of every three": common practice, no source).
        var frame = Build(3, 5, FrameMeasure.Diameter, 24 * 304.8);

        var raises = frame.Base.Select(hub => frame.Hubs[hub].Position.Z / 25.4).ToArray();

        Assert.Equal(5, raises.Count(raise => Math.Abs(raise) < 1e-9));
        Assert.Equal(10, raises.Count(raise => Math.Abs(raise - 2.297) < 0.0006));
    }

    [Theory]
    [InlineData(FrameMeasure.Radius, 3657.6)]
    [InlineData(FrameMeasure.Diameter, 7315.2)]
    [InlineData(FrameMeasure.FloorDiameter, 2 * 3592.666)]
    [InlineData(FrameMeasure.Height, 4343.738)]
    public void Build_AnyMeasureOfSize_GivesTheSameFrame(FrameMeasure measure, double size)
    {
        // 3V 5/8 of R = 3657.6 mm: plan radius of the low hubs 3592.666, apex 4343.738 above them (own calculation).
        var frame = Build(3, 5, measure, size);

        Assert.Equal(1275.096, frame.Classes[0].LengthMm, 0.001);
        Assert.Equal(1476.018, frame.Classes[1].LengthMm, 0.001);
        Assert.Equal(1508.436, frame.Classes[2].LengthMm, 0.001);
    }

    [Fact]
    public void Build_Labels_CountFromTheDeckAndTheFront()
    {
        var frame = Build(3, 5, FrameMeasure.Radius, 3000);

        Assert.Equal("H0.01", frame.Hubs[0].Label);
        Assert.Equal("H5.01", frame.Hubs[^1].Label);
        Assert.Equal("F1.01", frame.Facets[0].Label);
        Assert.Equal("F5.05", frame.Facets[^1].Label);
        // The front passes a low base hub on the 3V 5/8.
        Assert.Equal(0, frame.Hubs[0].Position.Y, 1e-9);
        Assert.Equal(0, frame.Hubs[0].Position.Z, 1e-9);
        Assert.True(frame.Hubs[0].Position.X > 0);
        Assert.Equal([30, 30, 25, 15, 5], Enumerable.Range(1, 5).Select(row => frame.Facets.Count(f => f.Row == row)));
        Assert.Equal(frame.Facets.Length, frame.Facets.Select(f => f.Label).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Build_MoreClassesThanLetters_GoOnWithTwo()
    {
        // 12V half: more than 26 classes, Z is followed by AA and AB, as columns of a table are; the shortest is A.
        var classes = FrameBuilder.Build(new FrameWish(FrameFamily.Icosahedron, 12, 18, "1/2", FrameMeasure.Radius, new Measure(5000, ""))).Classes;

        Assert.Equal(["A", "Z", "AA", "AB"], new[] { 0, 25, 26, 27 }.Select(i => classes[i].Label));
        Assert.Equal(classes.Select(own => own.LengthMm).Order(), classes.Select(own => own.LengthMm));
    }

    [Fact]
    public void Build_EveryFacet_FacesOutward()
    {
        foreach (var (frequency, rows) in new[] { (1, 1), (2, 5), (5, 8), (8, 23) })
        {
            var frame = Unit(frequency, rows);
            var centre = new Point3(0, 0, frame.Hubs.Max(hub => hub.Position.Z) - 1);

            Assert.All(frame.Facets, facet => Assert.True(
                Point3.Dot(Normal(frame, facet), frame.Hubs[facet.Hubs[0]].Position - centre) > 0));
        }
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(3, 0)]
    [InlineData(3, 9)]
    public void Build_OutOfRange_IsRefused(int frequency, int rows) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Build(frequency, rows, FrameMeasure.Radius, 1000));

    internal static Frame Build(int frequency, int rows, FrameMeasure measure, double size) => FrameBuilder.Build(
        new FrameWish(FrameFamily.Icosahedron, frequency, rows, string.Empty, measure, new Measure(size, string.Empty)));

    private static Frame Unit(int frequency, int rows) => Build(frequency, rows, FrameMeasure.Radius, 1);

    private static double Degrees(double radians) => radians * 180 / Math.PI;

    private static Point3 Normal(Frame frame, Facet facet)
    {
        var (a, b, c) = (frame.Hubs[facet.Hubs[0]].Position, frame.Hubs[facet.Hubs[1]].Position, frame.Hubs[facet.Hubs[2]].Position);
        return Point3.Cross(b - a, c - a);
    }

    private static double Area(Frame frame, Facet facet) => Normal(frame, facet).Length / 2;

    private static Dictionary<(int, int), double> Dihedrals(Frame frame)
    {
        var byEdge = frame.Facets
            .SelectMany(facet => facet.Hubs.Select((hub, i) => (Edge: Sorted(hub, facet.Hubs[(i + 1) % 3]), facet)))
            .GroupBy(pair => pair.Edge, pair => pair.facet)
            .Where(group => group.Count() == 2);
        return byEdge.ToDictionary(group => group.Key, group =>
        {
            var (left, right) = (Normal(frame, group.First()).Unit(), Normal(frame, group.Last()).Unit());
            return 180 - Degrees(Math.Atan2(Point3.Cross(left, right).Length, Point3.Dot(left, right)));
        });
    }

    private static (int, int) Sorted(int a, int b) => (Math.Min(a, b), Math.Max(a, b));
}
