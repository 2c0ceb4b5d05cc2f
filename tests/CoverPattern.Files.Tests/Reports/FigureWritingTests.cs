using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Xml.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Patterns.Seams;
using CsCheck;
using NetTopologySuite.Geometries;

namespace CoverPattern.Files.Tests.Reports;

/// <summary>Holds the writing of the report's figures to what a person needs, read from the page and judged by geometry of other make.</summary>
public sealed class FigureWritingTests
{
    // What no writing may stand on, by class; all other lines are leaders, frames and scales.
    private static readonly string[] Marks = ["face", "skirt", "part", "seam", "rim", "rim zip", "hem", "cut", "inner-cut", "sew", "fold", "grain", "notch", "drawn-mark", "head", "dot"];

    [Fact]
    public void Write_FiguresOfFewJobs_WritingKeepsOffLinesAndOtherWriting() => Draw(jobs: 4, least: 1);

    [Fact]
    [Trait("Category", "Long")]
    public void Write_FiguresOfAnyJob_WritingKeepsOffLinesAndOtherWriting() => Draw(jobs: 40, least: 20);

    [Fact]
    [Trait("Category", "Long")]
    public void Write_LaysOfAnyJob_WritingKeepsOffOtherWritingAndGrain() => AnyResults.Jobs.Sample(
        text =>
        {
            if (AnyResults.Make(text, isLaid: true) is { } result)
            {
                WritingRules.None(new ReportPage(result).Root.Descendants("svg").SelectMany(Complaints));
            }
        },
        iter: 12,
        threads: 1);

    private static void Draw(int jobs, int least)
    {
        var drawn = 0;
        AnyResults.Jobs.Where(text => !text.Contains("\"frequency\": 4", StringComparison.Ordinal) || jobs > 10).Sample(
            text =>
            {
                if (AnyResults.Make(text, isLaid: false) is not { } result)
                {
                    return;
                }

                drawn++;
                var page = new ReportPage(result);
                WritingRules.None(page.Root.Descendants("svg").SelectMany(Complaints));
                WritingRules.None(Missing(page, result));
            },
            iter: jobs,
            threads: 1);

        Assert.True(drawn >= least, $"{drawn} of {jobs} were drawn");
    }

    /// <summary>Seams without a name in the drawings row by row, and pieces not named once in a drawing.</summary>
    private static IEnumerable<string> Missing(ReportPage page, Result result)
    {
        var rows = page.OfClass("row").ToArray();
        var named = rows.SelectMany(row => ReportPage.Texts(row, "seam-name")).ToHashSet();
        foreach (var arc in result.Cut.Arcs.Where(arc => arc.Second is not null && arc.Role == EdgeRole.Seam && !named.Contains(arc.Label)))
        {
            yield return arc.Label + " is nowhere named";
        }

        foreach (var row in rows)
        {
            foreach (var twice in ReportPage.Texts(row, "facet").GroupBy(name => name).Where(name => name.Count() > 1))
            {
                yield return $"{twice.Key} stands {twice.Count()} times in {row.Element("h3")!.Value}";
            }

            if (!row.Element("h3")!.Value.Contains("seen from outside", StringComparison.Ordinal))
            {
                yield return "not told from where: " + row.Element("h3")!.Value;
            }
        }

        var pieces = rows.SelectMany(row => ReportPage.Texts(row, "facet")).ToHashSet();
        foreach (var piece in result.Pieces.Pieces.Where(piece => !piece.Facets.IsEmpty && !pieces.Contains(piece.Label)))
        {
            yield return piece.Label + " is nowhere named";
        }
    }

    private static IEnumerable<string> Complaints(XElement svg)
    {
        var name = svg.Element("title")!.Value;
        var lines = svg.Elements().Where(line => line.Name.LocalName is "polygon" or "polyline" && Marks.Contains((string?)line.Attribute("class")))
            .Select(line => (Kind: (string)line.Attribute("class")!, Shape: Line(line))).ToArray();
        var texts = svg.Elements("text").Select(text => (text.Value, Kind: (string)text.Attribute("class")!, Box: Box(text))).ToArray();
        for (var i = 0; i < texts.Length; i++)
        {
            foreach (var other in texts.Skip(i + 1).Where(other => Meet(other.Box, texts[i].Box)))
            {
                yield return $"{name}: {texts[i].Value} over {other.Value}";
            }

            foreach (var line in lines.Where(line => Meet(line.Shape, texts[i].Box)))
            {
                yield return $"{name}: {texts[i].Value} over a line: {line.Kind}";
            }
        }
    }

    private static bool Meet(NetTopologySuite.Geometries.Geometry left, NetTopologySuite.Geometries.Geometry right) => left.EnvelopeInternal.Intersects(right.EnvelopeInternal) && left.Intersects(right);

    private static LineString Line(XElement line)
    {
        Coordinate[] points = [.. ((string)line.Attribute("points")!).Split(' ').Select(pair => pair.Split(','))
            .Select(pair => new Coordinate(double.Parse(pair[0], CultureInfo.InvariantCulture), double.Parse(pair[1], CultureInfo.InvariantCulture)))];
        return new LineString(line.Name.LocalName == "polygon" ? [.. points, points[0]] : points);
    }

    private static Polygon Box(XElement text)
    {
        Coordinate[] corners = [.. ReportPage.Box(text).Select(corner => new Coordinate(corner.X, corner.Y))];
        return new Polygon(new LinearRing([.. corners, corners[0]]));
    }
}
