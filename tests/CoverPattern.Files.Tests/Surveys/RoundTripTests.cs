using System;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using System.Text;
using CoverPattern.Files.Surveys;
using CoverPattern.Files.Tests.Reports;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Surveys;

public class RoundTripTests
{
    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 3)]
    [InlineData(3, 4)]
    [InlineData(3, 5)]
    [InlineData(4, 7)]
    public void Read_FrameWrittenAsLines_MakesTheSamePieces(int frequency, int rows)
    {
        var expected = Covers.Make(ReportResults.Dome(frequency, rows));

        var survey = Read("dome.csv", SurveyWriter.Csv(expected.Frame));
        var found = Covers.Make(Covers.Over(survey));

        Covers.AssertSame(expected.Pieces, found.Pieces);
        Assert.Equal(expected.Frame.Hubs.Select(hub => hub.Label), found.Frame.Hubs.Select(hub => hub.Label));
        Assert.Equal(expected.Frame.Facets.Select(facet => facet.Label), found.Frame.Facets.Select(facet => facet.Label));
    }

    [Theory]
    [InlineData(2, 3, 1)]
    [InlineData(3, 5, 2)]
    [InlineData(4, 7, 3)]
    public void Read_MeshTurnedAndShuffled_MakesTheSamePieces(int frequency, int rows, int seed)
    {
        var expected = Covers.Make(ReportResults.Dome(frequency, rows));

        var survey = Shuffled(Read("dome.obj", SurveyWriter.Obj(expected.Frame)), new Random(seed));
        var found = Covers.Make(Covers.Over(survey with { Up = SurveyUp.Base }));

        Covers.AssertSame(expected.Pieces, found.Pieces);
    }

    [Theory]
    [InlineData(FrameFamily.Octahedron, 4, FrameDivision.EqualChord, FrameUp.Vertex, 4, 4)]
    [InlineData(FrameFamily.Icosahedron, 4, FrameDivision.ClassTwo, FrameUp.Vertex, 4, 5)]
    [InlineData(FrameFamily.Icosahedron, 3, FrameDivision.EqualArc, FrameUp.Face, 3, 6)]
    [InlineData(FrameFamily.Icosahedron, 4, FrameDivision.LevelByInnerHubs, FrameUp.Vertex, 7, 7)]
    [InlineData(FrameFamily.Octahedron, 3, FrameDivision.EqualChord, FrameUp.Edge, 3, 8)]
    public void Read_OtherFamilies_MakeTheSamePieces(FrameFamily family, int frequency, FrameDivision division, FrameUp up, int rows, int seed)
    {
        var job = Covers.Plain with { Frame = Covers.Plain.Frame with { Family = family, Frequency = frequency, Division = division, Up = up, Rows = rows } };
        var expected = Covers.Make(job);

        var survey = Shuffled(Read("dome.obj", SurveyWriter.Obj(expected.Frame)), new Random(seed));
        var found = Covers.Make(Covers.Over(survey with { Up = SurveyUp.Base }));

        Covers.AssertSame(expected.Pieces, found.Pieces);
    }

    [Theory]
    [InlineData(2, 3)]
    [InlineData(3, 5)]
    [InlineData(6, 10)]
    public void Read_StrutsAlone_FindsTheFacets(int frequency, int rows)
    {
        var expected = Covers.Make(ReportResults.Dome(frequency, rows));
        var text = new StringBuilder("unit,mm\n");
        foreach (var hub in expected.Frame.Hubs)
        {
            text.Append(CultureInfo.InvariantCulture, $"hub,{hub.Label},{hub.Position.X:R},{hub.Position.Y:R},{hub.Position.Z:R}\n");
        }

        foreach (var strut in expected.Frame.Struts)
        {
            text.Append(CultureInfo.InvariantCulture, $"strut,{expected.Frame.Hubs[strut.To].Label},{expected.Frame.Hubs[strut.From].Label}\n");
        }

        var found = Covers.Make(Covers.Over(Read("dome.csv", text.ToString())));

        Covers.AssertSame(expected.Pieces, found.Pieces);
    }

    [Theory]
    [InlineData("dome.stl", false)]
    [InlineData("dome.stl", true)]
    [InlineData("dome.ply", false)]
    [InlineData("dome.ply", true)]
    public void Read_OtherMeshes_MakeTheSamePieces(string name, bool isBinary)
    {
        var expected = Covers.Make(ReportResults.Dome(3, 5));
        var bytes = name == "dome.stl" ? Meshes.Stl(expected.Frame, isBinary) : Meshes.Ply(expected.Frame, isBinary);

        var reading = SurveyFile.Read(name, bytes, 1);
        var found = Covers.Make(Covers.Over(reading.Survey! with { WeldMm = 0.1 }));

        // Single precision holds a coordinate of 2.5 m to 0.0003 mm.
        Covers.AssertSame(expected.Pieces, found.Pieces);
    }

    [Fact]
    public void Read_InchesAndSemicolons_AreMillimetresInside()
    {
        var survey = Read("dome.csv", "unit;in\nhub;a;1,5;-2;0\nhub;b;12' 6\";0;38 mm\nhub;c;0;10;0\nhub;d;0;0;10\nfacet;a;b;c\n");

        Assert.Equal(38.1, survey.Hubs[0].Position.X, 1e-9);
        Assert.Equal(-50.8, survey.Hubs[0].Position.Y, 1e-9);
        Assert.Equal(3810, survey.Hubs[1].Position.X, 1e-9);
        Assert.Equal(38, survey.Hubs[1].Position.Z, 1e-9);
    }

    private static FrameSurvey Read(string name, string text)
    {
        var reading = SurveyFile.Read(name, Encoding.UTF8.GetBytes(text), name.EndsWith(".csv", StringComparison.Ordinal) ? null : 1);
        Assert.Empty(reading.Faults);
        return reading.Survey! with { WeldMm = 0.1 };
    }

    /// <summary>Turned about two axes and moved; hubs, facets, first corners and running directions by chance.</summary>
    private static FrameSurvey Shuffled(FrameSurvey survey, Random random)
    {
        var (turn, lean) = (6.28 * random.NextDouble(), 3 * random.NextDouble());
        var order = Enumerable.Range(0, survey.Hubs.Length).ToArray();
        random.Shuffle(order);
        var facets = survey.Facets.ToArray();
        random.Shuffle(facets);
        var at = order.Select((old, fresh) => (old, fresh)).ToDictionary(pair => pair.old, pair => pair.fresh);
        return survey with
        {
            Hubs = [.. order.Select(old => survey.Hubs[old] with { Position = Moved(survey.Hubs[old].Position, turn, lean) })],
            Facets = [.. facets.Select(facet => facet with { Hubs = Begun([.. facet.Hubs.Select(hub => at[hub])], random) })],
        };
    }

    private static ImmutableArray<int> Begun(ImmutableArray<int> ring, Random random)
    {
        var start = random.Next(ring.Length);
        ImmutableArray<int> begun = [.. ring[start..], .. ring[..start]];
        return random.Next(2) == 0 ? begun : [.. begun.Reverse()];
    }

    private static Point3 Moved(Point3 point, double turn, double lean)
    {
        var turned = new Point3((Math.Cos(turn) * point.X) - (Math.Sin(turn) * point.Y), (Math.Sin(turn) * point.X) + (Math.Cos(turn) * point.Y), point.Z);
        var leaned = new Point3(turned.X, (Math.Cos(lean) * turned.Y) - (Math.Sin(lean) * turned.Z), (Math.Sin(lean) * turned.Y) + (Math.Cos(lean) * turned.Z));
        return leaned + new Point3(1234.5, -777, 3100);
    }
}
