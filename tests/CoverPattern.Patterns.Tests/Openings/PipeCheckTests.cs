using System;
using System.Globalization;
using System.Linq;
using System.Text.RegularExpressions;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Tests.Openings;

public class PipeCheckTests
{
    [Fact]
    public void Lay_PipeInTheMiddleOfAFacet_NoFault() => Assert.Empty(Faults(Pipe("F4.02", 150, 150)));

    [Fact]
    public void Lay_ClearDistanceOverStruts_EveryStrutIsAFault()
    {
        // The clear distance of 18 in that codes ask of bare pipe: it reaches beyond all three struts of any facet here, and to no hub:
        // by hand a circumradius of a facet is 850 mm, less pipe 75, hub 50 and 457.
        var faults = Faults(Pipe("F4.02", 150, 457));

        Assert.Equal(3, faults.Length);
        Assert.All(faults, fault => Assert.Contains("inside its clear distance", fault.Said, StringComparison.Ordinal));
        Assert.All(faults, fault => Assert.StartsWith("strut H", fault.Said, StringComparison.Ordinal));
        Assert.All(faults, fault => Assert.Equal("pipes[0]", fault.Place));
    }

    [Fact]
    public void Lay_PipeAtAHub_HubAndItsStrutsAreFaults()
    {
        var pipe = Pipe("F4.02", 150, 150);
        var faults = Faults(pipe with { Place = new PipePlace(PipeRun.Vertical, "", default, default) { Plan = (Mm(20), Mm(10)) } });

        // The top hub has five struts.
        Assert.Equal(5, faults.Count(fault => fault.Said.StartsWith("strut", StringComparison.Ordinal)));
        Assert.Single(faults, fault => fault.Said.StartsWith("hub", StringComparison.Ordinal));
        Assert.Single(faults, fault => fault.Said.StartsWith("patch or rain flap round hub", StringComparison.Ordinal));
    }

    [Fact]
    public void Lay_WindowOnTheOtherSide_IsNotInTheWay()
    {
        var window = new WindowWish(["F2.14"], null, Mm(300), Mm(35), Mm(20), Mm(12), "canvas");
        var job = Job(Pipe("F2.06", 130, 150) with { Place = new PipePlace(PipeRun.Level, "F2.06", default, default) }) with { Windows = [window] };

        Assert.Empty(Faults(job));
    }

    [Fact]
    public void Lay_WindowBesideIt_IsAFaultWithDistanceAndLimit()
    {
        var window = new WindowWish(["F4.02"], null, Mm(120), Mm(35), Mm(20), Mm(12), "canvas") { Up = Mm(230) };

        var fault = Faults(Job(Pipe("F4.02", 150, 150) with { Place = new PipePlace(PipeRun.Vertical, "F4.02", default, Mm(-40)) }) with { Windows = [window] })
            .Single(fault => fault.Said.StartsWith("W4.02", StringComparison.Ordinal));

        // By hand: middles 270 mm apart up a slope of 33 degrees less ring 95 are 226.4 mm - 75 in plan, less the slope's share of the ring.
        Assert.Contains("inside its clear distance", fault.Said, StringComparison.Ordinal);
        Assert.Contains("150 mm", fault.Allowed, StringComparison.Ordinal);
    }

    // Its rim is farther off than the clear distance all round, its sheet is not.
    [Theory]
    [InlineData(700, 700)]
    [InlineData(1300, 600)]
    public void Lay_AmidALargeWindow_IsAFault(double width, double height)
    {
        var window = new OpeningWish(new OutlineWish(OutlineForm.Rectangle) { Width = Mm(width), Height = Mm(height) }, new OpeningPlace("F4.02", default, default), LayingRule.Either, Mm(15)) { Sheet = "canvas" };
        var job = Job(Pipe("F4.02", 60, 50) with { RainFlap = Mm(20), Lap = Mm(20) });

        Assert.Empty(Faults(job));
        Assert.Single(Faults(job with { Openings = [window] }), fault => fault.Place == "pipes[0]" && fault.Said.StartsWith("O1 lies 0 mm from the wall of the pipe of 60 mm, inside its clear distance", StringComparison.Ordinal));
    }

    // By hand: the vent's lower edge is 270 mm up a slope of 23.7 degrees (own table of the 3V) from the pipe's axis, 247 mm in plan and 217 mm from its wall. A hood that stands
    // off by 120 mm reaches sqrt(40^2 + 40^2 + 120^2) = 133 mm from the rim at most.
    [Theory]
    [InlineData(0, false)]
    [InlineData(120, true)]
    public void Lay_HoodThatReachesTowardsIt_IsAFault(double hood, bool refused)
    {
        var vent = new OpeningWish(new OutlineWish(OutlineForm.Rectangle) { Width = Mm(100), Height = Mm(100) }, new OpeningPlace("F4.02", default, Mm(200)), LayingRule.Either, Mm(15))
        {
            Kind = OpeningKind.HighVent,
            Hood = hood > 0 ? Mm(hood) : null,
        };
        var pipe = Pipe("F4.02", 60, 100) with { RainFlap = Mm(20), Lap = Mm(20), Place = new PipePlace(PipeRun.Vertical, "F4.02", default, Mm(-120)) };

        var faults = Faults(Job(pipe) with { Openings = [vent] }).Where(fault => fault.Place == "pipes[0]").ToArray();

        Assert.Equal(refused ? 1 : 0, faults.Length);
        Assert.All(faults, fault => Assert.StartsWith("O1 lies 85 mm from the wall of the pipe", fault.Said, StringComparison.Ordinal));
    }

    // A level pipe out above a base vent: its flap turns about the head, which is the nearest of the rim.
    [Theory]
    [InlineData(OpensAt.Both, 1200, true)]
    [InlineData(OpensAt.Both, 1500, false)]
    [InlineData(OpensAt.Around, 1200, false)]
    public void Lay_FlapThatReachesIt_IsWarnedOf(OpensAt opens, double above, bool isWarned)
    {
        var vent = new OpeningWish(new OutlineWish(OutlineForm.Rectangle) { Width = Mm(300), Height = Mm(600) }, new OpeningPlace("", default, default) { Above = Mm(200), Towards = 12 }, LayingRule.Either, Mm(15))
        {
            Kind = OpeningKind.BaseVent,
            Held = JoinKind.Zip,
            Opens = opens,
            Flap = "canvas",
            Lap = Mm(20),
        };
        var pipe = Pipe("", 100, 200) with { Place = new PipePlace(PipeRun.Level, "", default, default) { Above = Mm(above), Towards = 12 } };
        var job = Job(pipe) with { Openings = [vent] };
        var shell = Jobs.Shell(job);
        var laid = OpeningLayer.Lay(job, FrameBuilder.Build(job.Frame), shell);

        var text = string.Concat(laid.Notices.Where(notice => notice.Code == "pipe-flap").Select(notice => notice.Text));

        // Points of the rim 20 mm apart, held against the pipe's line one by one; the flap is as long as the longer of two jambs that differ by a few millimetres.
        var (axis, rim) = (laid.Pipes[0].Axis, laid.Openings[0].Region);
        var nearest = RimPoints.InSpace(shell, rim).Min(point => (point - axis.Foot) is var away ? (away - (Point3.Dot(away, axis.Outward) * axis.Outward)).Length : 0);
        var jamb = (rim.Rim.SelectMany(RimPoints.Steps).Sum(step => Point2.Distance(step.From, step.To)) - 300) / 2;
        Assert.Equal(isWarned, nearest - jamb - 50 < 200 && opens == OpensAt.Both);
        Assert.Equal(isWarned, text.Contains("The flap of O1 reaches", StringComparison.Ordinal));
        if (isWarned)
        {
            var told = Regex.Matches(text, "[0-9]+ mm").Select(number => double.Parse(number.Value[..^3], CultureInfo.InvariantCulture)).ToArray();
            Assert.InRange(told[0], jamb - 0.5, jamb + 20);
            Assert.Equal(nearest - told[0] - 50, told[1], 1.0);
        }
    }

    [Fact]
    public void Lay_ZipBesideIt_IsAFault()
    {
        var zip = MakeUp.Of(MakeUpForm.Zip, Mm(20));
        var job = Job(Pipe("F4.02", 150, 330)) is var made ? made with { Seam = made.Seam with { MakeUp = zip } } : null!;
        var (frame, shell) = (FrameBuilder.Build(job.Frame), Jobs.Shell(job));

        var faults = PipeSeamCheck.Faults(job, shell, SeamPlanner.Plan(job, shell, PanelPlanner.Plan(job, frame, shell)), OpeningLayer.Lay(job, frame, shell).Pipes);

        Assert.Contains(faults, fault => fault.Said.StartsWith("the zip over strut", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(400, 1)]
    [InlineData(10, 0)]
    public void Lay_ZipInAPartOfASeam_IsAFaultOnlyWhereItComesNear(double from, int faults)
    {
        // By hand: the strut's axis lies some 400 mm from the pipe's at its middle (325 mm wall to wall, and the tube's radius), so 360 mm reach its zip there; 260 mm
        // from the hub, half a metre from the middle, it is more than 600 mm away.
        var job = Job(Pipe("F4.02", 150, 360)) is var made ? made with { Seam = made.Seam with { Zips = [new SeamZip("H3.02-H4.01", Mm(from), Mm(from == 400 ? 700 : 250))] } } : null!;
        var (frame, shell) = (FrameBuilder.Build(job.Frame), Jobs.Shell(job));

        var found = PipeSeamCheck.Faults(job, shell, SeamPlanner.Plan(job, shell, PanelPlanner.Plan(job, frame, shell)), OpeningLayer.Lay(job, frame, shell).Pipes);

        Assert.Equal(faults, found.Count(fault => fault.Said.StartsWith("the zip over strut H3.02-H4.01", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(PipeRun.Vertical, "F1.04", "runs under")]
    [InlineData(PipeRun.Level, "F5.01", "runs under")]
    [InlineData(PipeRun.Vertical, "F9.01", "\"F9.01\"")]
    public void Lay_PipeAlongItsFacetOrNowhere_SaysSo(PipeRun run, string facet, string said)
    {
        var fault = Assert.Single(Faults(Pipe(facet, 100, 100) with { Place = new PipePlace(run, facet, default, default) }));

        Assert.Contains(said, fault.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void Lay_PipeOffThePlan_SaysSo()
    {
        var fault = Assert.Single(Faults(Pipe("F4.02", 100, 100) with { Place = new PipePlace(PipeRun.Vertical, "", default, default) { Plan = (Mm(9000), Mm(0)) } }));

        Assert.Equal(("pipes[0].x", "x 9000 mm, y 0 mm"), (fault.Place, fault.Said));
    }

    [Fact]
    public void Ordinates_OneFacet_AreThoseOfTheClosedForm()
    {
        var job = Job(Pipe("F4.02", 150, 150));
        var (frame, shell) = (FrameBuilder.Build(job.Frame), Jobs.Shell(job));
        var pipe = Assert.Single(OpeningLayer.Lay(job, frame, shell).Pipes);

        var ordinates = PipePieces.Ordinates(shell, pipe);

        // r tan t (1 - cos(30 k degrees)) [Apostol Mnatsakanian 2007]; r = 75 + 3.
        Assert.All(ordinates.Index(), entry => Assert.Equal(78 * Math.Tan(pipe.Tilt) * (1 - Math.Cos(entry.Index * Math.PI / 6)), entry.Item, 0.02));
        // Own table of facet inclinations of the 3V: 32.447 degrees in that ring of facets, at stand-off 0; the offset moves planes without turning them.
        Assert.Contains(Math.Round(pipe.Tilt * 180 / Math.PI, 1), new[] { 23.7, 32.4, 45.5 });
    }

    private static Measure Mm(double millimetres) => new(millimetres, FormattableString.Invariant($"{millimetres} mm"));

    private static PipeWish Pipe(string facet, double diameter, double clear) => new(new PipePlace(PipeRun.Vertical, facet, default, default), Mm(diameter), Mm(clear), "heat")
    {
        Gap = Mm(3),
        Sleeve = Mm(150),
        TurnUnder = Mm(15),
        Lap = Mm(40),
        RainFlap = Mm(60),
        ClosingFlap = Mm(40),
    };

    private static Job Job(PipeWish pipe) => Jobs.Dome(3, 5, 3657.6) is var job
        ? job with { Cloths = [.. job.Cloths, job.Cloths[0] with { Name = "heat", ServiceTemperature = 550 }], Pipes = [pipe] }
        : null!;

    private static Fault[] Faults(PipeWish pipe) => Faults(Job(pipe));

    private static Fault[] Faults(Job job) => [.. OpeningLayer.Lay(job, FrameBuilder.Build(job.Frame), Jobs.Shell(job)).Faults];
}
