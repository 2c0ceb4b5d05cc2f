using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Frames;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Reports;

/// <summary>Writes measuring.html: what to measure on a standing frame, with pictures, the job's own numbers, and a line to sign.</summary>
/// <remarks>HTML 5 that is also well-formed XML, as the report is; prints on A4. Same job, same bytes.</remarks>
public static class MeasuringPaper
{
    /// <summary>Name of the file.</summary>
    public const string Name = "measuring.html";

    private const char NoBreak = '\u00A0';

    /// <summary>What the numbers of the job are for.</summary>
    internal const string Slip = "The job's own number stands in brackets; more than 10 mm (3/8 in) apart, or 2 mm (1/16 in) at struts, is a slip in one of them.";

    /// <summary>What is filled in at the foot of the sheet.</summary>
    internal static readonly ImmutableArray<string> Signed = ["Measured by", "day", "The measures are right: customer"];

    /// <param name="job">The job whose numbers stand beside the blanks; null before there is one.</param>
    /// <param name="frame">Its frame; null before there is one.</param>
    /// <returns>The file in UTF-8 with "\n" line ends.</returns>
    public static byte[] Write(Job? job, Frame? frame)
    {
        var title = "Measuring sheet" + (job is null ? "" : ": " + HeadSection.Title(job));
        using var page = new PageWriter();
        page.Begin(title, ReportStyle.Sheet);
        page.Line("h1", title);
        page.Line("p", job is null
            ? "Before there is a job. Steel tape, one unit for the whole sheet: ______________"
            : FormattableString.Invariant($"{job.Date:yyyy-MM-dd}. Steel tape, one unit for the whole sheet: ______________ {Slip}"));
        page.Line("p", "Everything seen from outside", ("class", "outside"));
        page.Open("div", ("class", "view"));
        foreach (var picture in MeasuringPictures.All)
        {
            page.Line("h3", picture.Name);
            FigureSvg.Write(page, picture);
        }

        page.Close();
        WriteItems(page, job, frame);
        page.Line("p", "Measures 3 and 4 tell what others tell already, on purpose: they catch a slip. Measure on the ground where you can; nobody climbs on a frame that is not anchored.");
        page.Open("table", ("class", "wide"));
        page.Open("tbody");
        foreach (var line in Signed)
        {
            page.Open("tr");
            page.Line("td", line + ":");
            page.Line("td", "______________________________________");
            page.Close();
        }

        page.Close();
        page.Close();
        return page.End();
    }

    /// <summary>Before there is a job there is no column for its numbers; a word and its blank stay on one line.</summary>
    private static void WriteItems(PageWriter page, Job? job, Frame? frame)
    {
        string[] own = job is null ? [] : ["The job has"];
        page.Table(
            "wide",
            ["", "Measure", .. own, "Measured"],
            MeasuringItems.Of(job, frame).Select(item => (string[])
            [
                item.Number,
                item.What,
                .. own.Select(_ => item.Own.Length > 0 ? "[" + item.Own + "]" : ""),
                string.Join("   ", item.Blanks.Select(blank => (blank.Length > 0 ? blank.Replace(' ', NoBreak) + NoBreak : "") + "_________")),
            ]));
    }
}
