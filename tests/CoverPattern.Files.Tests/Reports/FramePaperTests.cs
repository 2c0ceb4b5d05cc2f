using System;
using System.IO;
using System.Linq;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using CoverPattern.Files.Reports;
using CoverPattern.Files.Surveys;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Reports;

/// <summary>Frame paper and measuring sheet as an XML reader sees them.</summary>
public class FramePaperTests
{
    [Theory]
    [InlineData(2, 3)]
    [InlineData(3, 5)]
    [InlineData(6, 10)]
    public void Write_Dome_NamesEveryHubAndClassOnceWithoutCovering(int frequency, int rows)
    {
        var job = ReportResults.Dome(frequency, rows);
        var frame = FrameBuilder.Build(job.Frame);

        var page = Read(FramePaper.Write(job, frame));

        var plan = page.Descendants("svg").First();
        var texts = plan.Descendants("text").ToArray();
        var boxes = texts.Where(text => text.Value.StartsWith('H') && text.Value.Contains('.', StringComparison.Ordinal) && !text.Value.Contains('+', StringComparison.Ordinal)).ToArray();
        Assert.Equal(boxes.Length, boxes.Select(text => text.Value).Distinct().Count());
        Assert.Equal(frame.Base.Length, texts.Count(text => text.Value.StartsWith("H0", StringComparison.Ordinal) && text.Value.Contains('+', StringComparison.Ordinal)));
        Assert.All(frame.Classes, own => Assert.Contains(texts, text => text.Value == own.Label));
        for (var i = 0; i < boxes.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                Assert.True(ConvexOutlines.AreApart(ReportPage.Box(boxes[i]), ReportPage.Box(boxes[j])), $"{boxes[i].Value} covers {boxes[j].Value}");
            }
        }

        Assert.All(page.Descendants("svg"), AssertWithin);

        // What has no name in a drawing is named below it, and what no drawing shows in a line of its own.
        var words = page.Value;
        Assert.All(frame.Hubs, hub => Assert.Contains(hub.Label, words, StringComparison.Ordinal));
    }

    /// <summary>Read from the page alone: in no drawing does a name lie over a bar, a leader of another, or another name.</summary>
    [Theory]
    [InlineData("3V 5/8")]
    [InlineData("6V half")]
    [InlineData("gore roof on a wall")]
    [InlineData("survey")]
    public void Write_AnyFrame_NamesLieOverNothing(string kind)
    {
        var job = Named(kind);
        var page = Read(FramePaper.Write(job, FrameBuilder.Build(job.Frame)));

        foreach (var svg in page.Descendants("svg"))
        {
            var texts = svg.Descendants("text").Select(text => (Name: text.Value, Box: ReportPage.Box(text))).ToArray();
            var bars = svg.Descendants("polyline").Where(line => (string?)line.Attribute("class") == "seam").Select(ReportPage.Corners).ToArray();
            Assert.True(bars.Length > 20 && texts.Length > 20);
            foreach (var (name, box) in texts)
            {
                Assert.All(bars, bar => Assert.True(ConvexOutlines.AreApart(bar, box), $"{name} lies over a bar"));
                Assert.All(texts.Where(other => other.Name != name || other.Box != box), other => Assert.True(ConvexOutlines.AreApart(other.Box, box), $"{name} lies over {other.Name}"));
            }
        }
    }

    [Fact]
    public void Write_BaseHubStraightBelow_IsNamedOutsideThePlan()
    {
        // Twelve gores: a base hub lies straight below the middle of the plan, where "upward" and "outward" differ.
        var job = Named("gore roof on a wall");
        var svg = Read(FramePaper.Write(job, FrameBuilder.Build(job.Frame))).Descendants("svg").First();

        var lowest = svg.Descendants("polyline").Where(line => (string?)line.Attribute("class") == "seam").SelectMany(ReportPage.Corners).Max(point => point.Y);
        var name = svg.Descendants("text").Single(text => text.Value.StartsWith("H0.10 ", StringComparison.Ordinal));

        Assert.All(ReportPage.Box(name), corner => Assert.True(corner.Y > lowest, $"{corner.Y} > {lowest}"));
    }

    [Fact]
    public void Write_Stock_CountsBarsAndRest()
    {
        var plain = ReportResults.Dome(3, 5);
        var job = plain with { Frame = plain.Frame with { Stock = new StockWish(ReportResults.Mm(6000), ReportResults.Mm(3)) } };
        var frame = FrameBuilder.Build(job.Frame);

        var page = Read(FramePaper.Write(job, frame));

        var list = StockList.Make(job.Frame, frame)!;
        var heading = Assert.Single(page.Descendants("h2"), h2 => h2.Value.StartsWith("Stock", StringComparison.Ordinal));
        Assert.Contains(FormattableString.Invariant($"{list.Bars.Length} bars of 6000 mm"), heading.Value, StringComparison.Ordinal);
        var rows = heading.ElementsAfterSelf("table").First().Descendants("tr").Skip(1).Select(row => row.Elements("td").Select(cell => cell.Value).ToArray()).ToArray();
        Assert.Equal(list.Bars.Length, rows.Sum(row => int.Parse(row[0], System.Globalization.CultureInfo.InvariantCulture)));

        // Every strut of the 3V 5/8 (165) is cut once: "2 C + 1 A" times the bars cut so.
        Assert.Equal(165, rows.Sum(row => int.Parse(row[0], System.Globalization.CultureInfo.InvariantCulture)
            * row[1].Split(" + ").Sum(part => int.Parse(part.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture))));
    }

    [Fact]
    public void Write_Erection_ListsEveryStrutOnce()
    {
        var job = ReportResults.Dome(3, 5);
        var frame = FrameBuilder.Build(job.Frame);

        var page = Read(FramePaper.Write(job, frame));

        var heading = page.Descendants("h2").Single(h2 => h2.Value.StartsWith("Erection", StringComparison.Ordinal));
        var listed = heading.ElementsAfterSelf("table").First().Descendants("tr").Skip(1).SelectMany(row => row.Elements("td").Last().Value.Split(", ")).ToArray();
        Assert.Equal(165, listed.Length);
        Assert.Equal(
            frame.Struts.Select(strut => $"{strut.Class} {frame.Hubs[strut.From].Label}-{frame.Hubs[strut.To].Label}").Order(StringComparer.Ordinal),
            listed.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Measuring_WithAndWithoutJob_AsksTheSameAndHasALineToSign()
    {
        var job = ReportResults.Dome(3, 5);

        var blank = Read(MeasuringPaper.Write(null, null));
        var filled = Read(MeasuringPaper.Write(job, FrameBuilder.Build(job.Frame)));

        foreach (var page in new[] { blank, filled })
        {
            Assert.Equal(Enumerable.Range(1, 9).Select(i => FormattableString.Invariant($"{i}")), page.Descendants("tr").Select(row => row.Elements("td").FirstOrDefault()?.Value ?? "").Where(cell => cell.Length == 1));
            Assert.Contains("The measures are right: customer", page.Value, StringComparison.Ordinal);
            Assert.Equal(2, page.Descendants("svg").Count());
        }

        // String round the base hubs of the 24 ft frame 22 464.452 mm (own calculation), here R = 2500: 15 354.7 mm.
        Assert.Contains("[15355 mm]", filled.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("[", blank.Value, StringComparison.Ordinal);
        Assert.Contains("from a hub a third of the way round", blank.Value, StringComparison.Ordinal);

        // From a low hub (z -.187592 R) to the high one (z -.171639 R) 168.1814 degrees round (180 less half the angle of a chord of .403548 R): 4892.5 mm, own calculation.
        Assert.Contains("H0.01 to H0.08[4893 mm]", filled.Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3, 3)]
    [InlineData(4, 2)]
    [InlineData(7, 3)]
    public void Across_BaseOfFewHubs_NamesEachMeasureOnce(int sides, int count)
    {
        // Of a square's base the third measure is the first one backward: the diagonal 2 r. On a base of equal chords the farthest hub is n / 2 chords off.
        var frame = FrameBuilder.Build(new FrameWish(default, 0, 0, "", default, ReportResults.Mm(1000)) { Gores = new GoreWish(sides, GoreMeridian.Cone, 1, ReportResults.Mm(2000), ReportResults.Mm(900)) });

        var across = FloorMeasures.Across(frame).ToArray();

        Assert.Equal(count, across.Length);
        Assert.All(across, one => Assert.Equal(4000 * Math.Sin(Math.PI * (sides / 2) / sides), one.Mm, 1e-9));
    }

    [Fact]
    public void MeasuringPictures_All_StandWithinTheirWindow()
    {
        foreach (var picture in MeasuringPictures.All)
        {
            var points = picture.Lines.SelectMany(line => line.Points).Concat(picture.Texts.SelectMany(text => text.Box()));
            Assert.All(points, point => Assert.True(
                point.X >= picture.Window.Low.X && point.X <= picture.Window.High.X && point.Y >= picture.Window.Low.Y && point.Y <= picture.Window.High.Y, $"{picture.Name}: {point}"));
        }
    }

    /// <summary>No hub's name is cut off at the edge of its drawing.</summary>
    private static void AssertWithin(XElement svg)
    {
        var view = ((string)svg.Attribute("viewBox")!).Split(' ').Select(number => double.Parse(number, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        Assert.All(svg.Descendants("text").Where(text => text.Value.StartsWith('H')).SelectMany(ReportPage.Box), corner => Assert.True(
            corner.X >= view[0] && corner.X <= view[0] + view[2] && corner.Y >= view[1] && corner.Y <= view[1] + view[3], $"{corner}"));
    }

    private static Job Named(string kind)
    {
        var dome = ReportResults.Dome(3, 5);
        return kind switch
        {
            "3V 5/8" => dome,
            "6V half" => ReportResults.Dome(6, 9),
            "survey" => dome with { Frame = new FrameWish(default, 0, 0, "", default, ReportResults.Mm(1000)) { Survey = SurveyFile.Read("dome.csv", Encoding.UTF8.GetBytes(SurveyWriter.Csv(FrameBuilder.Build(dome.Frame)).Replace("H", "hub-", StringComparison.Ordinal)), 1).Survey! with { WeldMm = 0.1, ClassesMm = 2 } } },
            _ => dome with { Frame = new FrameWish(default, 0, 0, "", default, ReportResults.Mm(1000)) { RiserMm = 1500, Gores = new GoreWish(12, GoreMeridian.Circle, 4, ReportResults.Mm(3000), ReportResults.Mm(3000)) { Crown = ReportResults.Mm(300) } } },
        };
    }

    private static XElement Read(byte[] bytes)
    {
        using var reader = XmlReader.Create(new MemoryStream(bytes), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore });
        return XDocument.Load(reader).Root!;
    }
}
