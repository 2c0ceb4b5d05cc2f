using System;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Holds an entry of the table of make-ups against itself: what cannot be sewn or welded so is a fault.</summary>
internal static class MakeUpCheck
{
    // One step of a tape rule is a millimetre; a lap may be stated in inches that do not add up to the last digit.
    private const double SameWidth = 0.01;

    internal static void Check(JobSection section, MakeUp entry, JobNotes notes)
    {
        if (!notes.AreClean(section.Place))
        {
            return;
        }

        CheckName(section, entry, notes);
        CheckSides(section, entry, notes);
        CheckRows(section, entry, notes);
        if (MakeUp.NeverSlit(entry.Form) && !entry.IsTicked)
        {
            notes.Refuse(section.PlaceOf("notches"), "\"slit\"", "\"tick\": a slit in a weld or a bound edge leaks or tears");
        }

        if (section.States("turnIn") && entry.Form != MakeUpForm.Bound)
        {
            notes.Refuse(section.PlaceOf("turnIn"), "a turn-in", "only bound seams have a binding; leave it out");
        }
    }

    private static void CheckName(JobSection section, MakeUp entry, JobNotes notes)
    {
        var word = JobKeys.Find("makeUps[].form")!.Words.FirstOrDefault(form => string.Equals(form, entry.Name, StringComparison.OrdinalIgnoreCase));
        if (word is not null && !string.Equals(word, MakeUp.Of(entry.Form, entry.Width).Name, StringComparison.Ordinal))
        {
            notes.Refuse(section.PlaceOf("name"), $"\"{entry.Name}\"", "the word of another form would mislead; take a name of its own");
        }
    }

    private static void CheckSides(JobSection section, MakeUp entry, JobNotes notes)
    {
        var (over, under, width) = (entry.OverMm, entry.UnderMm, entry.Width.Millimetres);
        var said = FormattableString.Invariant($"over {over:0.###} mm, under {under:0.###} mm at a width of {width:0.###} mm");
        var trouble = entry.Form switch
        {
            MakeUpForm.Lapped or MakeUpForm.Welded or MakeUpForm.SplitWelded when Math.Abs(over + under - width) > SameWidth =>
                FormattableString.Invariant($"over and under together make the width of the lap, {width:0.###} mm"),
            MakeUpForm.Felled when over > width + SameWidth => "the over side must lie inside the felled width; not more than the width",
            MakeUpForm.Felled when under < over + SameWidth => "the under side folds over the over side's edge; more than the over side has, twice the width as a rule",
            MakeUpForm.Lapped or MakeUpForm.Welded or MakeUpForm.SplitWelded => null,
            _ when Math.Min(over, under) < 1 => "both sides need cloth beyond the stitches; 1 mm at least",
            _ => null,
        };
        if (trouble is not null)
        {
            notes.Refuse(section.PlaceOf(section.States("under") && !section.States("over") ? "under" : "over"), said, trouble);
        }
    }

    private static void CheckRows(JobSection section, MakeUp entry, JobNotes notes)
    {
        var said = FormattableString.Invariant($"{entry.Rows} rows");
        if (entry.IsWelded && entry.Rows > 0)
        {
            notes.Refuse(section.PlaceOf("rows"), said, "0: never weld and sew through the same line, the stitches make holes in the weld");
        }
        else if (!entry.IsWelded && entry.Rows == 0)
        {
            notes.Refuse(section.PlaceOf("rows"), said, "at least 1, or a welded form");
        }
        else if (entry.Rows > 1 && (entry.Rows - 1) * entry.RowGapMm >= entry.Width.Millimetres)
        {
            notes.Refuse(
                section.PlaceOf(section.States("rows") ? "rows" : "width"),
                FormattableString.Invariant($"{entry.Rows} rows {entry.RowGapMm:0.###} mm apart in {entry.Width.Typed}"),
                FormattableString.Invariant($"rows must lie within the width: more than {(entry.Rows - 1) * entry.RowGapMm:0.###} mm of it, fewer rows or a smaller rowGap"));
        }
    }
}
