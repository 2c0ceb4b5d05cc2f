using System;
using System.Globalization;
using System.Linq;
using System.Xml.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Tests.Reports;

public sealed class ReportPatternTests
{
    [Theory]
    [InlineData(2, 3)]
    [InlineData(3, 5)]
    [InlineData(4, 7)]
    public void Write_EveryPattern_HasALengthOnEverySide(int frequency, int rows)
    {
        var result = ReportResults.WithoutLays(ReportResults.Dome(frequency, rows));
        var page = new ReportPage(result);

        var drawn = page.OfClass("pattern").ToDictionary(section => (string)section.Attribute("id")!);

        Assert.Equal(result.Pieces.Patterns.Length, drawn.Count);
        foreach (var pattern in result.Pieces.Patterns)
        {
            var section = drawn["pattern-" + pattern.Id];
            var lengths = ReportPage.Texts(section, "side").Select(text => double.Parse(text.Split(' ')[0], CultureInfo.InvariantCulture)).ToArray();

            // In the order of the runs; half a millimetre by rounding, 0.002 mm between equal edges.
            Assert.Equal(pattern.Runs.Length, lengths.Length);
            Assert.All(lengths.Zip(pattern.Runs), pair => Assert.InRange(pair.First - pair.Second.LengthMm, -0.502, 0.502));
            Assert.Equal(pattern.SewLine.Length, ReportPage.Texts(section, "corner").Length);
            Assert.Equal([pattern.Id], ReportPage.Texts(section, "name"));
            Assert.Equal(pattern.Notches.Length, section.Descendants("polyline").Count(line => (string?)line.Attribute("class") == "notch"));
            Assert.Equal(pattern.Folds.Length, section.Descendants("polyline").Count(line => (string?)line.Attribute("class") == "fold"));
        }
    }

    [Fact]
    public void Write_PartnerEdges_PrintTheSameNumber()
    {
        // Lengths are moved by less than two grid steps, to both sides of a half millimetre, as equal edges may be.
        var result = Nudged(ReportResults.WithoutLays(ReportResults.Dome(2, 3)));
        var page = new ReportPage(result);
        var drawn = page.OfClass("pattern").ToDictionary(section => (string)section.Attribute("id")!, section => ReportPage.Texts(section, "side"));
        var pieces = result.Pieces.Pieces.ToDictionary(piece => piece.Label);

        foreach (var piece in result.Pieces.Pieces)
        {
            for (var i = 0; i < piece.Runs.Length; i++)
            {
                var partner = piece.Runs[i].Partner;
                if (partner is not null)
                {
                    Assert.Equal(
                        drawn["pattern-" + piece.Pattern][i].Split(' ')[0],
                        drawn["pattern-" + pieces[partner.Piece].Pattern][partner.Run].Split(' ')[0]);
                }
            }
        }
    }

    [Fact]
    public void Write_Patterns_TextsKeepOffEachOther()
    {
        var page = new ReportPage(ReportResults.WithoutLays(ReportResults.Dome(3, 5)));

        foreach (var section in page.OfClass("pattern"))
        {
            var texts = section.Descendants("text").Select(text => (text.Value, Box: ReportPage.Box(text))).ToArray();
            foreach (var (left, i) in texts.Select((text, i) => (text, i)))
            {
                Assert.All(texts.Skip(i + 1), right => Assert.False(ReportPage.Overlap(left.Box, right.Box), $"{left.Value} and {right.Value}"));
            }
        }
    }

    [Fact]
    public void Write_SettingOutByTape_FindsTheCorners()
    {
        var result = ReportResults.WithoutLays(ReportResults.Dome(3, 5));
        var page = new ReportPage(result);

        foreach (var pattern in result.Pieces.Patterns)
        {
            var steps = page.OfClass("pattern").Single(section => (string?)section.Attribute("id") == "pattern-" + pattern.Id)
                .Descendants("li").Select(step => step.Value).ToArray();
            // "Base 2-3: 1045"
            var ends = steps[0]["Base ".Length..steps[0].IndexOf(':', StringComparison.Ordinal)].Split('-').Select(Corner).ToArray();
            Assert.Equal(pattern.SewLine.Length - 2, steps.Length - 1);

            // "Corner 1: 1023 from 2 and 1045 from 3 (diagonal)": arcs of a millimetre's rounding meet within it.
            foreach (var step in steps.Skip(1))
            {
                var words = step.Replace(":", "", StringComparison.Ordinal).Replace(" (diagonal)", "", StringComparison.Ordinal).Split(' ');
                var corner = pattern.SewLine[Corner(words[1])];
                Assert.Equal(Point2.Distance(corner, pattern.SewLine[ends[0]]), double.Parse(words[2], CultureInfo.InvariantCulture), 0.502);
                Assert.Equal(Point2.Distance(corner, pattern.SewLine[ends[1]]), double.Parse(words[6], CultureInfo.InvariantCulture), 0.502);
            }
        }

        static int Corner(string number) => int.Parse(number, CultureInfo.InvariantCulture) - 1;
    }

    [Fact]
    public void Write_Pieces_EachNamesItsPartners()
    {
        var result = ReportResults.WithoutLays(ReportResults.Dome(2, 3));
        var page = new ReportPage(result);

        var rows = page.Section("Pieces and their seams").Descendants("tbody").Single().Elements("tr").ToDictionary(row => row.Elements("td").First().Value, row => row.Value);

        Assert.Equal(result.Pieces.Pieces.Select(piece => piece.Label), rows.Keys);
        foreach (var piece in result.Pieces.Pieces)
        {
            Assert.All(piece.Runs.Where(run => run.Partner is not null), run => Assert.Contains($"{run.Arc} \u2192 {run.Partner!.Piece} ", rows[piece.Label], StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Write_SeveralAlikeCovers_ListsPiecesOnce()
    {
        var one = ReportResults.Dome(1, 2, 900);
        var page = new ReportPage(ReportResults.WithLays(one with { Covers = 12 }));

        var pieces = page.Section("Pieces and their seams").Descendants("tbody").Single().Elements("tr").Count();
        var places = page.OfClass("places").Single().Descendants("tbody").Single().Elements("tr").Select(row => row.Elements("td").First().Value).ToArray();

        // 1V of two rows: five facets and ten.
        Assert.Equal(15, pieces);
        Assert.Equal(12 * 15, places.Length);
        Assert.Equal(places.Length, places.Distinct().Count());
    }

    [Fact]
    public void Write_MirroredPieces_AreCountedOnTheirPattern()
    {
        // Every other piece is called a mirrored one, whatever its shape: the paper only counts.
        var made = ReportResults.WithoutLays(ReportResults.Dome(3, 5));
        var result = made with { Pieces = made.Pieces with { Pieces = [.. made.Pieces.Pieces.Select((piece, i) => piece with { Mirrored = i % 2 == 1 })] } };
        var page = new ReportPage(result);

        foreach (var pattern in result.Pieces.Patterns)
        {
            var mirrored = result.Pieces.Pieces.Count(piece => piece.Pattern == pattern.Id && piece.Mirrored);
            var head = page.OfClass("pattern").Single(section => (string?)section.Attribute("id") == "pattern-" + pattern.Id).Descendants("h3").Single().Value;
            var end = mirrored == 0 ? string.Empty : mirrored == pattern.Quantity ? ", all mirrored" : $", {mirrored} of them mirrored";
            Assert.Equal($"{pattern.Id}: cut {pattern.Quantity} x{end}", head);
        }
    }

    [Fact]
    public void Write_PatternOfOnePiece_NamesPartnersAlongItsEdges()
    {
        var result = ReportResults.WithoutLays(ReportResults.Dome(2, 3));
        // The first piece gets a pattern of its own, of the same shape.
        var first = result.Pieces.Pieces[0] with { Pattern = "T99" };
        var shape = result.Pieces.Patterns.Single(pattern => pattern.Id == result.Pieces.Pieces[0].Pattern) with { Id = "T99", Quantity = 1 };
        var alone = result with { Pieces = new([.. result.Pieces.Patterns, shape], [first, .. result.Pieces.Pieces.Skip(1)]) };
        var section = new ReportPage(alone).OfClass("pattern").Single(part => (string?)part.Attribute("id") == "pattern-" + first.Pattern);

        foreach (var run in first.Runs.Where(run => run.Partner is not null))
        {
            Assert.Contains(ReportPage.Texts(section, "side"), text => text.EndsWith($" {run.Arc} to {run.Partner!.Piece}", StringComparison.Ordinal));
            Assert.Contains($"{run.Arc} \u2192 {run.Partner!.Piece}", section.Value, StringComparison.Ordinal);
        }
    }

    private static Result Nudged(Result result) => result with
    {
        Pieces = result.Pieces with
        {
            Patterns = [.. result.Pieces.Patterns.Select((pattern, i) => pattern with
            {
                Runs = [.. pattern.Runs.Select(run => run with { LengthMm = Math.Floor(run.LengthMm) + (i % 2 == 0 ? 0.4995 : 0.5005) })],
            })],
        },
    };
}
