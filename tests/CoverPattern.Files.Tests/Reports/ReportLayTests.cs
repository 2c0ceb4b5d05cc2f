using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Xml.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Tests.Reports;

public sealed class ReportLayTests
{
    [Fact]
    public void Write_Lay_EveryPieceIsNamedInAStripAndHasItsPlace()
    {
        var result = ReportResults.WithLays(ReportResults.Dome(2, 3));
        var page = new ReportPage(result);
        var lay = result.Lays.Single();
        var patterns = result.Pieces.Patterns.ToDictionary(pattern => pattern.Id);
        var patternOf = result.Pieces.Pieces.ToDictionary(piece => piece.Label, piece => patterns[piece.Pattern]);

        // A piece too small for its name bears a number, and below the strip stands what it is: "1 is P1.07".
        var named = page.OfClass("strip").SelectMany(strip => ReportPage.Texts(strip, "piece").Select(text => Keys(strip).GetValueOrDefault(text, text))).Distinct();
        var rows = page.OfClass("places").Single().Descendants("tbody").Single().Elements("tr")
            .Select(row => row.Elements("td").Select(cell => cell.Value).ToArray()).ToArray();

        Assert.Equal(lay.Placements.Select(placement => placement.Piece).Order(), named.Order());
        Assert.Equal(lay.Placements.Select(placement => placement.Piece), rows.Select(row => row[0]));
        foreach (var (row, placement) in rows.Zip(lay.Placements))
        {
            var map = RigidMap.FromDegrees(placement.TurnDegrees, new Point2(placement.X, placement.Y), placement.Mirrored);
            Assert.NotEqual(row[3], row[6]);
            foreach (var cells in new[] { row[3..6], row[6..9] })
            {
                var corner = map.Apply(patternOf[placement.Piece].SewLine[int.Parse(cells[0], CultureInfo.InvariantCulture) - 1]);
                // Printed to the millimetre.
                Assert.Equal(corner.X, double.Parse(cells[1], CultureInfo.InvariantCulture), 0.5);
                Assert.Equal(corner.Y, double.Parse(cells[2], CultureInfo.InvariantCulture), 0.5);
            }
        }
    }

    private static Dictionary<string, string> Keys(XElement strip) => strip.Elements("p").SelectMany(p => p.Value.Split(':')[^1].TrimEnd('.').Split(", "))
        .Where(part => part.Contains(" is ", StringComparison.Ordinal))
        .ToDictionary(part => part.Split(" is ")[0].Trim(), part => part.Split(" is ")[1]);

    [Fact]
    public void Write_Lay_NamesKeepOffGrainLinesAndEachOther()
    {
        var page = new ReportPage(ReportResults.WithLays(ReportResults.Dome(2, 3)));

        foreach (var strip in page.OfClass("strip"))
        {
            var names = strip.Descendants("text").Where(text => (string?)text.Attribute("class") == "piece").Select(ReportPage.Box).ToArray();
            var grains = strip.Descendants("polyline").Where(line => (string?)line.Attribute("class") == "grain").Select(ReportPage.Corners)
                .Select(line => new[] { line[0], line[1], line[1] + new Point2(0, 0.01), line[0] + new Point2(0, 0.01) }).ToArray();
            Assert.NotEmpty(grains);
            foreach (var (name, i) in names.Select((name, i) => (name, i)))
            {
                Assert.All(grains, grain => Assert.False(ReportPage.Overlap(name, grain)));
                Assert.All(names.Skip(i + 1), other => Assert.False(ReportPage.Overlap(name, other)));
            }
        }
    }

    [Fact]
    public void Write_Strips_CoverTheWholeLay()
    {
        var result = ReportResults.WithLays(ReportResults.Dome(2, 3));
        var page = new ReportPage(result);

        // "0.00 m to 4.30 m from the cut end"
        var ends = page.OfClass("strip").Select(strip => strip.Element("p")!.Value.Split(' '))
            .Select(words => (From: double.Parse(words[0], CultureInfo.InvariantCulture), To: double.Parse(words[3], CultureInfo.InvariantCulture))).ToArray();

        Assert.Equal(0, ends[0].From);
        Assert.All(ends.Zip(ends.Skip(1)), pair => Assert.Equal(pair.First.To, pair.Second.From));
        Assert.Equal(result.Lays.Single().LengthMm / 1000, ends[^1].To, 0.006);
    }
}
