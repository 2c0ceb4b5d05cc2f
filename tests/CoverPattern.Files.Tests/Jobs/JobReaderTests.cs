using System;
using System.Linq;
using System.Text;
using CoverPattern.Files.Jobs;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

public sealed class JobReaderTests
{
    internal const string Least = """
        {
          // only what must be said
          "schemaVersion": 1,
          "date": "2026-03-01",
          "frame": { "frequency": 3, "cut": "5/8", "size": { "diameter": "24 ft" } },
          "cloths": [ { "name": "canvas", "rollWidth": "2 m" }, ],
        }
        """;

    [Fact]
    public void Read_LeastJob_TakesEveryDefaultAndSaysSo()
    {
        var reading = JobReader.Read(Least);

        // The shop's default table, docs/job-file.md; common practice, no source, but for the end allowance.
        string[] expected =
        [
            "covers=1", "frame.family=icosahedron", "standOff.tubeRadius=17 mm", "standOff.hubHeight=25 mm", "standOff.padding=0 mm",
            "ease=0.3 %", "deck.datum=lowest", "skirt.drop=60 mm", "skirt.shape=vertical", "hem.kind=turned", "hem.depth=38 mm", "hem.turnUnder=12 mm", "seam.makeUp=plain", "seam.width=15 mm",
            "seam.corners=mitred", "limits.thickness=8 mm", "limits.felledSeamsAtHub=4", "limits.seamsAtHub=6", "limits.seamsElsewhere=3",
            "marks.ties=usual", "marks.tieDistance=80 mm", "marks.hubPatches=none", "marks.pierce=false", "notions.tapeStep=1 m",
            "cloths[0].selvedge=10 mm", "cloths[0].safetyStrip=10 mm", "cloths[0].nap=none", "cloths[0].face=oneSided",
            "lay.spacing=6 mm", "lay.endAllowance=30 mm", "lay.turns=grain", "lay.faceDown=true", "lay.effort=30", "lay.seed=1",
        ];
        Assert.Empty(reading.Faults);
        Assert.Equal(expected, reading.Job!.Assumed.Select(assumption => $"{assumption.Place}={assumption.Value}"));
        Assert.All(reading.Job.Assumed, assumption => Assert.NotEmpty(assumption.Standing));
        Assert.Equal("common practice, no source", reading.Job.Assumed.Single(a => a.Place == "ease").Standing);
    }

    [Fact]
    public void Read_LeastJob_HoldsTheValues()
    {
        var job = JobReader.Read(Least).Job!;

        Assert.Equal(new FrameWish(FrameFamily.Icosahedron, 3, 5, "5/8", FrameMeasure.Diameter, new Measure(7315.2, "24 ft")), job.Frame);
        Assert.Equal(new DateOnly(2026, 3, 1), job.Date);
        Assert.Equal(25, job.StandOff.Millimetres);
        Assert.Equal(0.003, job.Ease);
        Assert.Equal(50, job.Hem.Allowance);
        Assert.Equal(SeamWish.Of(MakeUpForm.Plain, new Measure(15, "15 mm")), job.Seam);
        Assert.Equal(new MarkWish(TieRule.Usual, new Measure(80, "80 mm"), HubPatchPlace.None, default, default), job.Marks);
        // 2000 less twice 10 + 10.
        Assert.Equal(1960, job.Cloths.Single().UsableWidth);
        Assert.Null(job.Cloths.Single().MassPerArea);
        Assert.Equal(new LayWish(new Measure(6, "6 mm"), new Measure(30, "30 mm"), TurnRule.Grain, FaceDown: true, 30, 1), job.Lay);
        Assert.Equal("", job.Title);
    }

    [Fact]
    public void Read_EverythingStated_AssumesNothing()
    {
        var job = JobReader.Read("""
            {
              "schemaVersion": 1, "title": "Grün – 24″", "date": "2026-12-31", "covers": 12,
              "frame": { "family": "icosahedron", "frequency": 4, "cut": 7, "size": { "floorDiameter": 4800.5 } },
              "standOff": { "tubeRadius": "1/2 in", "hubHeight": 20, "padding": "3 mm" },
              "ease": -0.002,
              "deck": { "datum": "mean", "raise": "1 1/2 in", "fall": "1/4 in per 1 ft", "towards": 90 },
              "skirt": { "drop": 0, "shape": "slope" },
              "hem": { "kind": "webbing", "depth": "1 in", "turnUnder": "1/2 in", "webbing": "1 in", "fixings": { "spacing": "18 in", "height": "1 in" }, "fitting": "2 in" },
              "seam": { "makeUp": "felled", "width": "12,7 mm", "corners": "trimmed", "stopAtHubs": false },
              "limits": { "thickness": "9 mm", "felledSeamsAtHub": 3, "seamsAtHub": 5, "seamsElsewhere": 2 },
              "marks": { "ties": "every", "tieDistance": 0, "hubPatches": "both", "patchDiameter": "7 in", "apexDiameter": 300, "pierce": true },
              "notions": { "zipStep": "4 in", "zipEnds": "2 in", "tapeStep": "1 m", "tapeEnds": 0 },
              "cloths": [
                { "name": "A-1", "rollWidth": 1.5e3, "selvedge": 0, "safetyStrip": 5, "mass": "18 oz/yd2", "thickness": "0,5 mm", "nap": "oneWay", "face": "reversible" },
                { "name": "A-2", "rollWidth": "60 in", "selvedge": 0, "safetyStrip": 5, "mass": 350, "nap": "none", "face": "oneSided" }
              ],
              "lay": { "spacing": "2 mm", "endAllowance": 0, "turns": "free", "faceDown": false, "effort": 1000000, "seed": 2147483647 },
              "confirmed": [ "ease", "cloths[1].nap" ]
            }
            """).Job!;

        Assert.Empty(job.Assumed);
        Assert.Equal(("Grün – 24″", 12, -0.002), (job.Title, job.Covers, job.Ease));
        Assert.Equal(("7", 7, new Measure(4800.5, "4800.5 mm")), (job.Frame.Cut, job.Frame.Rows, job.Frame.Size));
        Assert.Equal((DeckDatum.Mean, new Measure(38.1, "1 1/2 in"), SkirtShape.Slope), (job.Deck.Datum, job.Deck.Raise!.Value, job.Skirt.Shape));
        Assert.Equal((HemKind.Webbing, 25.4, 457.2, 25.4, 50.8), (job.Hem.Kind, job.Hem.Webbing!.Value.Millimetres, job.Hem.Fixings!.Spacing.Millimetres, job.Hem.Fixings.Height.Millimetres, job.Hem.Fitting!.Value.Millimetres));
        // By hand: a quarter of an inch in twelve.
        Assert.Equal(new DeckTilt(1 / 48.0, 90), job.Deck.Tilt);
        Assert.Equal(new Measure(12.7, "12,7 mm"), job.Seam.MakeUp.Width);
        Assert.Equal(new Measure(1500, "1500 mm"), job.Cloths[0].RollWidth);
        Assert.Equal((CornerStyle.Trimmed, false), (job.Seam.Corners, job.Seam.StopAtHubs));
        Assert.Equal(new MarkWish(TieRule.Every, new Measure(0, "0 mm"), HubPatchPlace.Both, new Measure(177.8, "7 in"), new Measure(300, "300 mm")) { Pierce = true }, job.Marks);
        Assert.Equal(new LimitWish(new Measure(9, "9 mm"), 3, 5, 2), job.Limits);
        Assert.Equal(new NotionWish(new Measure(101.6, "4 in"), new Measure(50.8, "2 in"), new Measure(1000, "1 m"), new Measure(0, "0 mm")), job.Notions);
        Assert.Equal((new Measure(0.5, "0,5 mm"), (Measure?)null), (job.Cloths[0].Thickness!.Value, job.Cloths[1].Thickness));
        Assert.Equal((Nap.OneWay, false), (job.Cloths[0].Nap, job.Cloths[0].HasFace));
        Assert.Equal((Nap.None, true, 350.0), (job.Cloths[1].Nap, job.Cloths[1].HasFace, job.Cloths[1].MassPerArea!.Value));
        Assert.Equal((TurnRule.Free, false, 1_000_000, int.MaxValue), (job.Lay.Turns, job.Lay.FaceDown, job.Lay.Effort, job.Lay.Seed));
        Assert.Equal(["ease", "cloths[1].nap"], job.Confirmed.AsEnumerable());
    }

    [Theory]
    [InlineData("\"covers\": 0", "covers", "0", "1 to 1000")]
    [InlineData("\"covers\": 1.5", "covers", "1.5", "a whole number")]
    [InlineData("\"covers\": \"two\"", "covers", "\"two\"", "a whole number")]
    [InlineData("\"covers\": null", "covers", "null", "a whole number")]
    [InlineData("\"ease\": \"6 %\"", "ease", "\"6 %\"", "-5 % to 5 %")]
    [InlineData("\"ease\": 0.3", "ease", "0.3", "-5 % to 5 %")]
    [InlineData("\"ease\": \"0.3\"", "ease", "\"0.3\"", "a per cent sign is missing")]
    [InlineData("\"ease\": 1e999", "ease", "1e999", "-5 % to 5 %")]
    [InlineData("\"title\": 5", "title", "5", "one line of words")]
    [InlineData("\"title\": \"a\\nb\"", "title", "\"a\\nb\"", "control characters")]
    [InlineData("\"skirt\": { \"drop\": -1 }", "skirt.drop", "-1", "0 mm to 1 m")]
    [InlineData("\"skirt\": { \"drop\": \"60\" }", "skirt.drop", "\"60\"", "a unit is missing")]
    [InlineData("\"skirt\": { \"drop\": \"1001 mm\" }", "skirt.drop", "\"1001 mm\"", "0 mm to 1 m")]
    [InlineData("\"skirt\": 60", "skirt", "60", "a section in braces with drop")]
    [InlineData("\"skirt\": { \"dorp\": 60 }", "skirt.dorp", "an unknown key", "did you mean \"drop\"?")]
    [InlineData("\"skrit\": { \"drop\": 60 }", "skrit", "an unknown key", "did you mean \"skirt\"?")]
    [InlineData("\"rollWidth\": 60", "rollWidth", "an unknown key", "did you mean \"cloths[].rollWidth\"?")]
    [InlineData("\"ease \": 0", "[\"ease \"]", "an unknown key", "did you mean \"ease\"?")]
    [InlineData("\"\": 0", "[\"\"]", "an unknown key", "known here: schemaVersion")]
    [InlineData("\"ease\": 0, \"ease\": 0", "ease", "the same key again", "each key once")]
    [InlineData("\"hem\": { \"depth\": 10, \"turnUnder\": 12 }", "hem.turnUnder", "12 mm", "the hem's depth, 10 mm")]
    [InlineData("\"seam\": { \"makeUp\": \"welded\", \"width\": 0 }", "seam.width", "0", "1 mm to 200 mm")]
    [InlineData("\"seam\": { \"makeUp\": \"weldd\" }", "seam.makeUp", "\"weldd\"", "did you mean \"welded\"?")]
    [InlineData("\"seam\": { \"makeUp\": \"glued\" }", "seam.makeUp", "\"glued\"", "one of \"plain\", \"lapped\", \"felled\", \"folderFelled\"")]
    [InlineData("\"seam\": { \"makeUp\": 1 }", "seam.makeUp", "1", "one of")]
    [InlineData("\"lay\": { \"faceDown\": \"yes\" }", "lay.faceDown", "\"yes\"", "true or false")]
    [InlineData("\"lay\": { \"seed\": -1 }", "lay.seed", "-1", "0 to 2147483647")]
    [InlineData("\"lay\": { \"effort\": 2000000 }", "lay.effort", "2000000", "1 to 1000000")]
    [InlineData("\"standOff\": []", "standOff", "an empty list", "a section in braces with tubeRadius")]
    [InlineData("\"confirmed\": [\"eese\"]", "confirmed[0]", "\"eese\"", "did you mean \"ease\"?")]
    [InlineData("\"confirmed\": [\"date\"]", "confirmed[0]", "\"date\"", "a place that has a default")]
    [InlineData("\"confirmed\": [\"cloths[1].nap\"]", "confirmed[0]", "\"cloths[1].nap\"", "did you mean \"cloths[0].nap\"?")]
    [InlineData("\"confirmed\": [\"ease\", \"ease\"]", "confirmed[1]", "\"ease\"", "each place once")]
    [InlineData("\"confirmed\": [3]", "confirmed[0]", "3", "a place that has a default")]
    [InlineData("\"confirmed\": \"ease\"", "confirmed", "\"ease\"", "a list of places")]
    public void Read_OneThingWrong_NamesPlaceWordsAndWayOut(string addition, string place, string said, string allowed)
    {
        var reading = JobReader.Read(With(addition));

        var fault = Assert.Single(reading.Faults);
        Assert.Equal((place, said), (fault.Place, fault.Said));
        Assert.Contains(allowed, fault.Allowed, StringComparison.Ordinal);
        Assert.Null(reading.Job);
    }

    [Theory]
    [InlineData("\"schemaVersion\": 1", "\"schemaVersion\": 2", "schemaVersion", "newer program")]
    [InlineData("\"schemaVersion\": 1", "\"schemaVersion\": 0", "schemaVersion", "reads version 1")]
    [InlineData("\"schemaVersion\": 1,", "", "schemaVersion", "required")]
    [InlineData("\"date\": \"2026-03-01\",", "", "date", "required")]
    [InlineData("2026-03-01", "2026-02-30", "date", "a day as")]
    [InlineData("2026-03-01", "01.03.2026", "date", "a day as")]
    [InlineData("2026-03-01", "1026-03-01", "date", "2000 to 2099")]
    [InlineData("\"frequency\": 3,", "", "frame.frequency", "required")]
    [InlineData("\"frequency\": 3", "\"division\": \"classTwo\", \"frequency\": 3", "frame.division", "an even frequency")]
    [InlineData("\"frequency\": 3", "\"division\": \"levelByInnerHubs\", \"frequency\": 3", "frame.division", "the icosahedron at frequency 4")]
    [InlineData("\"5/8\"", "[\"T5.01\", \"T5.02\", \"T5.04\"]", "frame.cut", "no strut runs from T5.02 to T5.04")]
    [InlineData("\"5/8\"", "30, \"up\": \"face\"", "frame.cut", "rows that end on one ring of hubs")]
    [InlineData("\"frequency\": 3", "\"frequency\": 13", "frame.frequency", "1 to 12")]
    [InlineData("\"frequency\": 3", "\"family\": \"cube\", \"frequency\": 3", "frame.family", "one of \"icosahedron\", \"octahedron\"")]
    [InlineData("\"5/8\"", "\"1/2\"", "frame.cut", "at frequency 3: \"3/8\" (4 rows), \"5/8\" (5 rows), or 1 to 8 rows")]
    [InlineData("\"5/8\"", "9", "frame.cut", "1 to 8 rows")]
    [InlineData("\"5/8\"", "4.5", "frame.cut", "1 to 8 rows")]
    [InlineData("\"5/8\"", "true", "frame.cut", "the name of a cut")]
    [InlineData("\"diameter\": \"24 ft\"", "", "frame.size", "exactly one of radius, diameter, floorDiameter, height")]
    [InlineData("\"diameter\": \"24 ft\"", "\"diameter\": \"24 ft\", \"radius\": \"12 ft\"", "frame.size", "exactly one of")]
    [InlineData("\"diameter\": \"24 ft\"", "\"diamter\": \"24 ft\"", "frame.size.diamter", "did you mean \"diameter\"?")]
    [InlineData("\"diameter\": \"24 ft\"", "\"diameter\": \"24\"", "frame.size.diameter", "a unit is missing")]
    [InlineData("\"diameter\": \"24 ft\"", "\"radius\": 199", "frame.size.radius", "200 mm to 60 m")]
    [InlineData("\"diameter\": \"24 ft\"", "\"radius\": \"61 m\"", "frame.size.radius", "200 mm to 60 m")]
    [InlineData("\"cut\": \"5/8\", \"size\": { \"diameter\": \"24 ft\" }", "\"cut\": 1, \"size\": { \"height\": \"20 m\" }", "frame.size.height", "sphere radius")]
    [InlineData("{ \"diameter\": \"24 ft\" }", "\"24 ft\"", "frame.size", "a section in braces with radius")]
    [InlineData("\"frame\": {", "\"frane\": {", "frane", "did you mean \"frame\"?", 2)]
    [InlineData("[ { \"name\": \"canvas\", \"rollWidth\": \"2 m\" }, ]", "[]", "cloths", "a list of 1 to 20")]
    [InlineData("[ { \"name\": \"canvas\", \"rollWidth\": \"2 m\" }, ]", "[ 7 ]", "cloths[0]", "a section in braces with name")]
    [InlineData("\"canvas\"", "\"a/b\"", "cloths[0].name", "letters a-z")]
    [InlineData("\"canvas\"", "\"..\"", "cloths[0].name", "letters a-z")]
    [InlineData("\"canvas\"", "\"canvas \"", "cloths[0].name", "ending with a letter or digit")]
    [InlineData("\"name\": \"canvas\",", "", "cloths[0].name", "required")]
    [InlineData("\"2 m\"", "\"90 mm\"", "cloths[0].rollWidth", "100 mm to 6 m")]
    [InlineData("\"2 m\"", "100, \"selvedge\": 50", "cloths[0].rollWidth", "more than selvedge and safety strip of both sides, 120 mm")]
    [InlineData("\"2 m\" }", "\"2 m\" }, { \"name\": \"Canvas\", \"rollWidth\": \"2 m\" }", "cloths[1].name", "a name of its own")]
    public void Read_LeastJobBroken_NamesPlaceAndWayOut(string old, string wrong, string place, string allowed, int faults = 1)
    {
        var json = Least.Replace(old, wrong, StringComparison.Ordinal);
        Assert.NotEqual(Least, json);

        var reading = JobReader.Read(json);

        Assert.Equal(faults, reading.Faults.Length);
        Assert.Equal(place, reading.Faults[0].Place);
        Assert.Contains(allowed, reading.Faults[0].Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_EightThingsWrong_NamesAllEight()
    {
        var reading = JobReader.Read("""
            {
              "schemaVersion": 1,
              "date": "yesterday",
              "covers": -2,
              "frame": { "frequency": 3, "cut": "1/2", "size": { "radius": "100 mm" } },
              "ease": "much",
              "seam": { "makeUp": "glued" },
              "cloths": [ { "name": "a:b", "rollWidth": "2 m", "colour": "green" } ],
            }
            """);

        string[] expected = ["date", "covers", "frame.cut", "frame.size.radius", "ease", "seam.makeUp", "cloths[0].colour", "cloths[0].name"];
        Assert.Equal(expected, reading.Faults.Select(fault => fault.Place));
        Assert.All(reading.Faults, fault => Assert.NotEmpty(fault.Said));
        Assert.All(reading.Faults, fault => Assert.NotEmpty(fault.Allowed));
    }

    [Fact]
    public void Read_NamesThatFileNamesCannotTellApart_AreFaults()
    {
        var reading = JobReader.Read(Least.Replace("\"2 m\" }", "\"2 m\" }, { \"name\": \"a b\", \"rollWidth\": 900 }, { \"name\": \"A_B\", \"rollWidth\": 900 }", StringComparison.Ordinal));

        var fault = Assert.Single(reading.Faults);
        Assert.Equal(("cloths[2].name", "\"A_B\", as at cloths[1].name"), (fault.Place, fault.Said));
    }

    // Sphere radius of a 1V cap of one row and 20 m height is 20 m / (1 - 1/sqrt 5) = 36.18 m: allowed, and 40 m is not.
    [Theory]
    [InlineData("20 m", 0)]
    [InlineData("40 m", 1)]
    public void Read_HeightOfAFlatCap_IsHeldToTheLimitsOfTheRadius(string height, int faults)
    {
        var reading = JobReader.Read(Least
            .Replace("\"frequency\": 3, \"cut\": \"5/8\"", "\"frequency\": 1, \"cut\": 1", StringComparison.Ordinal)
            .Replace("\"diameter\": \"24 ft\"", $"\"height\": \"{height}\"", StringComparison.Ordinal));

        Assert.Equal(faults, reading.Faults.Length);
    }

    [Fact]
    public void Read_ByteOrderMarkAndCarriageReturns_AreAllowed()
    {
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Least.ReplaceLineEndings("\r\n"))];

        Assert.Empty(JobReader.Read(bytes).Faults);
    }

    internal static string With(string addition) => Least[..Least.LastIndexOf('}')] + addition + "}";
}
