using System;
using System.Linq;
using CoverPattern.Files.Jobs;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

public class OpeningReaderTests
{
    private const string Head = "\"schemaVersion\": 1, \"date\": \"2026-03-01\", \"frame\": { \"frequency\": 3, \"cut\": \"5/8\", \"size\": { \"radius\": \"12 ft\" } }, "
        + "\"cloths\": [ { \"name\": \"canvas\", \"rollWidth\": \"2 m\" }, { \"name\": \"clear\", \"rollWidth\": \"1.4 m\" } ]";

    [Fact]
    public void Read_RoundedByFacet_TakesWishesAndAssumesTheRest()
    {
        var reading = Read("\"outline\": \"rounded\", \"width\": \"3 ft\", \"height\": \"500 mm\", \"corner\": \"80 mm\", \"facet\": \"F2.07\", \"right\": \"-1 1/2 in\", \"turned\": 12, \"laid\": \"carried\", \"sheet\": \"clear\"");

        Assert.Empty(reading.Faults);
        var opening = Assert.Single(reading.Job!.Openings);
        Assert.Equal((OutlineForm.Rounded, 914.4, 500.0, 80.0), (opening.Outline.Form, opening.Outline.Width.Millimetres, opening.Outline.Height.Millimetres, opening.Outline.Corner.Millimetres));
        Assert.Equal(("F2.07", -38.1, 12.0, LayingRule.Carried), (opening.Place.Facet, opening.Place.Right.Millimetres, opening.Place.Turned, opening.Laid));
        Assert.Equal(("clear", 20.0, 15.0), (opening.Sheet, opening.Lap.Millimetres, opening.TurnUnder.Millimetres));
        Assert.Contains(reading.Job.Assumed, assumption => assumption.Place == "openings[0].lap" && assumption.Value == "20 mm");
        Assert.Contains(reading.Job.Assumed, assumption => assumption.Place == "clearances.hub");
    }

    [Fact]
    public void Read_PolygonByHeight_TakesItsCorners()
    {
        var opening = Assert.Single(Read("\"outline\": \"polygon\", \"points\": [\"-300 mm; 0 mm\", \"300 mm; -20 cm\", \"0 mm; 1 ft\"], \"above\": \"1.5 m\", \"towards\": 36").Job!.Openings);

        Assert.Equal([new Point2(-300, 0), new Point2(300, -200), new Point2(0, 304.8)], opening.Outline.Points.AsEnumerable());
        Assert.Equal((1500.0, 36.0), (opening.Place.Above!.Value.Millimetres, opening.Place.Towards));
        Assert.Null(opening.Sheet);
    }

    [Theory]
    [InlineData("\"outline\": \"circle\", \"width\": 500, \"height\": 400, \"facet\": \"F2.07\"", "openings[0].height", "stated")]
    [InlineData("\"outline\": \"arch\", \"width\": 500, \"facet\": \"F2.07\"", "openings[0].height", "nothing")]
    [InlineData("\"outline\": \"arch\", \"width\": 500, \"height\": 240, \"facet\": \"F2.07\"", "openings[0].height", "240 mm")]
    [InlineData("\"outline\": \"rounded\", \"width\": 500, \"height\": 300, \"corner\": 151, \"facet\": \"F2.07\"", "openings[0].corner", "151 mm")]
    [InlineData("\"outline\": \"circle\", \"width\": 500", "openings[0]", "neither facet nor above")]
    [InlineData("\"outline\": \"circle\", \"width\": 500, \"facet\": \"F2.07\", \"above\": 1500, \"towards\": 3", "openings[0]", "facet and above")]
    [InlineData("\"outline\": \"circle\", \"width\": 500, \"above\": 1500", "openings[0].towards", "nothing")]
    [InlineData("\"outline\": \"circle\", \"width\": 500, \"facet\": \"F2.07\", \"towards\": 3", "openings[0].towards", "stated")]
    [InlineData("\"outline\": \"facets\", \"facets\": [\"F2.07\"], \"margin\": 80, \"turned\": 3", "openings[0].turned", "stated")]
    [InlineData("\"outline\": \"circle\", \"width\": 500, \"facet\": \"F2.07\", \"lap\": 20", "openings[0].lap", "a lap without a sheet")]
    [InlineData("\"outline\": \"circle\", \"width\": 500, \"facet\": \"F2.07\", \"sheet\": \"klar\"", "openings[0].sheet", "\"klar\"")]
    [InlineData("\"outline\": \"polygon\", \"points\": [\"0 mm; 0 mm\", \"1 m, 0 mm\", \"0 mm; 1 m\"], \"facet\": \"F2.07\"", "openings[0].points[1]", "\"1 m, 0 mm\"")]
    [InlineData("\"outline\": \"oval\", \"facet\": \"F2.07\"", "openings[0].outline", "\"oval\"")]
    public void Read_WrongOpening_IsAFaultAtItsPlace(string opening, string place, string said)
    {
        var fault = Assert.Single(Read(opening).Faults);

        Assert.Equal((place, said), (fault.Place, fault.Said));
    }

    [Fact]
    public void Read_NoOpening_AssumesNothingOfThem()
    {
        var job = JobReader.Read("{" + Head + "}").Job!;

        Assert.Empty(job.Openings);
        Assert.DoesNotContain(job.Assumed, assumption => assumption.Place.StartsWith("openings", StringComparison.Ordinal));
    }

    private static JobReading Read(string opening) => JobReader.Read("{" + Head + ", \"openings\": [ { " + opening + " } ] }");
}
