using System;
using System.Linq;
using CoverPattern.Files.Jobs;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

public sealed class PanelReaderTests
{
    [Fact]
    public void Read_Panels_GivesEveryWish()
    {
        var job = Read("""
            [
              { "as": "bands", "rows": "1-2", "longest": "3 m" },
              { "as": "bands", "rows": 3, "parts": 10 },
              { "as": "bands", "rows": "4", "at": ["H3.01-H4.01"] },
              { "as": "group", "name": "roof", "facets": ["F5.1", "F5.2"], "slits": ["H4.01-H5.01"] },
              { "as": "facets", "rows": "rest" },
            ]
            """).Job!;

        Assert.Equal([PanelForm.Bands, PanelForm.Bands, PanelForm.Bands, PanelForm.Group, PanelForm.Facets], job.Panels.Select(panel => panel.Form));
        Assert.Equal([new RowRange(1, 2), new RowRange(3, 3), new RowRange(4, 4), null, null], job.Panels.Select(panel => panel.Rows));
        Assert.Equal((3000.0, 10), (job.Panels[0].Longest!.Value.Millimetres, job.Panels[1].Parts!.Value));
        Assert.Equal("H3.01-H4.01", Assert.Single(job.Panels[2].At));
        Assert.Equal(("roof", "F5.2", "H4.01-H5.01"), (job.Panels[3].Name, job.Panels[3].Facets[1], job.Panels[3].Slits[0]));
    }

    [Fact]
    public void Read_NoPanels_MeansSingleFacets() => Assert.Empty(JobReader.Read(Job("")).Job!.Panels);

    [Fact]
    public void Read_TurnedSeams_AreKept() =>
        Assert.Equal("H0.02-H1.01", Assert.Single(JobReader.Read(Job("\"seam\": { \"turned\": [\"H0.02-H1.01\"] },")).Job!.Seam.Turned));

    [Theory]
    [InlineData("""[{ "rows": 1 }]""", "panels[0].as", "required")]
    [InlineData("""[{ "as": "gore" }]""", "panels[0].as", "did you mean \"gores\"?")]
    [InlineData("""[{ "as": "bands", "rows": "3-1" }]""", "panels[0].rows", "the lower row first")]
    [InlineData("""[{ "as": "bands", "rows": "0" }]""", "panels[0].rows", "a row such as")]
    [InlineData("""[{ "as": "bands", "rows": "1-2-3" }]""", "panels[0].rows", "a row such as")]
    [InlineData("""[{ "as": "bands", "rows": 1.5 }]""", "panels[0].rows", "a row such as")]
    [InlineData("""[{ "as": "group", "rows": 1 }]""", "panels[0].facets", "a group names its facets")]
    [InlineData("""[{ "as": "group" }]""", "panels[0].facets", "a group names its facets")]
    [InlineData("""[{ "as": "group", "facets": [] }]""", "panels[0].facets", "a list of 1 to 2000 labels")]
    [InlineData("""[{ "as": "group", "facets": ["F1.01", "F1.01"] }]""", "panels[0].facets", "one of these stands twice")]
    [InlineData("""[{ "as": "group", "facets": ["F1.01"], "name": "my roof" }]""", "panels[0].name", "a name in quotes")]
    [InlineData("""[{ "as": "bands", "facets": ["F1.01"] }]""", "panels[0].facets", "bands and gores are made of whole rows")]
    [InlineData("""[{ "as": "facets", "rows": 1, "facets": ["F1.01"] }]""", "panels[0].facets", "either rows or facets")]
    [InlineData("""[{ "as": "gores", "parts": 5 }]""", "panels[0].parts", "only with \"as\": \"bands\"")]
    [InlineData("""[{ "as": "bands", "slits": ["H0.02-H1.01"] }]""", "panels[0].slits", "only with \"as\": \"gores\" and \"as\": \"group\"")]
    [InlineData("""[{ "as": "bands", "parts": 5, "at": ["H0.02-H1.01"] }]""", "panels[0].at", "either a number")]
    [InlineData("""[]""", "panels", "a list of 1 to 200 sections")]
    public void Read_WrongPanels_AreOneFaultAtTheirPlace(string panels, string place, string allowed)
    {
        var fault = Assert.Single(Read(panels).Faults);

        Assert.Equal(place, fault.Place);
        Assert.StartsWith(allowed, fault.Allowed, StringComparison.Ordinal);
    }

    private static JobReading Read(string panels) => JobReader.Read(Job($"\"panels\": {panels},"));

    private static string Job(string more) =>
        $$"""{ "schemaVersion": 1, "date": "2026-03-01", "frame": { "frequency": 3, "cut": 5, "size": { "radius": 3000 } }, {{more}} "cloths": [{ "name": "canvas", "rollWidth": "2 m" }] }""";
}
