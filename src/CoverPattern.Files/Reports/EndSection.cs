using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Reports;

/// <summary>What stands at the end: notices, what was assumed, what made the page.</summary>
internal static class EndSection
{
    public static void Write(PageWriter page, Result result)
    {
        page.Line("h2", "Notices");
        page.Line("p", "Cautions and warnings stand at the top of the first page.", ("class", "small"));
        page.Table("wide", ["About", "Place", "Notice"], result.Notices.Where(notice => notice.Level == NoticeLevel.Note)
            .Select(notice => new[] { notice.Code, notice.Place, notice.Text }));
        page.Line("h2", "Assumptions");
        page.Table("wide", ["Place in the job file", "Value", "Where it comes from", "Confirmed"], result.Job.Assumed.Select(assumption => new[]
        {
            assumption.Place, assumption.Value, assumption.Standing, HeadSection.IsConfirmed(result.Job, assumption) ? "yes" : "NO",
        }));
        page.Line("footer", $"CoverPattern {Version()}; seed {Printed.Count(result.Job.Lay.Seed)}, effort {Printed.Count(result.Job.Lay.Effort)}. All lengths in mm unless another unit is named. All drawings seen from outside.");
    }

    private static string Version() => typeof(EndSection).Assembly.GetName().Version?.ToString(3) ?? "without version";
}
