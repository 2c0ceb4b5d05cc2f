using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Reports;

/// <summary>What stands on top: whose order it is, and everything that may hurt somebody or spoil cloth.</summary>
internal static class HeadSection
{
    /// <summary>Heading of the page for an order without a title.</summary>
    public const string Untitled = "Cover without a title";

    public static string Title(Job job) => string.IsNullOrWhiteSpace(job.Title) ? Untitled : job.Title;

    public static void Write(PageWriter page, Result result)
    {
        var job = result.Job;
        page.Line("h1", Title(job));
        page.Line(
            "p",
            FormattableString.Invariant($"{job.Date:yyyy-MM-dd}; {job.Covers} {(job.Covers == 1 ? "cover" : "equal covers")}; {Frame(job.Frame)}"),
            ("class", "lead"));
        page.Line("p", "All drawings seen from outside", ("class", "outside"));
        foreach (var notice in result.Notices.Where(notice => notice.Level != NoticeLevel.Note))
        {
            Loud(page, Printed.Word(notice.Level), notice);
        }

        var open = Unconfirmed(job).Count();
        if (open > 0)
        {
            page.Open("div", ("class", "unconfirmed"));
            page.Line("span", "Not confirmed: ", ("class", "loud"));
            page.Text(FormattableString.Invariant($"{open} {(open == 1 ? "value was" : "values were")} assumed and nobody has confirmed {(open == 1 ? "it" : "them")}; see Assumptions at the end. Cut one piece as a trial before the rest."));
            page.Close();
        }
    }

    /// <summary>Assumptions that nobody has confirmed.</summary>
    public static IEnumerable<Assumption> Unconfirmed(Job job) => job.Assumed.Where(assumption => !IsConfirmed(job, assumption));

    public static bool IsConfirmed(Job job, Assumption assumption) => job.Confirmed.Contains(assumption.Place, StringComparer.Ordinal);

    private static void Loud(PageWriter page, string level, Notice notice)
    {
        page.Open("div", ("class", level));
        page.Line("span", level + ": ", ("class", "loud"));
        page.Text(notice.Text);
        if (notice.Place.Length > 0)
        {
            page.Line("span", " (" + notice.Place + ")", ("class", "small"));
        }

        page.Close();
    }

    private static string Frame(FrameWish frame) => frame.Survey is { } survey ? "surveyed frame" + (survey.Source.Length > 0 ? ", " + survey.Source : "")
        : frame.Gores is { } gores ? FormattableString.Invariant($"roof of {gores.Sides} gores, {Printed.Word(gores.Meridian)}")
        : string.Create(
        CultureInfo.InvariantCulture,
        $"{Printed.Word(frame.Family)} {frame.Frequency}V{Special(frame)} {frame.Cut}, {(frame.Struts is null ? Measure(frame.Measure) + " " + frame.Size.Typed : "from measured struts")}");

    /// <summary>What sets the frame apart from class I with a corner up; empty for that.</summary>
    private static string Special(FrameWish frame) => string.Concat(
        frame.Division switch
        {
            FrameDivision.EqualArc => ", equal arcs",
            FrameDivision.LevelByEdgeHubs => ", base made level by the edge hubs",
            FrameDivision.LevelByInnerHubs => ", base made level by the inner hubs",
            FrameDivision.ClassTwo => ", class II",
            _ => "",
        },
        frame.Up == FrameUp.Vertex ? "" : ", " + Printed.Word(frame.Up) + " up",
        frame.Division == FrameDivision.EqualChord && frame.Up == FrameUp.Vertex ? "" : ",");

    private static string Measure(FrameMeasure measure) => measure switch
    {
        FrameMeasure.Radius => "sphere radius",
        FrameMeasure.Diameter => "sphere diameter",
        FrameMeasure.FloorDiameter => "floor diameter",
        FrameMeasure.Height => "height",
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "Unknown measure of a frame."),
    };
}
