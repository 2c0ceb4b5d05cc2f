using System;
using System.Text;
using CoverPattern.Files.Reports;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Frames;

/// <summary>The paper for whoever builds the frame, as plain text: struts, stock, hubs, order of erection; cells apart by tabs.</summary>
public static class FrameSheet
{
    /// <summary>Writes the paper.</summary>
    /// <param name="job">Its units, end allowance and bars are read.</param>
    /// <param name="frame">The frame.</param>
    public static string Write(Job job, Frame frame)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);

        var text = new StringBuilder();
        foreach (var table in FrameSchedules.Of(frame, StockList.Make(job.Frame, frame), Ruler.Of(job), 2 * (job.Frame.Struts?.EndAllowanceMm ?? 0)))
        {
            text.Append(text.Length > 0 ? "\n" : "").Append(table.Title).Append('\n').AppendJoin('\t', table.Heads).Append('\n');
            foreach (var row in table.Rows)
            {
                text.AppendJoin('\t', row).Append('\n');
            }
        }

        return text.ToString();
    }
}
