using System;
using System.Collections.Generic;
using System.Linq;
using System.Xml.Linq;
using CoverPattern.Files.Reports;
using CoverPattern.Files.Results;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Geometry;
using NetTopologySuite.Geometries;

namespace CoverPattern.Files.Tests.Reports;

/// <summary>Openings, pipes, slits and zips in the report's drawings of the whole cover, read back from the page.</summary>
public sealed class OpeningFigureTests
{
    // A cover with one of each: a door to the hem, a window over three facets, a vent inside a facet, a slit, a round window, a pipe, a roof, a zip in a seam.
    private const string Job = """
        {
          "schemaVersion": 1, "title": "Openings", "date": "2026-03-01",
          "frame": { "frequency": 2, "cut": "1/2", "size": { "radius": "3.35 m" } },
          "standOff": { "tubeRadius": "17 mm", "hubHeight": "20 mm", "padding": "3 mm" },
          "seam": { "makeUp": "plain", "zips": [ { "strut": "H0.09-H1.09", "from": "400 mm", "length": "800 mm" } ] },
          "skirt": { "drop": "120 mm" },
          "cloths": [
            { "name": "canvas", "rollWidth": "2.4 m" }, { "name": "clear", "rollWidth": "1.4 m" }, { "name": "mesh", "rollWidth": "1.8 m" },
            { "name": "heat", "rollWidth": "1.5 m", "serviceTemperature": 550 }
          ],
          "openings": [
            { "kind": "door", "outline": "rectangle", "width": "900 mm", "height": "1700 mm", "above": "600 mm", "towards": 36, "screen": "mesh", "doubled": ["H0.01-H1.02", "H0.02-H1.02"] },
            { "kind": "window", "outline": "rounded", "corner": "150 mm", "width": "2100 mm", "height": "600 mm", "above": "900 mm", "towards": 180, "sheet": "clear" },
            { "kind": "highVent", "outline": "rectangle", "width": "400 mm", "height": "250 mm", "facet": "F3.02", "screen": "mesh" },
            { "kind": "slit", "outline": "line", "height": "500 mm", "facet": "F2.12" }
          ],
          "windows": [ { "facets": ["F2.02", "F2.05"], "aperture": "500 mm", "pane": "clear", "screen": "mesh" } ],
          "pipes": [ { "run": "level", "diameter": "150 mm", "clear": "200 mm", "cloth": "heat", "facet": "F2.08" } ],
          "roof": { "row": 3 },
          "lay": { "effort": 1 }
        }
        """;

    private static readonly string[] Closed = ["O2", "O3", "W2.02", "W2.05", "J1"];

    private static readonly Lazy<Result> Made = new(() => AnyResults.Make(Job, isLaid: false)!);
    private static readonly Lazy<ReportPage> Page = new(() => new ReportPage(Made.Value));

    [Fact]
    public void Write_SpreadPlan_NamesEveryOpeningSlitAndZip()
    {
        var zips = RoofFacts.Of(Made.Value)!.Zips.Select(zip => zip.Label);
        var parted = Made.Value.Cut.Arcs.Single(arc => arc.MakeUp?.Name == "zip in a seam").Label;

        Assert.Equal([.. Closed.Concat(["O1", "O4", parted]).Concat(zips).Order()], ReportPage.Texts(Page.Value.Views[3], "opening").Order());
    }

    [Fact]
    public void Write_Drawings_NamesStandInTheirRims()
    {
        foreach (var (drawing, i) in Page.Value.Views.Concat(Page.Value.OfClass("row")).Select((drawing, i) => (drawing, i)))
        {
            // An opening over several faces has a rim in parts: together they close, but where a view hides one of the faces.
            var rings = Polygons(drawing, "rim").ToArray();
            foreach (var text in drawing.Descendants("text").Where(text => (string?)text.Attribute("class") == "opening" && Closed.Any(name => IsOf(text.Value, name) && (i >= 3 || name != "O2"))))
            {
                // A rim seen from the side is too narrow for its name, which then stands beside it.
                Assert.Contains(rings, ring => ring.Distance(Box(text)) < 0.8);
            }
        }

        var inside = Page.Value.Views[3].Descendants("text").Where(text => text.Value is "O2" or "O3" or "J1").ToArray();
        Assert.Equal(3, inside.Length);
        Assert.All(inside, text => Assert.Contains(Polygons(Page.Value.Views[3], "rim"), ring => ring.Contains(Box(text))));
    }

    [Fact]
    public void Write_Rows_EveryOpeningIsNamedInTheRowsItLiesIn()
    {
        var rows = Page.Value.OfClass("row").GroupBy(row => row.Element("h3")!.Value.Split(',')[0])
            .ToDictionary(row => row.Key, row => row.SelectMany(part => ReportPage.Texts(part, "opening")).ToArray());

        // By hand from the job: the door stands in row 1 and reaches to 1450 mm; windows, slit and pipe name their facets.
        Assert.Contains("O1", rows["Row 1"]);
        Assert.Contains("O2", rows["Row 1"]);
        Assert.Contains("O3", rows["Row 3"]);
        Assert.Contains("O4", rows["Row 2"]);
        Assert.Contains("J1", rows["Row 2"]);
        Assert.Contains(rows["Row 2"], name => name.StartsWith("W2.02r R00", StringComparison.Ordinal));
        Assert.Contains(rows["Row 2"], name => name.StartsWith("W2.05r R00", StringComparison.Ordinal));
    }

    [Fact]
    public void Write_Rows_TheDoorsRimIsDrawnAsZipAndNoOther()
    {
        double[] LengthsOf(XElement row, string kind) => [.. row.Descendants("polyline").Where(line => (string?)line.Attribute("class") == kind).Select(ReportPage.Corners)
            .Select(line => line.Skip(1).Select((point, i) => Point2.Distance(line[i], point)).Sum())];
        var rows = Page.Value.OfClass("row").ToLookup(row => LengthsOf(row, "rim zip").Length > 0);
        var door = LengthsOf(Assert.Single(rows[true]), "rim zip");

        // By hand from the job: the large window, sewn in, is 2100 x 600 with corners of 150, so its rim tells the scale of row 1. Of the door's zips all but the two
        // ends of its jambs over the skirt, which stand last, are drawn to it, and the skirt hangs by 120 mm at most; it is drawn higher than it is.
        var scale = ((2 * (2100 + 600)) - (8 * 150) + (2 * Math.PI * 150)) / LengthsOf(rows[false].First(), "rim").Sum();
        var zips = Made.Value.Pieces.Fittings.Where(fitting => fitting.What == "zip" && fitting.Label.StartsWith("O1f", StringComparison.Ordinal)).Sum(zip => zip.LengthMm);
        Assert.Empty(LengthsOf(rows[true].First(), "rim"));
        Assert.Equal(9, door.Length);
        Assert.InRange((zips - (scale * door[..7].Sum())) / 2, 1, 120);
    }

    [Fact]
    public void Write_Plan_RoundWindowHasItsAreaFromAbove()
    {
        var view = DomeSection.Views(Made.Value)[0];

        // Own derivation: seen from above a circle has its area times the cosine of the facet's tilt; the cover's facet is parallel to the frame's.
        var expected = Math.PI * 250 * 250 * NormalOf("F2.02").Z / view.Scale / view.Scale;

        var areas = Polygons(Page.Value.Views[0], "rim").Select(ring => ring.Area).ToArray();
        Assert.Contains(areas, area => Math.Abs(area - expected) < 0.01 * expected);
    }

    [Fact]
    public void Write_Plan_SlitIsAsLongAsItsLevelReach()
    {
        var view = DomeSection.Views(Made.Value)[0];

        // Own derivation: straight up is square to the facet's ring edge, in its plane; the level part of that direction is what is seen from above.
        var ring = Made.Value.Frame.Facets.Single(facet => facet.Label == "F2.12").Hubs.Select(hub => Made.Value.Frame.Hubs[hub]).GroupBy(hub => hub.Ring).Single(group => group.Count() == 2).ToArray();
        var up = Point3.Cross(NormalOf("F2.12"), (ring[1].Position - ring[0].Position).Unit());
        var slit = Page.Value.Views[0].Descendants("polyline").Where(line => (string?)line.Attribute("class") == "slit").Select(ReportPage.Corners).ToArray();
        Assert.Equal(500 * up.Plan.Length / view.Scale, slit.Sum(line => Point2.Distance(line[0], line[^1])), 0.01);
    }

    [Fact]
    public void Write_Buying_TellsWhichZipsComeApart()
    {
        // By hand from the job: three zips of the door that comes off whole, three of its screen, five of the roof; the slit's; the one in a seam.
        var rows = Page.Value.Root.Descendants("table").SelectMany(table => table.Descendants("tr")).Select(row => row.Elements("td").Select(cell => cell.Value).ToArray())
            .Where(cells => cells.Length == 5 && cells[0].Contains("ips, ", StringComparison.Ordinal)).ToDictionary(cells => cells[0], cells => cells[1]);

        Assert.Equal(["Separating zips, No. 10 coil", "Zips, No. 10 coil", "Zips, zip in a seam"], rows.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(("11", "1", "1"), (rows["Separating zips, No. 10 coil"], rows["Zips, No. 10 coil"], rows["Zips, zip in a seam"]));
    }

    private static Point3 NormalOf(string label)
    {
        var hubs = Made.Value.Frame.Facets.Single(facet => facet.Label == label).Hubs.Select(hub => Made.Value.Frame.Hubs[hub].Position).ToArray();
        return Point3.Cross(hubs[1] - hubs[0], hubs[2] - hubs[0]).Unit();
    }

    private static bool IsOf(string text, string name) => text == name || text.StartsWith(name + "r ", StringComparison.Ordinal);

    private static IEnumerable<Polygon> Polygons(XElement view, string kind)
    {
        var polygonizer = new NetTopologySuite.Operation.Polygonize.Polygonizer();
        foreach (var line in view.Descendants("polyline").Where(line => (string?)line.Attribute("class") == kind))
        {
            Coordinate[] points = [.. ReportPage.Corners(line).Select(corner => new Coordinate(Math.Round(corner.X, 2), Math.Round(corner.Y, 2)))];
            polygonizer.Add(new LineString(points));
        }

        return polygonizer.GetPolygons().Cast<Polygon>();
    }

    private static Polygon Box(XElement text)
    {
        Coordinate[] corners = [.. ReportPage.Box(text).Select(corner => new Coordinate(corner.X, corner.Y))];
        return new Polygon(new LinearRing([.. corners, corners[0]]));
    }
}
