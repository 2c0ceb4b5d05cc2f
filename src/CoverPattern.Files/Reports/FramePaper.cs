using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Frames;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Reports;

/// <summary>Writes frame.html: the paper for whoever builds the frame, with plan, elevations and schedules.</summary>
/// <remarks>HTML 5 that is also well-formed XML, as the report is; prints on A4. Same job, same bytes.</remarks>
public static class FramePaper
{
    /// <summary>Name of the file.</summary>
    public const string Name = "frame.html";

    /// <param name="job">Title, day, units, end allowance and bars are read.</param>
    /// <param name="frame">The frame that follows from the job.</param>
    /// <returns>The file in UTF-8 with "\n" line ends.</returns>
    public static byte[] Write(Job job, Frame frame)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);

        var ruler = Ruler.Of(job);
        using var page = new PageWriter();
        page.Begin("Frame: " + HeadSection.Title(job), ReportStyle.Sheet);
        page.Line("h1", "Frame: " + HeadSection.Title(job));
        page.Line(
            "p",
            FormattableString.Invariant($"{job.Date:yyyy-MM-dd}; {frame.Hubs.Length} hubs, {frame.Struts.Length} struts in {frame.Classes.Length} classes, {frame.Facets.Length} facets, {frame.Base.Length} base hubs; top {ruler.WithUnit(frame.Hubs.Max(hub => hub.Position.Z))} over the lowest base hub centres"),
            ("class", "lead"));
        page.Line("div", "Caution: this paper tells lengths and places, not strength. Tubes, hubs, bolts, anchors, wind and snow are for local codes and somebody licensed to check. Never leave out or cut struts to suit a cover.", ("class", "caution"));
        WriteViews(page, frame, ruler);
        WriteTables(page, job, frame, ruler);
        return page.End();
    }

    private static void WriteViews(PageWriter page, Frame frame, Ruler ruler)
    {
        page.Line("p", $"Bars that face the onlooker, drawn to hub centres. A letter beside a bar is its class, and where there was no room for it the order of erection tells it; H1.07 is hub 7 of ring 1, counted counter-clockwise seen from above from the front; ring 0 is the base. Behind each base hub stands its raise over the lowest one, {ruler.Unit}.");
        DomeView[] views = [.. new[] { DomeDirection.Plan, DomeDirection.Front, DomeDirection.Side }.Select(direction => FrameDrawing.Draw(frame, direction, ruler))];
        foreach (var view in views)
        {
            page.Open("div", ("class", "view"));
            page.Line("h3", view.Figure.Name);
            FigureSvg.Write(page, view.Figure);
            if (!view.Unlabelled.IsEmpty)
            {
                page.Line("p", $"Too near to each other here for their names: {LabelRanges.List(view.Unlabelled)}.", ("class", "small"));
            }

            page.Close();
        }

        var seen = views.SelectMany(view => view.Seen).Concat(frame.Base.Select(hub => frame.Hubs[hub].Label)).ToHashSet(StringComparer.Ordinal);
        var hidden = frame.Hubs.Select(hub => hub.Label).Where(label => !seen.Contains(label)).ToArray();
        if (hidden.Length > 0)
        {
            page.Line("p", $"Behind, and in none of the views: {LabelRanges.List(hidden)}.", ("class", "small"));
        }
    }

    private static void WriteTables(PageWriter page, Job job, Frame frame, Ruler ruler)
    {
        var tables = FrameSchedules.Of(frame, StockList.Make(job.Frame, frame), ruler, 2 * (job.Frame.Struts?.EndAllowanceMm ?? 0));
        foreach (var table in tables)
        {
            page.Line("h2", table.Title);
            page.Table(table == tables[^1] ? "wide" : "numbers", table.Heads, table.Rows.Select(row => (ImmutableArray<string>)row).Select(row => row.ToArray()));
            if (table == tables[0])
            {
                page.Line("p", "End bend: between bar and the plane square to the mean of the facets' normals at the hub. Lengths: measure and cut from one end of the tape; a class given as a range holds measured struts of unlike length, each to be kept where it was.", ("class", "small"));
            }
        }
    }
}
