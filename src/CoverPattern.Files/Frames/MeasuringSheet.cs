using System.Linq;
using System.Text;
using CoverPattern.Files.Reports;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Frames;

/// <summary>The measuring sheet as plain text; <see cref="MeasuringPaper"/> has the same with pictures.</summary>
public static class MeasuringSheet
{
    private const string Blank = "__________";

    /// <summary>Writes the sheet.</summary>
    /// <param name="job">The job whose numbers stand beside the blanks; null before there is one.</param>
    /// <param name="frame">Its frame; null before there is one.</param>
    public static string Write(Job? job, Frame? frame)
    {
        var text = new StringBuilder("MEASURING SHEET").Append(job is null ? "" : ": " + HeadSection.Title(job)).Append("\nEverything is seen from outside. Steel tape, one unit for the whole sheet: ______\n");
        text.Append(job is null ? "\n" : MeasuringPaper.Slip + "\n\n");
        foreach (var item in MeasuringItems.Of(job, frame))
        {
            text.Append(item.Number.Length > 0 ? item.Number + ". " : "   ").Append(item.What);
            text.Append(item.Blanks.IsEmpty ? "\n" : ": ").Append(item.Own.Length > 0 ? "[" + item.Own + "] " : "");
            text.AppendJoin("   ", item.Blanks.Select(blank => blank.Length > 0 ? blank + " " + Blank : Blank)).Append(item.Blanks.IsEmpty ? "" : "\n");
        }

        return text.Append('\n').Append(string.Join("   ", MeasuringPaper.Signed.Select(line => line + " " + Blank))).Append('\n').ToString();
    }
}
