using System;
using CoverPattern.Files.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

/// <summary>Frames known by their struts, through the reader of jobs: what cannot be a frame is told within two seconds with place, value, limit and way out.</summary>
public class StrutReaderTests
{
    // 3V 5/8 of R = 3657.6 mm, rounded: own calculation made apart from this project.
    private const string Good = "\"A 1275 mm\", \"B 1476 mm\", \"C 1508.4 mm\"";

    [Fact]
    public void Read_GoodStruts_AreTaken() => Assert.Empty(Read($"\"lengths\": [{Good}]").Faults);

    // 4000 mm against 1275 + 1476: the strut stands in two facets, and both are told. F1.02 stands on the base strut H0.01-H0.02.
    [Theory]
    [InlineData("H1.01-H2.01 4000 mm", 2, "facet F2.01 of H1.15-H2.01 1275 mm, H1.01-H1.15 1476 mm, H1.01-H2.01 4000 mm", "2751 mm here; measure them again")]
    [InlineData("H0.01-H0.02 3 m", 1, "facet F1.02 of H0.02-H1.01 1476 mm, H0.01-H1.01 1508.4 mm, H0.01-H0.02 3000 mm", "2984.4 mm here")]
    [InlineData("H1.01-H1.02 9 mm", 2, "H1.01-H1.02 9 mm, H0.02-H1.01 1476 mm, H0.02-H1.02 1508.4 mm", "1485 mm here")]
    [InlineData("H9.01-H9.02 1510 mm", 1, "H9.01-H9.02", "such as \"H0.01-H0.02\"")]
    public void Read_OddStrutThatClosesNoFacet_NamesFacetsStrutsAndLimit(string odd, int count, string said, string allowed)
    {
        var reading = Read($"\"lengths\": [{Good}], \"odd\": [\"{odd}\"]");

        Assert.Equal(count, reading.Faults.Length);
        Assert.All(reading.Faults, fault => Assert.Equal("frame.struts.odd", fault.Place));
        Assert.Contains(reading.Faults, fault => fault.Said.Contains(said, StringComparison.Ordinal) && fault.Allowed.Contains(allowed, StringComparison.Ordinal));
    }

    [Fact]
    public void Read_TwoOddStrutsThatCloseNoFacet_AreToldAtOnce()
    {
        var reading = Read($"\"lengths\": [{Good}], \"odd\": [\"H0.01-H0.02 3 m\", \"H1.01-H1.02 9 mm\", \"H7.01-H7.02 1 m\"]");

        Assert.Equal(4, reading.Faults.Length);
    }

    // Radius 3657.6 mm goes with A 1275 mm: a thousandth and a thousandfold lie outside 200 mm to 60 m.
    [Theory]
    [InlineData("\"lengths\": [\"A 1000 mm\", \"B 1476 mm\", \"C 1508.4 mm\"]", "frame.struts.lengths", "A 1000 mm", "ratios within 2 % of a family")]
    [InlineData("\"lengths\": [\"A 1275 m\", \"B 1476 m\", \"C 1508.4 m\"]", "frame.struts.lengths", "a sphere radius of 3657", "200 to 60000 mm; look at the unit")]
    [InlineData("\"lengths\": [\"A 12.75 mm\", \"B 14.76 mm\", \"C 15.084 mm\"]", "frame.struts.lengths", "a sphere radius of 37 mm", "200 to 60000 mm; look at the unit")]
    [InlineData("\"lengths\": [\"A 1275\", \"B 1476\", \"C 1508\"]", "frame.struts.lengths[0]", "A 1275", "a unit is missing")]
    [InlineData("\"lengths\": [\"A NaN mm\", \"B 1476 mm\", \"C 1508 mm\"]", "frame.struts.lengths[0]", "A NaN mm", "a number is missing")]
    [InlineData("\"lengths\": [" + Good + "], \"floorDiameter\": \"5 m\"", "frame.struts.floorDiameter", "5 m", "within 5 % of the 7200 mm")]
    [InlineData("\"lengths\": [" + Good + "], \"bendAt\": \"0.5 m\", \"odd\": [\"H0.01-H0.02 900 mm\"]", "frame.struts.bendAt", "500 mm", "less than half the shortest strut, which is 900 mm")]
    public void Read_LengthsThatMakeNoFrame_NamePlaceValueLimitAndWayOut(string struts, string place, string said, string allowed)
    {
        var reading = Read(struts);

        Assert.Contains(reading.Faults, fault => fault.Place == place && fault.Said.Contains(said, StringComparison.Ordinal) && fault.Allowed.Contains(allowed, StringComparison.Ordinal));
    }

    [Fact]
    public void Read_LengthsOfAnotherDivision_TellItInTheJobsWords()
    {
        // Equal chords said, equal arcs measured: chord factors .348615, .403548, .412411 of the 3V ball of equal chords; the octahedron's 3V hemisphere has three classes too.
        var job = Job($"\"family\": \"octahedron\", \"cut\": \"1/2\", \"struts\": {{ \"lengths\": [{Good}] }}");

        var fault = Assert.Single(JobReader.Read(job).Faults);

        Assert.Equal("frame.struts.lengths", fault.Place);
        Assert.Contains("\"octahedron\"", fault.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_OneClassOff_IsNamedWithTheLengthThatTheOthersMake()
    {
        // 1476.018 mm goes with A 1275.096 and C 1508.436 (own calculation made apart from this project).
        var fault = Assert.Single(Read("\"lengths\": [\"A 1275 mm\", \"B 1700 mm\", \"C 1508.4 mm\"]").Faults);

        Assert.Contains("the other classes agree, and would make B 1476 mm long", fault.Allowed, StringComparison.Ordinal);
        Assert.DoesNotContain("agree", Assert.Single(Read("\"lengths\": [\"A 1000 mm\", \"B 1700 mm\", \"C 1508.4 mm\"]").Faults).Allowed, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("size", "{ \"radius\": \"3 m\" }")]
    [InlineData("stretch", "{ \"front\": \"120 %\" }")]
    [InlineData("riser", "\"1 m\"")]
    public void Read_WhatOnlySizesTake_IsRefusedBesideStruts(string key, string value)
    {
        var reading = JobReader.Read(Job($"\"cut\": \"5/8\", \"struts\": {{ \"lengths\": [{Good}] }}, \"{key}\": {value}"));

        Assert.Contains(reading.Faults, fault => fault.Place == "frame." + key && fault.Said == "stated beside struts");
    }

    private static JobReading Read(string struts) => JobReader.Read(Job($"\"cut\": \"5/8\", \"struts\": {{ {struts} }}"));

    private static string Job(string frame) =>
        $$"""{ "schemaVersion": 1, "date": "2026-03-01", "frame": { "frequency": 3, {{frame}} }, "cloths": [{ "name": "canvas", "rollWidth": "2 m" }] }""";
}
