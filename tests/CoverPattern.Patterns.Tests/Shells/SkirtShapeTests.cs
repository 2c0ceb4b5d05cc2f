using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;
using CsCheck;

namespace CoverPattern.Patterns.Tests.Shells;

/// <summary>The tables are of the 24 ft 3V 5/8, R = 3657.6 mm, at stand-off 0 without ease: own calculation made apart from this project.</summary>
public class SkirtShapeTests
{
    private const double TwelveFeet = 3657.6;

    [Fact]
    public void Fit_SlopeDownToTheDeck_IsTheTable()
    {
        // C: triangle of chord 1508.436, mitre 58.497 and bottom edge 1508.794; B: trapezoid 1476.018 over 1470.129, mitres 58.497.
        var skirt = Skirt(Bare(SkirtShape.Slope, 0));

        Assert.Equal(10, skirt.Count(face => Sides(face) == "58.497 1508.436 1508.794"));
        Assert.Equal(5, skirt.Count(face => Sides(face) == "58.497 58.497 1470.129 1476.018"));
        var trapezoid = skirt.First(face => face.Chart.Length == 4).Chart;
        Assert.Equal(58.423, trapezoid[2].Y, 0.001);
        Assert.Equal(2.945, Math.Abs(trapezoid[3].X), 0.001);
    }

    [Fact]
    public void Fit_SlopeDownToTheDeck_HasItsCornersOnTheTablesCircle()
    {
        // 3599.861 from the middle, 3.460 inside the high hubs' 3603.321.
        var shell = Jobs.Shell(Bare(SkirtShape.Slope, 0));

        var feet = shell.Nodes.Where(node => node.Label.EndsWith('f')).ToArray();

        Assert.Equal(10, feet.Length);
        Assert.All(feet, foot => Assert.Equal(3599.861, foot.Position.Plan.Length, 0.001));
        Assert.All(feet, foot => Assert.Equal(0, foot.Position.Z, 1e-9));
    }

    [Theory]
    [InlineData(3, 5)]
    [InlineData(4, 7)]
    [InlineData(2, 3)]
    public void Fit_Slope_SkirtLiesInItsFacetsPlane(int frequency, int rows)
    {
        var shell = Jobs.Shell(Jobs.Dome(frequency, rows, TwelveFeet) with { Skirt = new SkirtWish(Jobs.Mm(60), SkirtShape.Slope) });

        foreach (var skirt in shell.Faces.Where(face => face.Kind == FaceKind.Skirt))
        {
            var facet = shell.Faces.Single(face => face.Label + "k" == skirt.Label);
            Point3 At(int node) => shell.Nodes[node].Position;
            var normal = Point3.Cross(At(facet.Nodes[1]) - At(facet.Nodes[0]), At(facet.Nodes[2]) - At(facet.Nodes[0])).Unit();
            Assert.All(skirt.Nodes, node => Assert.Equal(0, Point3.Dot(normal, At(node) - At(facet.Nodes[0])), 1e-8));
        }
    }

    [Theory]
    [InlineData(20)]
    [InlineData(60)]
    public void Cut_Chords_HemIsAsLongAsTheBaseChords(double drop)
    {
        // 10 x 1508.436 + 5 x 1476.018.
        var job = Bare(SkirtShape.Chords, drop);
        var shell = Jobs.Shell(job);

        var cut = Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)));

        Assert.Equal(22_464.452, cut.Arcs.Where(arc => arc.Role == EdgeRole.Hem).Sum(arc => arc.LengthMm), 0.001);
        Assert.All(shell.Faces.Where(face => face.Kind == FaceKind.Skirt), face => Assert.Equal(4, face.Chart.Length));
    }

    [Fact]
    public void Fit_RaiseMeasured_KeepsTheChordOnAShorterStep()
    {
        // 1508.436 with 38.1 of rise: plan 1507.955, ten right triangles; five rectangles 1476.018 x 38.1.
        var job = Bare(SkirtShape.Vertical, 0) with { Deck = Raised(38.1) };

        var skirt = Skirt(job);

        Assert.Equal(10, skirt.Count(face => Sides(face) == "38.100 1507.955 1508.436"));
        Assert.Equal(5, skirt.Count(face => Sides(face) == "38.100 38.100 1476.018 1476.018"));
    }

    [Fact]
    public void Fit_RaiseMeasuredOnTheSlope_MakesMitresOfItsHeight()
    {
        // 58.497 of mitre on 58.350 of height: by rule of three 38.196 on 38.1.
        var skirt = Skirt(Bare(SkirtShape.Slope, 0) with { Deck = Raised(38.1) });

        Assert.All(skirt, face => Assert.Contains("38.196", Sides(face), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(DeckDatum.Mean, null, -38.90, 19.45)]
    [InlineData(DeckDatum.Lowest, 150.0, 150, 208.35)]
    [InlineData(DeckDatum.Lowest, null, 0, 58.35)]
    public void Fit_Datum_SetsTheHeightsOverTheDeck(DeckDatum datum, double? plinth, double low, double high)
    {
        // The mean plane of five low and ten high hubs lies two thirds of 58.350 above the low ones.
        var deck = new DeckWish(datum) { Plinth = plinth is { } height ? Jobs.Mm(height) : null };
        var job = Bare(SkirtShape.Vertical, 200) with { Deck = deck };

        var above = Jobs.Shell(job).Nodes.Take(15).Select(node => node.AboveHem - 200).Order().ToArray();

        Assert.All(above[..5], height => Assert.Equal(low, height, 0.005));
        Assert.All(above[5..], height => Assert.Equal(high, height, 0.005));
    }

    [Fact]
    public void Fit_TiltedDeck_HangsAsFarBelowItAllRound()
    {
        // A deck falling by 3 % to the left, highest hub contact at the deck: every foot lies 60 below the plane z = c - 0.03 y.
        var deck = new DeckWish(DeckDatum.Lowest) { Tilt = new DeckTilt(0.03, 90) };
        var shell = Jobs.Shell(Jobs.Dome(2, 3, TwelveFeet, standOff: 0) with { Deck = deck });
        double Over(Point3 at) => at.Z + (0.03 * at.Y);

        var feet = shell.Nodes.Where(node => node.Label.EndsWith('f')).Select(node => Over(node.Position)).ToArray();

        Assert.Equal(10, feet.Length);
        Assert.All(feet, foot => Assert.Equal(shell.Nodes.Take(10).Min(node => Over(node.Position)) - 60, foot, 1e-9));
    }

    [Fact]
    public void Fit_GroundBelowHubs_HemFollowsIt()
    {
        var frame = FrameBuilder.Build(Jobs.Dome(2, 3, TwelveFeet).Frame);
        ImmutableArray<HubHeight> ground = [.. frame.Base.Select(hub => new HubHeight(frame.Hubs[hub].Label, Jobs.Mm(-10 * hub)))];
        var shell = Jobs.Shell(Jobs.Dome(2, 3, TwelveFeet, standOff: 0) with { Deck = new DeckWish(DeckDatum.Lowest) { Ground = ground } });

        var feet = shell.Nodes.Where(node => node.Label.EndsWith('f')).OrderBy(node => node.Label, StringComparer.Ordinal).Select(node => node.Position.Z);

        Assert.Equal(Enumerable.Range(0, 10).Select(hub => -60.0 - (10 * hub)), feet.Select(z => Math.Round(z, 9)));
    }

    /// <summary>Every edge has one length on both its faces; every skirt has the heights, the plan and the area that were asked.</summary>
    [Fact]
    public void Fit_RandomHeights_SkirtClosesWithLevelEdge() => Gen.Select(Frames, Gen.Double[0, 60], Gen.Double[-0.02, 0.02], Gen.Double[0, 200], Gen.Enum<SkirtShape>(), Gen.Int[0, 10_000])
        .Sample((size, standOff, ease, drop, shape, seed) =>
        {
            var job = Jobs.Dome(size.Frequency, size.Rows, size.Radius, standOff) with { Ease = ease, Skirt = new SkirtWish(Jobs.Mm(drop), shape) };
            var frame = FrameBuilder.Build(job.Frame);
            var random = new Random(seed);
            double[] measured = [.. frame.Base.Select(hub => frame.Hubs[hub].Position.Z + (random.NextDouble() * 80) - 20)];
            job = job with { Deck = new DeckWish(DeckDatum.Lowest) { Heights = [.. measured.Select((height, hub) => new HubHeight(frame.Hubs[hub].Label, Jobs.Mm(height)))] } };
            if (!DeckCheck.Faults(job, frame).IsEmpty)
            {
                return;
            }

            var shell = ShellFitter.Fit(job, frame);

            var moved = StandOff.Move(frame, standOff);
            double Height(int hub) => (1 + ease) * (shape == SkirtShape.Chords ? drop : measured[hub] + moved[hub].Z - frame.Hubs[hub].Position.Z + drop);
            AssertEdgesAgree(shell);
            foreach (var face in shell.Faces.Where(face => face.Kind == FaceKind.Skirt && face.Chart.Length == 4 && face.Nodes.All(node => shell.Nodes[node].AboveHem >= 0)))
            {
                var (from, to) = (face.Nodes[3], face.Nodes[2]);
                var chord = Point2.Distance(face.Chart[3], face.Chart[2]);
                Assert.Equal((1 + ease) * Point3.Distance(moved[from], moved[to]), chord, 1e-8);
                if (shape == SkirtShape.Vertical)
                {
                    // First edge on +x is the finished edge: corners above it stand at their heights, square over its ends.
                    Assert.Equal(Height(from), face.Chart[3].Y, 1e-8);
                    Assert.Equal(Height(to), face.Chart[2].Y, 1e-8);
                    Assert.Equal(0, face.Chart[3].X, 1e-8);
                    Assert.Equal(Math.Sqrt((chord * chord) - Math.Pow(Height(to) - Height(from), 2)), face.Chart[1].X, 1e-8);
                    Assert.Equal(face.Chart[1].X * (Height(from) + Height(to)) / 2, Rings.SignedArea(face.Chart), 1e-3);
                }
            }
        });

    private static readonly Gen<(int Frequency, int Rows, double Radius)> Frames =
        from frequency in Gen.Int[1, 6]
        from rows in Gen.Int[frequency, Math.Min((3 * frequency) - 1, 2 * frequency)]
        from radius in Gen.Double[2000, 8000]
        select (frequency, rows, radius);

    private static void AssertEdgesAgree(Shell shell)
    {
        foreach (var face in shell.Faces)
        {
            for (var i = 0; i < face.Edges.Length; i++)
            {
                Assert.Equal(shell.Edges[face.Edges[i]].LengthMm, Point2.Distance(face.Chart[i], face.Chart[(i + 1) % face.Chart.Length]), 1e-3);
            }
        }
    }

    private static Job Bare(SkirtShape shape, double drop) =>
        Jobs.Dome(3, 5, TwelveFeet, standOff: 0) with { Skirt = new SkirtWish(Jobs.Mm(drop), shape) };

    private static DeckWish Raised(double raise) => new(DeckDatum.Lowest) { Raise = Jobs.Mm(raise) };

    private static ShellFace[] Skirt(Job job) => [.. Jobs.Shell(job).Faces.Where(face => face.Kind == FaceKind.Skirt)];

    /// <summary>Side lengths, shortest first.</summary>
    private static string Sides(ShellFace face) => string.Join(' ', face.Chart
        .Select((corner, i) => Point2.Distance(corner, face.Chart[(i + 1) % face.Chart.Length])).Order()
        .Select(length => FormattableString.Invariant($"{length:0.000}")));
}
