using System;
using System.IO;
using System.Linq;
using System.Text;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Surveys;
using CoverPattern.Files.Tests.Reports;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Surveys;

public class BadSurveyTests
{
    private const string Pyramid = "unit,mm\nhub,a,0,0,0\nhub,b,1000,0,0\nhub,c,1000,1000,0\nhub,d,0,1000,0\nhub,e,500,500,700\n";
    private const string Roof = "facet,a,b,e\nfacet,b,c,e\nfacet,c,d,e\nfacet,d,a,e\n";

    [Fact]
    public void Read_Pyramid_IsAFrame() => Assert.Empty(Job(Pyramid + Roof).Faults);

    [Theory]
    [InlineData("hub,a,0,0,0\n", "hub a, x: 0 without a unit", "unit, mm")]
    [InlineData(Pyramid + Roof + "facet,a,b,c,d\n", "a closed sheet of 5 facets", "leave out the floor")]
    [InlineData(Pyramid + Roof + "facet,a,e,c\n", "the edge a - e belongs to 3 facets", "two facets on an edge at most")]
    [InlineData(Pyramid + "facet,a,b,e\nfacet,c,d,e\n", "line 8: 1 of 2 facets do not hang together", "one sheet")]
    [InlineData(Pyramid + Roof + "hub,f,NaN,0,0\n", "hub f, x is \"NaN\"", "a length such as")]
    [InlineData(Pyramid + Roof + "hub,f,0,0,10\n", "line 11: hub f with neither strut nor facet", "leave the hub out")]
    [InlineData(Pyramid + Roof + "hub,f,0,0,0.05\nfacet,f,b,e\n", "hub f lies 0.05 mm from hub a", "more than 0.1 mm apart")]
    [InlineData(Pyramid + "facet,a,b,z\n", "line 7: the label \"z\", which no hub has", "labels of hub lines")]
    [InlineData(Pyramid + "facet,a,b\n", "line 7: \"facet,a,b\"", "three labels or more")]
    [InlineData(Pyramid + "facet,a,b,a\n", "the same hub twice", "three hubs or more")]
    [InlineData(Pyramid + "hub,a,1,1,1\n", "line 7: hub a a second time", "each label once")]
    [InlineData(Pyramid + "strut,a,b\nstrut,b,c\nstrut,c,d\nstrut,d,a\nstrut,a,e\n", "hub e with 1 strut", "two struts or more")]
    [InlineData(Pyramid + "strut,a,b\nstrut,b,c\nstrut,c,d\nstrut,d,a\nstrut,a,c\nstrut,b,d\nstrut,e,a\nstrut,e,c\nstrut,e,b\nstrut,e,d\n", "5 hubs and 10 struts, which close", "do not cross")]
    [InlineData(Pyramid, "neither", "")]
    [InlineData(Pyramid + "wall,a,b\n", "line 7: \"wall,a,b\"", "unit, hub, strut, facet")]
    [InlineData("unit,yard\n", "line 1: \"unit,yard\"", "mm, cm, m, in, ft")]
    public void Read_WhatCannotBeAFrame_NamesPlaceAndWayOut(string lines, string said, string allowed)
    {
        var reading = Job(lines);

        Assert.Contains(reading.Faults, fault => fault.Place.StartsWith("frame.survey", StringComparison.Ordinal)
            && fault.Said.Contains(said, StringComparison.Ordinal) && fault.Allowed.Contains(allowed, StringComparison.Ordinal));
    }

    [Fact]
    public void Read_TwoUnits_AreRefused()
    {
        Assert.Empty(SurveyFile.Read("a.csv", Encoding.UTF8.GetBytes(Pyramid + Roof), 1).Faults);
        Assert.Contains(SurveyFile.Read("a.csv", Encoding.UTF8.GetBytes(Pyramid + Roof), 25.4).Faults, fault => fault.Said.Contains("frame.survey.unit says another", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_HubFarInside_IsToldAsFoldedBack()
    {
        // The top hub of the pyramid pushed through one of its neighbours' facets: two facets lie on each other.
        var lines = Pyramid.Replace("500,500,700", "500,-20000,1", StringComparison.Ordinal) + Roof;

        Assert.Contains(Job(lines).Faults, fault => fault.Said.Contains("folded back", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_FrameLyingOnItsSide_AsksWhichWayIsUp()
    {
        var reading = SurveyFile.Read("a.obj", Encoding.UTF8.GetBytes(SurveyWriter.Obj(FrameBuilder.Build(ReportResults.Dome(3, 5).Frame))), 1);
        var survey = reading.Survey! with { WeldMm = 0.1, Up = SurveyUp.Y };

        var fault = Assert.Single(SurveyMender.Mend(survey).Faults);

        Assert.Contains("leans 90 degrees", fault.Said, StringComparison.Ordinal);
        Assert.Contains("frame.survey.up", fault.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_DrumOpenAboveAndBelow_StandsOnItsLowerBorder()
    {
        // Both borders of a drum are equally long; hubs of the upper one are listed first.
        const string drum = "unit,mm\nhub,a,0,0,900\nhub,b,1000,0,900\nhub,c,500,800,900\nhub,d,0,0,0\nhub,e,1000,0,0\nhub,f,500,800,0\nfacet,d,e,b,a\nfacet,e,f,c,b\nfacet,f,d,a,c\n";

        var reading = Job(drum);

        Assert.Empty(reading.Faults);
        Assert.All(FrameBuilder.Build(reading.Job!.Frame).Hubs.Take(3), hub => Assert.Equal(0, hub.Position.Z));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Read_TableSavedAsUnicodeText_IsRead(bool isLittleEndian)
    {
        var encoding = new UnicodeEncoding(bigEndian: !isLittleEndian, byteOrderMark: true);

        var reading = SurveyFile.Read("hut.csv", [.. encoding.GetPreamble(), .. encoding.GetBytes((Pyramid + Roof).Replace(',', '\t'))], null);

        Assert.Equal(5, reading.Survey!.Hubs.Length);
        Assert.Equal(4, reading.Survey.Facets.Length);
    }

    [Theory]
    [InlineData("dome.obj", "a mesh without a unit")]
    [InlineData("dome.dwg", "\"dome.dwg\"")]
    [InlineData("../dome.obj", "\"../dome.obj\"")]
    [InlineData("none.csv", "which cannot be read")]
    public void Read_FileThatCannotServe_IsRefused(string name, string said)
    {
        var json = JobWith($$"""{ "file": "{{name}}" }""");

        var reading = JobReader.Read(json, asked => asked == "dome.obj" ? "v 0 0 0\n"u8.ToArray() : null);

        Assert.Contains(said, Assert.Single(reading.Faults).Said, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_SurveyBesideFamily_IsRefused()
    {
        var json = JobWith("""{ "lines": ["unit,mm"] }""").Replace("\"survey\"", "\"frequency\": 3, \"survey\"", StringComparison.Ordinal);

        Assert.Contains(JobReader.Read(json).Faults, fault => fault.Place == "frame.frequency" && fault.Said.Contains("beside a survey", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("big.stl")]
    [InlineData("big.ply")]
    [InlineData("big.obj")]
    public void Read_MillionFaces_IsRefused(string name)
    {
        var bytes = name switch
        {
            "big.stl" => Stl(1_000_000),
            "big.ply" => Encoding.UTF8.GetBytes("ply\nformat ascii 1.0\nelement vertex 500000\nproperty float x\nproperty float y\nproperty float z\nelement face 1000000\nproperty list uchar int vertex_indices\nend_header\n"),
            _ => Encoding.UTF8.GetBytes("v 0 0 0\nv 1 0 0\nv 0 1 0\n" + string.Concat(Enumerable.Repeat("f 1 2 3\n", 1_000_000))),
        };
        var beside = bytes[..Math.Min(bytes.Length, SurveyFile.MostBytes + 1)];

        var reading = JobReader.Read(JobWith($$"""{ "file": "{{name}}", "unit": "mm" }"""), _ => beside);

        var fault = Assert.Single(reading.Faults);
        Assert.StartsWith("frame.survey", fault.Place, StringComparison.Ordinal);
        Assert.Contains("at most", fault.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Mend_FiveThousandFacets_KeepsThemAll()
    {
        // 49 x 51 quadrangles of a shallow roof, halved: 4,998 triangles.
        var text = new StringBuilder();
        for (var i = 0; i < 50; i++)
        {
            for (var j = 0; j < 52; j++)
            {
                text.Append(System.Globalization.CultureInfo.InvariantCulture, $"v {100 * i} {100 * j} {(20 * i) - (0.4 * i * i) + (20 * j) - (0.4 * j * j)}\n");
            }
        }

        for (var i = 0; i < 49; i++)
        {
            for (var j = 0; j < 51; j++)
            {
                var corner = (52 * i) + j + 1;
                text.Append(System.Globalization.CultureInfo.InvariantCulture, $"f {corner} {corner + 52} {corner + 53}\nf {corner} {corner + 53} {corner + 1}\n");
            }
        }

        var mending = SurveyMender.Mend(SurveyFile.Read("roof.obj", Encoding.UTF8.GetBytes(text.ToString()), 1).Survey! with { WeldMm = 0.1 });

        Assert.Equal(4998, mending.Mesh!.Facets.Length);
    }

    [Fact]
    public void Mend_FiveThousandQuadrangles_MayHaveMoreHubsThanFacets()
    {
        // A cone of 100 gores and 50 rings: 100 triangles and 4,900 quadrangles on 5,001 hubs.
        var text = new StringBuilder("v 0 0 5000\n");
        for (var i = 0; i < 5000; i++)
        {
            var (ring, angle) = ((i / 100) + 1, i % 100 * Math.PI / 50);
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"v {100 * ring * Math.Cos(angle):R} {100 * ring * Math.Sin(angle):R} {100 * (50 - ring)}\n");
        }

        for (var i = 0; i < 5000; i++)
        {
            var (from, to) = (i + 2, ((i + 1) % 100) + (i / 100 * 100) + 2);
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"f {(i < 100 ? "1" : $"{to - 100} {from - 100}")} {from} {to}\n");
        }

        var mending = SurveyMender.Mend(SurveyFile.Read("cone.obj", Encoding.UTF8.GetBytes(text.ToString()), 1).Survey! with { WeldMm = 0.1 });

        Assert.Empty(mending.Faults);
        Assert.Equal(5001, mending.Mesh!.Points.Length);
        Assert.Equal(5000, mending.Mesh.Facets.Length);
    }

    [Fact]
    public void Read_RandomBytes_NeverThrows()
    {
        var random = new Random(7);
        foreach (var name in new[] { "a.csv", "a.obj", "a.ply", "a.stl" })
        {
            var good = name switch
            {
                "a.csv" => Encoding.UTF8.GetBytes(Pyramid + Roof),
                "a.obj" => "v 0 0 0\nv 1000 0 0\nv 0 1000 0\nv 500 500 500\nf 1 2 4\nf 2 3 4\n"u8.ToArray(),
                "a.ply" => Meshes.Ply(FrameBuilder.Build(ReportResults.Dome(1, 2).Frame), isBinary: true),
                _ => Meshes.Stl(FrameBuilder.Build(ReportResults.Dome(1, 2).Frame), isBinary: true),
            };
            for (var trial = 0; trial < 300; trial++)
            {
                var bytes = good.ToArray();
                for (var change = random.Next(1, 6); change > 0; change--)
                {
                    bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
                }

                var reading = SurveyFile.Read(name, bytes.AsSpan()[..random.Next(1, bytes.Length + 1)], 1);
                if (reading.Survey is { } survey)
                {
                    SurveyMender.Mend(survey with { WeldMm = 0.1 });
                }

                Assert.True(reading.Survey is null == (reading.Faults.Length > 0));
            }
        }
    }

    private static byte[] Stl(int triangles)
    {
        using var stream = new MemoryStream();
        stream.SetLength(84 + (50L * triangles));
        stream.Position = 80;
        stream.Write(BitConverter.GetBytes(triangles));
        return stream.ToArray();
    }

    private static JobReading Job(string lines) =>
        JobReader.Read(JobWith($"{{ \"lines\": [{string.Join(", ", lines.TrimEnd('\n').Split('\n').Select(line => $"\"{line}\""))}] }}"));

    private static string JobWith(string survey) =>
        $$"""{ "schemaVersion": 1, "date": "2026-03-01", "frame": { "survey": {{survey}} }, "cloths": [{ "name": "canvas", "rollWidth": "2 m" }] }""";
}
