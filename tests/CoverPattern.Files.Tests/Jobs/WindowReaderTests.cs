using System;
using CoverPattern.Files.Jobs;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

public class WindowReaderTests
{
    private const string Frame = "\"schemaVersion\": 1, \"date\": \"2026-03-01\", \"frame\": { \"frequency\": 3, \"cut\": \"5/8\", \"size\": { \"radius\": \"12 ft\" } }, ";
    private const string Cloths = "\"cloths\": [ { \"name\": \"canvas\", \"rollWidth\": \"2 m\" }, { \"name\": \"clear\", \"rollWidth\": \"1.4 m\" } ]";

    [Fact]
    public void Read_Window_TakesWishesAndAssumesTheRest()
    {
        var reading = Read("\"rows\": \"2-3\", \"aperture\": \"2 ft\", \"pane\": \"clear\", \"right\": \"-1 1/2 in\"");

        Assert.Empty(reading.Faults);
        var window = Assert.Single(reading.Job!.Windows);
        Assert.Equal((new RowRange(2, 3), 609.6, 35.0, 20.0, 12.0), (window.Rows, window.Aperture.Millimetres, window.Ring.Millimetres, window.Lap.Millimetres, window.TurnUnder.Millimetres));
        Assert.Equal(("clear", null, -38.1), (window.Pane, window.Screen, window.Right.Millimetres));
        Assert.Contains(reading.Job.Assumed, assumption => assumption.Place == "windows[0].ring" && assumption.Value == "35 mm");
        Assert.Contains(reading.Job.Assumed, assumption => assumption.Place == "clearances.tube" && assumption.Value == "20 mm");
        Assert.Contains(reading.Job.Assumed, assumption => assumption.Place == "standOff.hubRadius" && assumption.Value == "50 mm");
    }

    [Fact]
    public void Read_NoWindow_AssumesNothingOfOpenings()
    {
        var job = JobReader.Read("{" + Frame + Cloths + "}").Job!;

        Assert.Empty(job.Windows);
        Assert.Equal(ClearanceWish.Usual, job.Clearances);
        Assert.DoesNotContain(job.Assumed, assumption => assumption.Place.StartsWith("clearances", StringComparison.Ordinal) || assumption.Place == "standOff.hubRadius");
    }

    [Fact]
    public void Read_UsualClearances_AreTheDefaultsOfTheKeys()
    {
        var job = Read("\"rows\": 2, \"aperture\": 500, \"pane\": \"clear\"").Job!;

        Assert.Equal(ClearanceWish.Usual, job.Clearances);
        Assert.Equal(new Measure(50, "50 mm"), job.StandOff.HubRadius);
    }

    [Theory]
    [InlineData("\"aperture\": 500, \"pane\": \"clear\"", "windows[0]", "neither facets nor rows")]
    [InlineData("\"rows\": 2, \"facets\": [\"F1.01\"], \"aperture\": 500, \"pane\": \"clear\"", "windows[0]", "facets and rows")]
    [InlineData("\"rows\": \"rest\", \"aperture\": 500, \"pane\": \"clear\"", "windows[0].rows", "\"rest\"")]
    [InlineData("\"rows\": \"3-2\", \"aperture\": 500, \"pane\": \"clear\"", "windows[0].rows", "\"3-2\"")]
    [InlineData("\"facets\": [\"F1.01\", \"F1.01\"], \"aperture\": 500, \"pane\": \"clear\"", "windows[0].facets", "a list in brackets")]
    [InlineData("\"rows\": 2, \"aperture\": 500, \"pane\": \"klar\"", "windows[0].pane", "\"klar\"")]
    [InlineData("\"rows\": 2, \"aperture\": 500, \"pane\": \"clear\", \"screen\": \"mesh\"", "windows[0].screen", "\"mesh\"")]
    [InlineData("\"rows\": 2, \"aperture\": 500, \"pane\": \"clear\", \"lap\": 31", "windows[0].lap", "31 mm")]
    [InlineData("\"rows\": 2, \"aperture\": 500, \"pane\": \"clear\", \"turnUnder\": 18", "windows[0].turnUnder", "18 mm")]
    [InlineData("\"rows\": 2, \"pane\": \"clear\"", "windows[0].aperture", "nothing")]
    public void Read_WrongWindow_IsAFaultAtItsPlace(string window, string place, string said)
    {
        var fault = Assert.Single(Read(window).Faults);

        Assert.Equal((place, said), (fault.Place, fault.Said));
    }

    [Fact]
    public void Read_Confirmed_KnowsTheWindowsPlaces()
    {
        var right = JobReader.Read("{" + Frame + Cloths + ", \"windows\": [ { \"rows\": 2, \"aperture\": 500, \"pane\": \"clear\" } ], \"confirmed\": [\"windows[0].ring\"] }");
        var wrong = JobReader.Read("{" + Frame + Cloths + ", \"windows\": [ { \"rows\": 2, \"aperture\": 500, \"pane\": \"clear\" } ], \"confirmed\": [\"windows[1].ring\"] }");

        Assert.Equal("windows[0].ring", Assert.Single(right.Job!.Confirmed));
        Assert.Equal("confirmed[0]", Assert.Single(wrong.Faults).Place);
    }

    private static JobReading Read(string window) => JobReader.Read("{" + Frame + Cloths + ", \"windows\": [ { " + window + " } ] }");
}
