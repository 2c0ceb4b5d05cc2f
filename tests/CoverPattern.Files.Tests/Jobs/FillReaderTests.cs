using System;
using CoverPattern.Files.Jobs;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

public class FillReaderTests
{
    private const string Head = "\"schemaVersion\": 1, \"date\": \"2026-03-01\", \"frame\": { \"frequency\": 3, \"cut\": \"5/8\", \"size\": { \"radius\": \"12 ft\" } }, "
        + "\"cloths\": [ { \"name\": \"canvas\", \"rollWidth\": \"2 m\" }, { \"name\": \"clear\", \"rollWidth\": \"1.4 m\" }, { \"name\": \"mesh\", \"rollWidth\": \"1.6 m\" } ]";

    private const string Place = "\"outline\": \"rounded\", \"width\": 900, \"height\": 600, \"corner\": 160, \"facet\": \"F1.04\", ";

    [Fact]
    public void Read_Door_TakesWishesAndAssumesTheRest()
    {
        var job = Read(Place + "\"kind\": \"door\", \"opens\": \"middle\", \"screen\": \"mesh\", \"doubled\": [\"H0.02-H1.01\"]").Job!;

        var door = Assert.Single(job.Openings);
        Assert.Equal((OpeningKind.Door, OpensAt.Middle, JoinKind.Zip, "canvas", "mesh"), (door.Kind, door.Opens, door.Held, door.Flap, door.Screen));
        Assert.Equal((80.0, 80.0, 38.0, 20.0), (door.Strip!.Value.Millimetres, door.Drip!.Value.Millimetres, door.Webbing!.Value.Millimetres, door.Lap.Millimetres));
        Assert.Null(door.Threshold);
        Assert.Equal("H0.02-H1.01", Assert.Single(door.Doubled));
        Assert.Contains(job.Assumed, assumption => assumption.Place == "openings[0].held" && assumption.Value == "zip");
        Assert.Contains(job.Assumed, assumption => assumption.Place == "notions.zipRadius" && assumption.Value == "150 mm");
    }

    [Fact]
    public void Read_VentByHookAndLoop_LapsFartherAndAsksForNoZips()
    {
        var job = Read(Place + "\"kind\": \"baseVent\", \"held\": \"hookLoop\", \"drip\": \"0 mm\"").Job!;

        var vent = Assert.Single(job.Openings);
        Assert.Equal((OpensAt.Both, 40.0), (vent.Opens, vent.Lap.Millimetres));
        Assert.Equal((null, null, null), (vent.Drip, vent.Strip, vent.Webbing));
        Assert.Contains(job.Assumed, assumption => assumption.Place == "notions.hookLoop");
        Assert.DoesNotContain(job.Assumed, assumption => assumption.Place.StartsWith("notions.zip", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_WindowByZip_HasNoLapAndAssumesNothingOfFlaps()
    {
        var job = Read(Place + "\"sheet\": \"clear\", \"screen\": \"mesh\", \"held\": \"zip\"").Job!;

        Assert.Equal((JoinKind.Zip, 0.0, true), (job.Openings[0].Held, job.Openings[0].Lap.Millimetres, job.Openings[0].HasZips));
        Assert.DoesNotContain(job.Assumed, assumption => assumption.Place is "openings[0].lap" or "openings[0].strip" or "openings[0].drip");
    }

    [Fact]
    public void Read_HighVent_HasScreenHoodAndFlap()
    {
        var vent = Assert.Single(Read(Place + "\"kind\": \"highVent\", \"screen\": \"mesh\"").Job!.Openings);

        Assert.Equal((OpeningKind.HighVent, JoinKind.HookLoop, "canvas", "mesh", 150.0, 40.0), (vent.Kind, vent.Held, vent.Flap, vent.Screen, vent.Hood!.Value.Millimetres, vent.Lap.Millimetres));
    }

    [Fact]
    public void Read_Slit_IsALineWithZipAndStrip()
    {
        var job = Read("\"kind\": \"slit\", \"outline\": \"line\", \"height\": \"1.2 m\", \"facet\": \"F1.04\", \"turned\": 90").Job!;

        var slit = Assert.Single(job.Openings);
        Assert.Equal((OpeningKind.Slit, OutlineForm.Line, 1200.0, 80.0, true), (slit.Kind, slit.Outline.Form, slit.Outline.Height.Millimetres, slit.Strip!.Value.Millimetres, slit.HasZips));
    }

    [Theory]
    [InlineData("\"kind\": \"slit\", \"outline\": \"circle\", \"width\": 500, \"facet\": \"F1.04\"", "openings[0].kind", "\"slit\" with the outline \"circle\"")]
    [InlineData("\"outline\": \"line\", \"height\": 500, \"facet\": \"F1.04\"", "openings[0].kind", "\"window\" with the outline \"line\"")]
    [InlineData("\"kind\": \"slit\", \"outline\": \"line\", \"height\": 500, \"facet\": \"F1.04\", \"screen\": \"mesh\"", "openings[0].screen", "stated")]
    public void Read_WrongSlit_IsAFaultAtItsPlace(string opening, string place, string said)
    {
        var fault = Assert.Single(Read(opening).Faults);

        Assert.Equal((place, said), (fault.Place, fault.Said));
    }

    [Theory]
    [InlineData("\"kind\": \"door\", \"sheet\": \"clear\"", "openings[0].sheet", "stated")]
    [InlineData("\"flap\": \"canvas\"", "openings[0].flap", "stated")]
    [InlineData("\"threshold\": 100", "openings[0].threshold", "stated")]
    [InlineData("\"kind\": \"baseVent\", \"threshold\": 100", "openings[0].threshold", "stated")]
    [InlineData("\"kind\": \"baseVent\", \"doubled\": [\"H0.02-H1.01\"]", "openings[0].doubled", "stated")]
    [InlineData("\"kind\": \"door\", \"held\": \"sewn\"", "openings[0].held", "\"sewn\"")]
    [InlineData("\"kind\": \"door\", \"held\": \"hookLoop\", \"opens\": \"middle\"", "openings[0].opens", "\"middle\" held by hook and loop")]
    [InlineData("\"kind\": \"highVent\"", "openings[0].screen", "nothing")]
    [InlineData("\"kind\": \"highVent\", \"screen\": \"mesh\", \"held\": \"zip\"", "openings[0].held", "\"zip\"")]
    [InlineData("\"kind\": \"highVent\", \"screen\": \"mesh\", \"drip\": 80", "openings[0].drip", "stated")]
    [InlineData("\"sheet\": \"clear\", \"hood\": 80", "openings[0].hood", "stated")]
    [InlineData("\"kind\": \"gate\"", "openings[0].kind", "\"gate\"")]
    [InlineData("\"held\": \"zip\"", "openings[0].held", "stated")]
    [InlineData("\"sheet\": \"clear\", \"held\": \"zip\", \"lap\": 20", "openings[0].lap", "a lap beside a zip")]
    [InlineData("\"sheet\": \"clear\", \"screen\": \"mesh\"", "openings[0].screen", "\"mesh\" behind a sheet that is sewn in")]
    [InlineData("\"sheet\": \"clear\", \"ring\": 40", "openings[0].ring", "stated")]
    [InlineData("\"sheet\": \"clear\", \"held\": \"ring\", \"lap\": 31", "openings[0].lap", "31 mm")]
    [InlineData("\"sheet\": \"clear\", \"held\": \"ring\", \"ring\": 29", "openings[0].turnUnder", "15 mm")]
    [InlineData("\"sheet\": \"clear\", \"strip\": 80", "openings[0].strip", "80 mm")]
    public void Read_WrongFill_IsAFaultAtItsPlace(string fill, string place, string said)
    {
        var fault = Assert.Single(Read(Place + fill).Faults);

        Assert.Equal((place, said), (fault.Place, fault.Said));
    }

    private static JobReading Read(string opening) => JobReader.Read("{" + Head + ", \"openings\": [ { " + opening + " } ] }");
}
