using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Reports;

public sealed class ReportViewTests
{
    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 3)]
    [InlineData(3, 5)]
    [InlineData(4, 7)]
    [InlineData(5, 14)]
    [InlineData(8, 13)]
    public void Write_Views_TextsKeepOffEachOther(int frequency, int rows)
    {
        var page = new ReportPage(ReportResults.WithoutLays(ReportResults.Dome(frequency, rows)));

        Assert.Equal(4, page.Views.Length);
        foreach (var view in page.Views)
        {
            // By the width of the page: x across, so that only near texts are compared.
            var texts = view.Descendants("text").Select(text => (text.Value, Box: ReportPage.Box(text))).OrderBy(text => text.Box.Min(p => p.X)).ToArray();
            for (var i = 0; i < texts.Length; i++)
            {
                var reach = texts[i].Box.Max(p => p.X);
                foreach (var other in texts.Skip(i + 1).TakeWhile(other => other.Box.Min(p => p.X) < reach))
                {
                    Assert.False(ReportPage.Overlap(texts[i].Box, other.Box), $"{texts[i].Value} and {other.Value}");
                }
            }
        }
    }

    [Fact]
    public void Write_SpreadPlanOfBands_TellsSeamsFromFolds()
    {
        // 3V 5/8: row 1 in five bands has 5 seams within it, 30 facets less 5 bands are 25 folds; 165 struts in all.
        var job = ReportResults.Dome(3, 5) with { Panels = [new PanelWish(PanelForm.Bands, new RowRange(1, 1)), new PanelWish(PanelForm.Facets)] };

        var plan = new ReportPage(ReportResults.WithoutLays(job)).Views[3];

        Assert.Equal(165 - 25, plan.Descendants("polyline").Count(line => (string?)line.Attribute("class") == "seam"));
        Assert.Equal(105, plan.Descendants("polygon").Count(polygon => (string?)polygon.Attribute("class") == "part"));
    }

    [Fact]
    public void Write_Views_EachFacetIsNamedOrCalledTooSmall()
    {
        var result = ReportResults.WithoutLays(ReportResults.Dome(3, 5));
        var page = new ReportPage(result);

        foreach (var view in page.Views)
        {
            var named = ReportPage.Texts(view, "facet");
            var faces = view.Descendants("polygon").Count(polygon => (string?)polygon.Attribute("class") is "face" or "part");
            var small = view.Elements("p").Sum(p => Count(p.Value));

            Assert.Equal(named.Distinct().Count(), named.Length);
            Assert.Equal(faces, named.Length + small);
        }

        // From above every facet of a 3V 5/8 that leans inward is seen, and the spread plan hides none.
        Assert.Equal(result.Pieces.Pieces.Select(piece => piece.Label).Order(), ReportPage.Texts(page.Views[3], "facet").Order());

        // "Too small here for their names: F1.01, F1.03 to F1.05." counts four.
        static int Count(string list) => list[(list.IndexOf(':', StringComparison.Ordinal) + 1)..].TrimEnd('.').Split(',').Sum(part =>
        {
            var ends = part.Split(" to ").Select(label => int.Parse(label.Split('.')[1], System.Globalization.CultureInfo.InvariantCulture)).ToArray();
            return ends[^1] - ends[0] + 1;
        });
    }

    [Theory]
    [InlineData(3, 5)]
    [InlineData(4, 7)]
    public void Write_Plan_EveryBaseHubBearsItsRaise(int frequency, int rows)
    {
        var result = ReportResults.WithoutLays(ReportResults.Dome(frequency, rows));
        var page = new ReportPage(result);

        var expected = result.Frame.Base.Select(hub => result.Frame.Hubs[hub])
            .Select(hub => FormattableString.Invariant($"{hub.Label} +{Math.Round(hub.Position.Z)}"));

        Assert.Equal(expected.Order(), ReportPage.Texts(page.Views[0], "hub").Order());
        // An elevation shows the near half of them.
        Assert.InRange(ReportPage.Texts(page.Views[1], "hub").Length, (result.Frame.Base.Length / 2) - 1, (result.Frame.Base.Length / 2) + 2);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Write_SpreadPlan_NoFacetIsTurnedOver(int frequency)
    {
        // The lowest cut there is: all rows but the last.
        var page = new ReportPage(ReportResults.WithoutLays(ReportResults.Dome(frequency, (3 * frequency) - 1)));

        var faces = page.Views[3].Descendants("polygon").Select(ReportPage.Corners).ToArray();

        // y runs down on the page, so that counter-clockwise rings have negative areas there.
        Assert.All(faces, face => Assert.True(Rings.SignedArea(face) < -0.5));
    }

    [Fact]
    public void Write_Elevation_StandsUprightAndShowsTheFront()
    {
        var result = ReportResults.WithoutLays(ReportResults.Dome(2, 3, 2000));
        var page = new ReportPage(result);

        var front = page.Views[1];
        var top = front.Descendants("polygon").SelectMany(ReportPage.Corners).Min(p => p.Y);
        var bottom = front.Descendants("polygon").SelectMany(ReportPage.Corners).Max(p => p.Y);

        // 2V half of R = 2000, stand-off 25 and drop 60, ease 0.3 %: about 2085 x 1.003 high, 1:30 on paper.
        Assert.Equal(2085 * 1.003 / 30, bottom - top, 0.3);
        // All texts of facets belong to the half that faces +x: of the five in the top row the first and the last are nearest.
        Assert.Contains(ReportPage.Texts(front, "facet"), text => text.EndsWith(".01", StringComparison.Ordinal));
    }
}
