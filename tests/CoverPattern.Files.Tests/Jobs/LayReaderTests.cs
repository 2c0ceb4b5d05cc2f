using System;
using System.Collections.Generic;
using System.Linq;
using System.Text;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Results;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

/// <summary>How pieces are laid: rolls with flaws, plies, table, and lays that the job names.</summary>
public sealed class LayReaderTests
{
    private const string Frame = """ "schemaVersion": 1, "date": "2026-05-04", "frame": { "frequency": 2, "cut": "1/2", "size": { "diameter": "4 m" } }, """;

    [Fact]
    public void Read_NothingSaid_IsTheTightLayOnASinglePly()
    {
        var lay = Read("", "").Job!.Lay;

        Assert.Equal((LayStyle.Tight, 0, true, 1, PlySpread.OneWay), (lay.Style, lay.OffGrainDegrees, lay.InHoles, lay.Plies, lay.Spread));
        Assert.Null(lay.Table);
        Assert.Null(lay.Keep);
    }

    [Fact]
    public void Read_AllWishes_AreTaken()
    {
        var job = Read(
            """, "rolls": [ { "name": "old one", "length": "12 m", "flaws": [ { "at": "3 m", "across": 200, "long": 50, "wide": "3 cm", "grade": 2 } ] }, { } ] """,
            """ "style": "byHand", "offGrain": 2.5, "inHoles": false, "table": "6 m", "grades": [ { "pieces": ["patch", "P1.01"], "grade": 3 } ] """).Job!;

        var flaw = job.Cloths[0].Rolls[0].Flaws.Single();
        Assert.Equal((3000, 200, 50, 30, 2), (flaw.At.Millimetres, flaw.Across.Millimetres, flaw.Long.Millimetres, flaw.Wide.Millimetres, flaw.Grade));
        Assert.Equal(("old one", 12_000), (job.Cloths[0].Rolls[0].Name, job.Cloths[0].Rolls[0].Length!.Value.Millimetres));
        Assert.Null(job.Cloths[0].Rolls[1].Length);
        Assert.Equal((LayStyle.ByHand, 2.5, false, 6000), (job.Lay.Style, job.Lay.OffGrainDegrees, job.Lay.InHoles, job.Lay.Table!.Value.Millimetres));
        Assert.Equal("patch P1.01", string.Join(' ', job.Lay.Grades.Single().Pieces));
    }

    [Fact]
    public void Read_LaysBesideTheJob_AreThoseOfTheFile()
    {
        var lay = Read("", """ "start": "old.json", "locked": ["P1.02"] """, ("old.json", LaysFile.Write([SamplePieces.Lay]))).Job!.Lay;

        var places = lay.Start!.Lays.Single().Places;
        Assert.Equal(SamplePieces.Lay.Placements.Select(place => (place.Piece, place.X, place.Y, place.TurnDegrees, place.Mirrored)), places.Select(place => (place.Piece, place.X, place.Y, place.TurnDegrees, place.Mirrored)));
        Assert.Equal("P1.02", Assert.Single(lay.Locked));
    }

    public static TheoryData<string, string, string> Slips => new()
    {
        { "cloths[0].rolls[0].length", """, "rolls": [ { }, { "length": 5000 } ] """, "" },
        { "cloths[0].rolls[0].flaws[0].at", """, "rolls": [ { "length": "5 m", "flaws": [ { "at": "5 m", "across": 0, "long": 10, "wide": 10 } ] } ] """, "" },
        { "cloths[0].rolls[0].flaws[0].across", """, "rolls": [ { "flaws": [ { "at": 0, "across": 1500, "long": 10, "wide": 10 } ] } ] """, "" },
        { "cloths[0].rolls[0].flaws[0].wide", """, "rolls": [ { "flaws": [ { "at": 0, "across": 0, "long": 10 } ] } ] """, "" },
        { "lay.spread", """, "rolls": [ { "flaws": [ { "at": 0, "across": 0, "long": 10, "wide": 10 } ] } ] """, """ "plies": 2, "spread": "faceToFace" """ },
        { "lay.plies", "", """ "plies": 3, "spread": "faceToFace" """ },
        { "lay.plies", "", """ "plies": 2, "start": "old.json" """ },
        { "lay.table", "", """ "table": 600, "endAllowance": 300 """ },
        { "lay.offGrain", "", """ "offGrain": 16 """ },
        { "lay.locked", "", """ "locked": ["P1.01"] """ },
        { "lay.locked", "", """ "start": "old.json", "locked": ["P9.99"] """ },
        { "lay.start", "", """ "start": "old.json", "keep": "old.json" """ },
        { "lay.start", "", """ "start": "lost.json" """ },
        { "lay.keep", "", """ "keep": "torn.json" """ },
        { "lay.keep", "", """ "keep": "../old.json" """ },
        { "lay.keep", "", """ "keep": "twice.json" """ },
        { "lay.grades[0].grade", "", """ "grades": [ { "pieces": ["patch"], "grade": 10 } ] """ },
        { "lay.grades[0].pieces", "", """ "grades": [ { "grade": 1 } ] """ },
    };

    [Theory]
    [MemberData(nameof(Slips))]
    public void Read_Slip_IsNamedByItsPlace(string place, string cloth, string lay)
    {
        var twice = LaysFile.Write([SamplePieces.Lay, SamplePieces.Lay with { Placements = [] }]);
        var reading = Read(cloth, lay, ("old.json", LaysFile.Write([SamplePieces.Lay])), ("torn.json", Encoding.UTF8.GetBytes("{ \"lays\": [] }")), ("twice.json", twice));

        Assert.Equal(place, Assert.Single(reading.Faults).Place);
    }

    private static JobReading Read(string cloth, string lay, params (string Name, byte[] Bytes)[] files)
    {
        var beside = files.ToDictionary(file => file.Name, file => file.Bytes, StringComparer.Ordinal);
        return JobReader.Read(
            "{" + Frame + "\"cloths\": [ { \"name\": \"canvas\", \"rollWidth\": \"1500 mm\"" + cloth + " } ], \"lay\": {" + lay + "} }",
            name => beside.GetValueOrDefault(name));
    }
}
