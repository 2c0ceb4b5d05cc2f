using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Tests.Pieces;

public class SplashBandTests
{
    [Theory]
    [InlineData(SkirtShape.Vertical, false)]
    [InlineData(SkirtShape.Slope, false)]
    [InlineData(SkirtShape.Chords, false)]
    [InlineData(SkirtShape.Vertical, true)]
    public void Make_ThreeV_IsABandAllRound(SkirtShape shape, bool bands)
    {
        var job = Job(shape, 250);
        var (shell, cut, panels) = Flat(bands ? job with { Panels = [new PanelWish(PanelForm.Bands)] } : job);

        var band = SplashBand.Make(job, shell, cut, panels);

        // The foot: every hem arc once, whatever the panels; the side of one piece is as long as its neighbour's.
        var edges = band.SelectMany(piece => piece.Edges.Select((edge, i) => (edge, Length: Point2.Distance(piece.Corners[i], piece.Corners[(i + 1) % piece.Corners.Length])))).ToArray();
        var hem = cut.Arcs.Where(arc => arc.Role == EdgeRole.Hem).Sum(arc => arc.LengthMm);
        Assert.Equal(hem, edges.Where(entry => entry.edge.Allowance == 50).Sum(entry => entry.Length), 1e-6);
        var sides = edges.Where(entry => entry.edge.Allowance == 15).Select(entry => entry.Length).Order().ToArray();
        Assert.NotEmpty(sides);
        Assert.All(Enumerable.Range(0, sides.Length / 2), i => Assert.Equal(sides[2 * i], sides[(2 * i) + 1], 1e-6));
        Assert.All(band, piece => Assert.Equal(("coated", PieceKind.Strip), (piece.Cloth, piece.Kind)));
    }

    [Fact]
    public void Make_LowestPart_HasTheAreaOfThatPart()
    {
        // 2V 1/2 at stand-off 0 without skirt: base facets stand on the deck. Below height w a facet keeps 1 - (1 - w/h)^2 of its
        // area when it stands on its edge, (w/h)^2 when it hangs by its tip; h is the height of ring 1.
        var job = Job(SkirtShape.Vertical, 250);
        job = job with { Frame = Jobs.Dome(2, 3, 3657.6).Frame, StandOff = new StandOffWish(Jobs.Mm(0), Jobs.Mm(0), Jobs.Mm(0)), Skirt = job.Skirt with { Drop = Jobs.Mm(0) } };
        var (shell, cut, panels) = Flat(job);

        var band = SplashBand.Make(job, shell, cut, panels);

        double Area(ShellFace face) => Rings.SignedArea(face.Chart);
        var expected = shell.Faces.Where(face => face.Nodes.Any(node => shell.Nodes[node].AboveHem == 0)).Sum(face =>
        {
            var heights = face.Nodes.Select(node => shell.Nodes[node].AboveHem).Order().ToArray();
            // Triangles with one corner or one edge on the deck and two or one corners above.
            return heights[1] == 0
                ? Area(face) * (1 - Math.Pow(1 - (250 / heights[2]), 2))
                : Area(face) * 250 * 250 / (heights[1] * heights[2]);
        });
        Assert.Equal(expected, band.Sum(piece => Rings.SignedArea(piece.Corners)), 1e-3);
    }

    [Fact]
    public void Faults_BandOverTheSecondRing_AreTold()
    {
        var job = Jobs.Dome(6, 9, 1500);

        Assert.Empty(SplashCheck.Faults(job, Jobs.Shell(job), []));
        job = job with { Skirt = job.Skirt with { Splash = new SplashWish("coated", Jobs.Mm(350)) } };
        Assert.Equal("skirt.splash.width", Assert.Single(SplashCheck.Faults(job, Jobs.Shell(job), [])).Place);
    }

    [Fact]
    public void Finish_Band_IsCutFromItsOwnCloth()
    {
        var job = Job(SkirtShape.Vertical, 250);
        var (shell, cut, panels) = Flat(job);

        var finishing = PieceFinisher.Finish(job, shell, cut, panels, SplashBand.Make(job, shell, cut, panels));

        Assert.Empty(finishing.Faults);
        var patterns = finishing.Set.Patterns.Where(pattern => pattern.Cloth == "coated").ToArray();
        // Fifteen base facets with their skirts and fifteen tips of hanging facets between them.
        Assert.Equal(30, patterns.Sum(pattern => pattern.Quantity));
        Assert.All(patterns, pattern => Assert.Contains(pattern.Runs, run => run.Role == EdgeRole.Turned && run.AllowanceMm == 12));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Finish_Band_ItsUpperLineIsDrawnOnTheCloth(bool bands)
    {
        var job = Job(SkirtShape.Vertical, 250);
        job = bands ? job with { Panels = [new PanelWish(PanelForm.Bands)], Cloths = [.. job.Cloths.Select(cloth => cloth with { RollWidth = Jobs.Mm(6000) })] } : job;
        var (shell, cut, panels) = Flat(job);

        var set = PieceFinisher.Finish(job, shell, cut, panels, SplashBand.Make(job, shell, cut, panels)).Set;

        // Every upper edge of the band finds a line as long on the piece beneath.
        var upper = set.Patterns.Where(pattern => pattern.Cloth == "coated")
            .SelectMany(pattern => pattern.Runs.Where(run => run.Role == EdgeRole.Turned).SelectMany(run => Enumerable.Repeat(Math.Round(run.LengthMm, 1), pattern.Quantity))).Order();
        var drawn = set.Patterns.Where(pattern => pattern.Cloth == "canvas")
            .SelectMany(pattern => pattern.Lines.Where(line => line.Purpose == "splash line").SelectMany(line => Enumerable.Repeat(Math.Round(Point2.Distance(line.Path[0], line.Path[1]), 1), pattern.Quantity))).Order();
        Assert.NotEmpty(upper);
        Assert.Equal(upper, drawn);
    }

    [Theory]
    [InlineData(-200, true, false, false)]
    [InlineData(-21, true, false, false)]
    [InlineData(-19, true, true, false)]
    [InlineData(-19, false, false, false)]
    [InlineData(-1, true, true, false)]
    [InlineData(1, true, false, true)]
    [InlineData(1, false, false, true)]
    public void Faults_OpeningAboveTheBand_ItsSheetKeepsOffTheBandsStitches(double overRim, bool hasSheet, bool lapTold, bool rimTold)
    {
        // On the upright wall of 1 m under a 2V 1/2 a rectangle about the middle: its lower side lies level, 500 - 200 mm over the foot, below which the skirt drops 60 mm.
        // By hand: the rim is 360 mm over the finished edge, the sheet 20 mm lower.
        const double Rim = 500 - 200 + 60;
        var bare = Job(SkirtShape.Vertical, 250);
        var width = Rim + overRim;
        var job = bare with
        {
            Frame = Jobs.Dome(2, 3, 3657.6).Frame with { RiserMm = 1000 },
            StandOff = new StandOffWish(Jobs.Mm(0), Jobs.Mm(0), Jobs.Mm(0)),
            Ease = 0,
            Skirt = bare.Skirt with { Drop = Jobs.Mm(60), Splash = new SplashWish("coated", Jobs.Mm(width)) },
            Openings =
            [
                new OpeningWish(new OutlineWish(OutlineForm.Rectangle) { Width = Jobs.Mm(400), Height = Jobs.Mm(400) }, new OpeningPlace("F1.02", Jobs.Mm(0), Jobs.Mm(0)), LayingRule.Either, Jobs.Mm(15))
                {
                    Sheet = hasSheet ? "coated" : null,
                    Lap = Jobs.Mm(20),
                },
            ],
        };
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        var laid = OpeningLayer.Lay(job, frame, shell);

        var faults = SplashCheck.LapFaults(job, shell, laid.Openings);

        Assert.Equal(lapTold, faults.Any(fault => fault.Allowed.Contains("at most 340 mm", StringComparison.Ordinal) && fault.Place == "skirt.splash.width"));
        Assert.Equal(rimTold, laid.Faults.Any(fault => fault.Allowed.Contains("splash band", StringComparison.Ordinal)));
    }

    [Fact]
    public void Faults_WindowOverTheBand_ToldWithNumbers()
    {
        // 3V 5/8: the incentre of base facet F1.01 and its ring of 185 mm reach down to a height that the window's own check tells; here it is taken from the shell.
        var job = Jobs.Windowed(Job(SkirtShape.Vertical, 250), 300);
        job = job with { Windows = [job.Windows[0] with { Rows = new RowRange(1, 1) }] };
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        var windows = OpeningLayer.Lay(job, frame, shell).Windows;
        var lowest = windows.Min(window => window.Region.Rim[0].Points.Min(point => HeightAt(shell, window.Region.Centre with { At = point })) - (Steepness(shell, window.Region.Centre.Face) * 35));
        Job With(double width) => job with { Skirt = job.Skirt with { Splash = new SplashWish("coated", Jobs.Mm(width)) } };

        var fault = Assert.Single(SplashCheck.Faults(With(lowest + 60), shell, windows));

        Assert.Empty(SplashCheck.Faults(With(lowest - 1), shell, windows));
        Assert.Equal("skirt.splash.width", fault.Place);
        Assert.Contains(FormattableString.Invariant($"at most {lowest:0} mm"), fault.Allowed, StringComparison.Ordinal);
        Assert.Contains("60 mm lower than the band reaches", fault.Allowed, StringComparison.Ordinal);
        Assert.Contains("ring of window W1.", fault.Allowed, StringComparison.Ordinal);
    }

    /// <summary>Height of a point of a face above the edge, which lies level at z = -60 mm: by its place in space.</summary>
    private static double HeightAt(Shell shell, SurfacePoint point)
    {
        var nodes = shell.Faces[point.Face].Nodes.Select(node => shell.Nodes[node].Position).ToArray();
        var along = (nodes[1] - nodes[0]).Unit();
        var across = Point3.Cross(Point3.Cross(along, nodes[2] - nodes[0]).Unit(), along);
        return nodes[0].Z + (point.At.X * along.Z) + (point.At.Y * across.Z) + 60;
    }

    private static double Steepness(Shell shell, int face)
    {
        var nodes = shell.Faces[face].Nodes.Select(node => shell.Nodes[node].Position).ToArray();
        var normal = Point3.Cross(nodes[1] - nodes[0], nodes[2] - nodes[0]).Unit();
        return Math.Sqrt(1 - (normal.Z * normal.Z));
    }

    private static Job Job(SkirtShape shape, double width)
    {
        var job = Jobs.Dome(3, 5, 3657.6);
        return job with
        {
            Skirt = job.Skirt with { Shape = shape, Splash = new SplashWish("coated", Jobs.Mm(width)) },
            Cloths = [job.Cloths[0], job.Cloths[0] with { Name = "coated" }],
        };
    }

    private static (Shell Shell, Subdivision Cut, ImmutableArray<Panel> Panels) Flat(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        var cut = Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlanner.Plan(job, frame, shell)));
        return (shell, cut, PanelFlattener.Flatten(cut));
    }
}
