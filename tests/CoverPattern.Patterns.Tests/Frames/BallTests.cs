using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Tests.Frames;

public class BallTests
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    [Theory]
    [MemberData(nameof(FamilyTables.Balls), MemberType = typeof(FamilyTables))]
    public void Divide_Family_HasTheTableOfClasses(string solid, int frequency)
    {
        var ball = Ball.Divide(Wish(
            solid[..3] == "oct" ? FrameFamily.Octahedron : FrameFamily.Icosahedron, frequency, solid[3] == '2' ? FrameDivision.ClassTwo : FrameDivision.EqualChord));
        var struts = Struts(ball);

        foreach (var line in FamilyTables.ClassesOf(solid, frequency))
        {
            var own = struts.Where(strut => Math.Abs(strut.Length - double.Parse(line[3], Plain)) < 0.000006).ToArray();
            Assert.Equal(line[6], FormattableString.Invariant($"{own.Length}"));
            Assert.Equal(double.Parse(line[4], Plain), Degrees(Math.Asin(own[0].Length / 2)), 0.0006);
            foreach (var said in line[5].Split(',').Select(part => part.Split('x')))
            {
                var alike = own.Count(strut => Math.Abs(strut.Dihedral - double.Parse(said[0], Plain)) < 0.0006);
                Assert.Equal(said.Length > 1 ? int.Parse(said[1], Plain) : own.Length, alike);
            }
        }

        Assert.Equal(struts.Length, FamilyTables.ClassesOf(solid, frequency).Sum(line => int.Parse(line[6], Plain)));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void Build_OctahedronHalf_HasTheTableOfCounts(int frequency)
    {
        var frame = FrameBuilder.Build(Wish(FrameFamily.Octahedron, frequency, FrameDivision.EqualChord) with { Rows = frequency });

        // Octahedron, any frequency, half: 4 n^2 facets, 2 n^2 + 2 n + 1 hubs, 6 n^2 + 2 n struts, base level (own calculation).
        var n = frequency;
        Assert.Equal((4 * n * n, (2 * n * n) + (2 * n) + 1, (6 * n * n) + (2 * n)), (frame.Facets.Length, frame.Hubs.Length, frame.Struts.Length));
        Assert.All(frame.Base, hub => Assert.Equal(0, frame.Hubs[hub].Position.Z, 1e-9));
        Assert.Equal(FamilyTables.ClassesOf("oct1", n).Select(line => line[7]), frame.Classes.Select(own => FormattableString.Invariant($"{own.Count}")));
    }

    /// <summary>Every family and division at every frequency that it has.</summary>
    public static TheoryData<FrameFamily, int, FrameDivision> All { get; } = MakeAll();

    [Theory]
    [MemberData(nameof(All))]
    public void Divide_AnyBall_HoldsEulerDescartesAndIsConvex(FrameFamily family, int frequency, FrameDivision division)
    {
        var ball = Ball.Divide(Wish(family, frequency, division));

        var struts = Struts(ball);
        var defects = 360.0 * ball.Points.Length;
        foreach (var facet in ball.Facets)
        {
            defects -= Enumerable.Range(0, 3).Sum(i => Degrees(Angle(ball.Points[facet[i]], ball.Points[facet[(i + 1) % 3]], ball.Points[facet[(i + 2) % 3]])));
        }

        // Euler 1758 and Descartes (MathWorld, Descartes total angular defect): 720 degrees on any ball.
        Assert.Equal(2, ball.Points.Length - struts.Length + ball.Facets.Length);
        Assert.Equal(720, defects, 1e-8);
        Assert.All(ball.Points, point => Assert.Equal(1, point.Length, 1e-12));
        Assert.All(struts, strut => Assert.True(strut.Dihedral < 180));
        var perSolid = family == FrameFamily.Octahedron ? 8 : 20;
        Assert.Equal(perSolid * frequency * frequency * (division == FrameDivision.ClassTwo ? 3 : 4) / 4, ball.Facets.Length);
    }

    // Own calculation; the level base 3V is the one member of its kind, the two 4V members keep edge or inner hubs of class I.
    [Theory]
    [InlineData(FrameDivision.EqualArc, 3, "0.36696 0.40419 0.42406")]
    [InlineData(FrameDivision.LevelByEdgeHubs, 3, "0.32971 0.38229 0.42149 0.44106")]
    [InlineData(FrameDivision.LevelByInnerHubs, 4, "0.23000 0.25318 0.29524 0.29859 0.31752 0.34289")]
    [InlineData(FrameDivision.LevelByEdgeHubs, 4, "0.22219 0.25958 0.30906 0.31287 0.32492 0.32942")]
    public void Divide_OtherDivisions_HaveTheirFactors(FrameDivision division, int frequency, string factors)
    {
        var struts = Struts(Ball.Divide(Wish(FrameFamily.Icosahedron, frequency, division)));

        Assert.Equal(factors, string.Join(' ', struts.Select(strut => strut.Length.ToString("0.00000", Plain)).Distinct().Order(StringComparer.Ordinal)));
    }

    [Theory]
    [InlineData(FrameDivision.LevelByEdgeHubs, 3, 4, "30 30 50 10", 0.187592)]
    [InlineData(FrameDivision.LevelByEdgeHubs, 3, 5, "30 35 80 20", -0.187592)]
    [InlineData(FrameDivision.LevelByInnerHubs, 4, 5, "", 0.251148)]
    [InlineData(FrameDivision.LevelByInnerHubs, 4, 7, "", -0.251148)]
    [InlineData(FrameDivision.LevelByEdgeHubs, 4, 7, "", -0.276393)]
    public void Build_LevelBase_IsLevelTo1e9(FrameDivision division, int frequency, int rows, string counts, double height)
    {
        var frame = FrameBuilder.Build(Wish(FrameFamily.Icosahedron, frequency, division) with { Rows = rows });

        // Own calculation: heights of the base ring over the middle of the ball, counts of the 3V by class.
        Assert.All(frame.Base, hub => Assert.Equal(0, frame.Hubs[hub].Position.Z, 1e-9));
        Assert.Equal(1 - height, frame.Hubs.Max(hub => hub.Position.Z), 0.0000006);
        if (counts.Length > 0)
        {
            Assert.Equal(counts, string.Join(' ', frame.Classes.Select(own => own.Count.ToString(Plain))));
        }
    }

    [Fact]
    public void Build_EqualArc3V_HasARaiseOf4538Thousandths()
    {
        // 4.538 in at a sphere radius of 144 in (own calculation).
        var frame = FrameBuilder.Build(Wish(FrameFamily.Icosahedron, 3, FrameDivision.EqualArc) with { Rows = 5, Size = new Measure(144, "144 in") });

        Assert.Equal(4.538, frame.Base.Max(hub => frame.Hubs[hub].Position.Z), 0.0006);
    }

    [Theory]
    [InlineData(FrameFamily.Icosahedron, 2, FrameUp.Edge, 0.8506508)]
    [InlineData(FrameFamily.Icosahedron, 3, FrameUp.Face, 1.0)]
    [InlineData(FrameFamily.Octahedron, 4, FrameUp.Face, 0.9428090)]
    public void Divide_EdgeOrFaceUp_StandsOnIt(FrameFamily family, int frequency, FrameUp up, double expected)
    {
        var ball = Ball.Divide(Wish(family, frequency, FrameDivision.EqualChord) with { Up = up });

        // Edge up: two corners at cos(atan(2) / 2) = 0.8506508. Face up, 3V: the hub in the middle of the face is the top.
        // Octahedron 4V face up: three inner hubs (2, 1, 1) / sqrt 6, and (4 / sqrt 6) / sqrt 3 = 0.9428090.
        Assert.Contains(ball.Points, point => Math.Abs(point.Z - expected) < 1e-7);
        Assert.True(up == FrameUp.Edge || Math.Abs(ball.Points.Max(point => point.Z) - expected) < 1e-7);
        Assert.All(Enumerable.Range(1, ball.MostRows), rows => Assert.True(
            ball.Above(new FrameWish(family, frequency, rows, "", default, default), out var trouble) is not null || trouble.Length > 0));
    }

    [Fact]
    public void Above_NamedHubs_CutAsRowsDo()
    {
        var wish = Wish(FrameFamily.Icosahedron, 3, FrameDivision.EqualChord);
        var ball = Ball.Divide(wish);
        var loop = ball.Names.Where(name => name.StartsWith("T5.", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

        var named = FrameBuilder.Build(wish with { CutHubs = [.. loop] });
        var rows = FrameBuilder.Build(wish with { Rows = 5 });

        Assert.Equal(rows.Hubs.AsEnumerable(), named.Hubs);
        Assert.Equal(rows.Facets.Length, named.Facets.Length);
    }

    [Theory]
    [InlineData("T5.01 T5.02 T5.03", "no strut runs from T5.03 to T5.01")]
    [InlineData("T5.01 T5.02 T9.9", "\"T9.9\" is no hub of the ball")]
    [InlineData("T5.01 T5.02 T5.01", "\"T5.01\" is no hub of the ball, or named twice")]
    public void Above_HubsThatMakeNoCut_SaysWhy(string names, string said)
    {
        var wish = Wish(FrameFamily.Icosahedron, 3, FrameDivision.EqualChord) with { CutHubs = [.. names.Split(' ')] };

        Assert.Null(Ball.Divide(wish).Above(wish, out var trouble));

        Assert.Contains(said, trouble, StringComparison.Ordinal);
    }

    private static TheoryData<FrameFamily, int, FrameDivision> MakeAll()
    {
        var all = new TheoryData<FrameFamily, int, FrameDivision>();
        foreach (var (family, frequency, division) in
            from family in Enum.GetValues<FrameFamily>()
            from frequency in Enumerable.Range(1, 12)
            from division in Enum.GetValues<FrameDivision>()
            where StrutFamily.IsDivisible(family, division, frequency)
            select (family, frequency, division))
        {
            all.Add(family, frequency, division);
        }

        return all;
    }

    private static FrameWish Wish(FrameFamily family, int frequency, FrameDivision division) =>
        new(family, frequency, 0, "", FrameMeasure.Radius, new Measure(1, "1")) { Division = division };

    /// <summary>Each strut once, with the angle between its facets in degrees.</summary>
    private static (double Length, double Dihedral)[] Struts(Ball ball)
    {
        var left = new Dictionary<(int, int), Point3>();
        foreach (var facet in ball.Facets)
        {
            var normal = Point3.Cross(ball.Points[facet[1]] - ball.Points[facet[0]], ball.Points[facet[2]] - ball.Points[facet[0]]).Unit();
            for (var i = 0; i < 3; i++)
            {
                left.Add((facet[i], facet[(i + 1) % 3]), normal);
            }
        }

        return [.. left.Where(side => side.Key.Item1 < side.Key.Item2).Select(side =>
        {
            var (from, to) = side.Key;
            var other = left[(to, from)];
            var along = (ball.Points[to] - ball.Points[from]).Unit();
            var bend = Math.Atan2(Point3.Dot(Point3.Cross(other, side.Value), along), Point3.Dot(side.Value, other));
            return (Point3.Distance(ball.Points[from], ball.Points[to]), 180 + Degrees(bend));
        })];
    }

    private static double Angle(Point3 at, Point3 one, Point3 other) => Math.Atan2(Point3.Cross(one - at, other - at).Length, Point3.Dot(one - at, other - at));

    private static double Degrees(double radians) => radians * 180 / Math.PI;
}
