using System;
using System.Linq;
using CoverPattern.Files.Jobs;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

/// <summary>The shop's own table of make-ups, seams made otherwise, the closing seam and rates, as a job states them.</summary>
public sealed class MakeUpTableTests
{
    private const string Fell = """{ "name": "our fell", "form": "felled", "width": "1/2 in" }""";

    [Fact]
    public void Read_EntryAlone_TakesTheRestByForm()
    {
        var makeUp = Read($$"""
            "makeUps": [ {{Fell}} ], "seam": { "makeUp": "our fell" }
            """).Job!.Seam.MakeUp;

        // Blog rule for a finished 1/2 in: 1/2 in and 1 in; two rows; four plies; rows 1/4 in apart [Navy ch. 10], as 6 mm.
        Assert.Equal(("our fell", MakeUpForm.Felled, "1/2 in"), (makeUp.Name, makeUp.Form, makeUp.Width.Typed));
        Assert.Equal((12.7, 25.4, 2, 4, 6), (makeUp.OverMm, makeUp.UnderMm, makeUp.Rows, makeUp.Plies, makeUp.RowGapMm));
        Assert.Equal([MakeUp.AnyCloth], makeUp.Joins.AsEnumerable());
        Assert.False(makeUp.IsTicked);
    }

    [Fact]
    public void Read_EntryWithEverything_HoldsIt()
    {
        var job = Read("""
            "makeUps": [ { "name": "wide lap", "form": "lapped", "width": 30, "over": 0, "under": "30 mm", "rows": 4, "rowGap": 8,
              "joins": [ "canvas", "weldable" ], "notches": "tick", "plies": 3 } ],
            "seam": { "makeUp": "wide lap" }
            """).Job!;

        var makeUp = job.Seam.MakeUp;
        Assert.Equal((0, 30, 4, 8, 3, true), (makeUp.OverMm, makeUp.UnderMm, makeUp.Rows, makeUp.RowGapMm, makeUp.Plies, makeUp.IsTicked));
        Assert.Equal(["canvas", "weldable"], makeUp.Joins.AsEnumerable());
        Assert.Same(job.MakeUps.Single(), makeUp);
        Assert.DoesNotContain(job.Assumed, assumption => assumption.Place is "seam.makeUp" or "seam.width");
    }

    [Fact]
    public void Read_BareForm_IsTheUsualMakeUpThoughATableStands()
    {
        var job = Read($$"""
            "makeUps": [ {{Fell}} ], "seam": { "makeUp": "lapped" }
            """).Job!;

        Assert.Equal(MakeUp.Of(MakeUpForm.Lapped, new Measure(25, "25 mm")), job.Seam.MakeUp);
    }

    [Fact]
    public void Read_EntryOfAFormsName_GoesBeforeTheForm()
    {
        var job = Read("""
            "makeUps": [ { "name": "plain", "form": "plain", "width": 18 } ], "seam": { "makeUp": "plain" }
            """).Job!;

        Assert.Equal(18, job.Seam.MakeUp.OverMm);
    }

    [Theory]
    [InlineData("\"form\": \"felled\", \"width\": 13, \"rows\": 4", "makeUps[0].rows", "4 rows 6 mm apart in 13 mm")]
    [InlineData("\"form\": \"lapped\", \"width\": 6", "makeUps[0].width", "2 rows 6 mm apart in 6 mm")]
    [InlineData("\"form\": \"plain\", \"width\": 13, \"rows\": 0", "makeUps[0].rows", "0 rows")]
    [InlineData("\"form\": \"welded\", \"width\": 40, \"rows\": 1", "makeUps[0].rows", "1 rows")]
    [InlineData("\"form\": \"welded\", \"width\": 40, \"notches\": \"slit\"", "makeUps[0].notches", "\"slit\"")]
    [InlineData("\"form\": \"bound\", \"width\": 12, \"notches\": \"slit\"", "makeUps[0].notches", "\"slit\"")]
    [InlineData("\"form\": \"lapped\", \"width\": 25, \"over\": 10", "makeUps[0].over", "over 10 mm, under 12.5 mm at a width of 25 mm")]
    [InlineData("\"form\": \"splitWelded\", \"width\": 40, \"under\": 21", "makeUps[0].under", "over 20 mm, under 21 mm at a width of 40 mm")]
    [InlineData("\"form\": \"felled\", \"width\": 13, \"over\": 14", "makeUps[0].over", "over 14 mm, under 26 mm at a width of 13 mm")]
    [InlineData("\"form\": \"felled\", \"width\": 13, \"under\": 13", "makeUps[0].under", "over 13 mm, under 13 mm at a width of 13 mm")]
    [InlineData("\"form\": \"plain\", \"width\": 13, \"over\": 0", "makeUps[0].over", "over 0 mm, under 13 mm at a width of 13 mm")]
    [InlineData("\"form\": \"plain\", \"width\": 13, \"turnIn\": 5", "makeUps[0].turnIn", "a turn-in")]
    [InlineData("\"form\": \"plain\", \"width\": 13, \"joins\": [\"canvass\"]", "makeUps[0].joins[0]", "\"canvass\"")]
    [InlineData("\"form\": \"plain\", \"width\": 13, \"joins\": [7]", "makeUps[0].joins[0]", "7")]
    [InlineData("\"form\": \"plain\", \"width\": 13, \"joins\": []", "makeUps[0].joins", "an empty list")]
    [InlineData("\"form\": \"glued\", \"width\": 13", "makeUps[0].form", "\"glued\"")]
    [InlineData("\"form\": \"plain\", \"width\": 13, \"plies\": 0", "makeUps[0].plies", "0")]
    public void Read_EntryThatCannotBe_IsAFaultAtItsPlace(string entry, string place, string said)
    {
        var fault = Assert.Single(Read($$"""
            "makeUps": [ { "name": "ours", {{entry}} } ]
            """).Faults);

        Assert.Equal((place, said), (fault.Place, fault.Said));
        Assert.NotEmpty(fault.Allowed);
    }

    [Theory]
    [InlineData("\"seam\": { \"makeUp\": \"our fel\" }", "seam.makeUp", "did you mean \"our fell\"?")]
    [InlineData("\"seam\": { \"makeUp\": \"glued\" }", "seam.makeUp", "in the table: our fell; a name of makeUps, or one of \"plain\"")]
    [InlineData("\"seam\": { \"makeUp\": \"our fell\", \"width\": 13 }", "seam.width", "has its own in makeUps, 1/2 in")]
    [InlineData("\"seam\": { \"others\": [ { \"between\": \"uprights\", \"makeUp\": \"zip\" } ] }", "seam.others[0].makeUp", "add an entry there")]
    [InlineData("\"seam\": { \"others\": [ { \"between\": \"upright\", \"makeUp\": \"our fell\" } ] }", "seam.others[0].between", "did you mean \"uprights\"?")]
    [InlineData("\"seam\": { \"others\": [ { \"between\": [3], \"makeUp\": \"our fell\" } ] }", "seam.others[0].between[0]", "a strut as two labels")]
    [InlineData("\"seam\": { \"others\": [ { \"makeUp\": \"our fell\" } ] }", "seam.others[0].between", "required")]
    [InlineData("\"seam\": { \"closing\": { \"allowance\": 0 } }", "seam.closing.allowance", "1 mm to 300 mm")]
    [InlineData("\"seam\": { \"closing\": [] }", "seam.closing", "a section in braces with at, allowance, to")]
    [InlineData("\"rates\": { \"perHour\": \"30 EUR\" }", "rates.perHour", "a number, 0 to 1000000")]
    [InlineData("\"rates\": { \"cloths\": [ { \"cloth\": \"silk\", \"perMetre\": 3 } ] }", "rates.cloths[0].cloth", "a cloth of this job: canvas")]
    [InlineData("\"rates\": { \"seams\": [ { \"makeUp\": \"zip\", \"perMetre\": 3 }, { \"makeUp\": \"zip\", \"perMetre\": 4 } ] }", "rates.seams[1].makeUp", "each name once")]
    [InlineData("\"rates\": { \"seams\": [ { \"makeUp\": \"zip\" } ] }", "rates.seams[0].perMetre", "required")]
    public void Read_WishThatCannotBe_IsAFaultAtItsPlace(string wish, string place, string allowed)
    {
        var fault = Assert.Single(Read($$"""
            "makeUps": [ {{Fell}} ], {{wish}}
            """).Faults);

        Assert.Equal(place, fault.Place);
        Assert.Contains(allowed, fault.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_SevenThingsWrong_NamesAllSeven()
    {
        var faults = Read("""
            "makeUps": [ { "name": "a", "form": "plain", "width": 13 }, { "name": "a", "form": "felled", "width": 6, "rows": 3 }, { "name": "zip", "form": "plain", "width": 13, "joins": [ "silk" ] } ],
            "seam": { "makeUp": "b", "others": [ { "between": "rows", "makeUp": "zap" } ] },
            "rates": { "hem": -1 }
            """).Faults;

        string[] expected = ["makeUps[1].rows", "makeUps[1].name", "makeUps[2].name", "seam.makeUp", "seam.others[0].makeUp", "makeUps[2].joins[0]", "rates.hem"];
        Assert.Equal(expected, faults.Select(fault => fault.Place));
    }

    [Fact]
    public void Read_Others_AreTakenInOrder()
    {
        var seam = Read($$"""
            "makeUps": [ {{Fell}}, { "name": "our zip", "form": "zip", "width": 20 } ],
            "seam": { "makeUp": "our fell", "others": [ { "between": "uprights", "makeUp": "our zip" }, { "between": [ "H0.02-H1.01" ], "makeUp": "our fell" } ] }
            """).Job!.Seam;

        Assert.Equal([SeamSet.Uprights, SeamSet.Struts], seam.Others.Select(other => other.Set));
        Assert.Equal(["our zip", "our fell"], seam.Others.Select(other => other.MakeUp.Name));
        Assert.Equal(["H0.02-H1.01"], seam.Others[1].Struts.AsEnumerable());
        Assert.Null(seam.Closing);
    }

    [Theory]
    [InlineData("plain", 40)]
    [InlineData("our fell", 40)]
    [InlineData("wide fell", 50)]
    public void Read_EmptyClosing_IsAtTheRearAsWideAsTheSeamAsks(string makeUp, double allowance)
    {
        // 40 mm (common practice, no source); a felled seam of 25 mm has 50 mm on the under side anyway.
        var job = Read($$"""
            "makeUps": [ {{Fell}}, { "name": "wide fell", "form": "felled", "width": 25 } ], "seam": { "makeUp": "{{makeUp}}", "closing": {} }
            """).Job!;

        Assert.Equal((ClosingWish.Rear, allowance, (int?)null), (job.Seam.Closing!.At, job.Seam.Closing.Allowance.Millimetres, job.Seam.Closing.To));
        Assert.Contains(job.Assumed, assumption => assumption.Place == "seam.closing.at");
        Assert.Contains(job.Assumed, assumption => assumption.Place == "seam.closing.allowance");
    }

    [Fact]
    public void Read_NoRates_ArePricedNowhereRatherThanAtZero() => Assert.Same(RatesWish.None, Read("\"covers\": 1").Job!.Rates);

    [Fact]
    public void Read_Rates_AreHeldAndZeroIsAPrice()
    {
        var rates = Read("""
            "rates": { "currency": "EUR", "perHour": 42.5, "piece": 0, "cloths": [ { "cloth": "canvas", "perMetre": 11 } ], "seams": [ { "makeUp": "plain", "perMetre": 6.5 } ] }
            """).Job!.Rates;

        Assert.Equal(("EUR", 42.5, 0.0, null), (rates.Currency, rates.PerHour, rates.PieceMinutes, rates.HemMinutes));
        Assert.Equal(new ClothRate("canvas", 11), rates.Cloths.Single());
        Assert.Equal(new SeamRate("plain", 6.5), rates.Seams.Single());
    }

    [Fact]
    public void Read_ClothOfAFamily_HoldsFamilyAndThickness()
    {
        var cloth = JobReader.Read("""
            { "schemaVersion": 1, "date": "2026-03-01", "frame": { "frequency": 3, "cut": "5/8", "size": { "diameter": "24 ft" } },
              "cloths": [ { "name": "tarpaulin", "rollWidth": "2 m", "weld": "pvc", "thickness": 0.5 } ] }
            """).Job!.Cloths.Single();

        Assert.Equal(("pvc", 0.5), (cloth.Weld, cloth.Thickness!.Value.Millimetres));
    }

    private static JobReading Read(string keys) => JobReader.Read($$"""
        { "schemaVersion": 1, "date": "2026-03-01", "frame": { "frequency": 3, "cut": "5/8", "size": { "diameter": "24 ft" } },
          "cloths": [ { "name": "canvas", "rollWidth": "2 m" } ], {{keys}} }
        """);
}
