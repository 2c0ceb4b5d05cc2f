using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Shells;

/// <summary>Tells what a person should know of a finished shell before cloth is cut.</summary>
public static class ShellCheck
{
    // A facet flatter than this drains badly whatever the ease (common practice, no source), degrees.
    private const double FlatDegrees = 10;

    // Hubs prouder than the tubes by more than this chafe the cloth (common practice, no source), millimetres.
    private const double ProudHub = 3;

    // Base hubs nearer in height than this count as level, millimetres.
    private const double LevelBase = 0.5;

    // What is left of a level base where struts were measured to a tape's millimetres (own choice), millimetres.
    private const double MostStrutRaise = 10;

    // A base hub of a survey this high may be the head of a door that was left out (own choice), millimetres.
    private const double LeastDoor = 300;

    /// <summary>What to do where a survey leaves a door out at the base.</summary>
    internal const string DoorLeftOut = "Where the survey leaves out a door at the base, cloth would hang down into it: give the facets across it as well and place a door there (openings[], kind \"door\").";

    // More labels than this are not listed one by one.
    private const int MostListed = 12;

    /// <summary>Yields the notices of stand-off, ease, raise and hem.</summary>
    /// <param name="job">What was wished.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="shell">The shell fitted over it.</param>
    public static ImmutableArray<Notice> Check(Job job, Frame frame, Shell shell)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(shell);

        return [.. Raise(job, frame), .. Open(job, frame), .. Chafing(job), .. Ponding(job, shell), .. Flat(shell), .. OnTheEdge(job, frame, shell)];
    }

    /// <summary>
    /// Slack cloth over a span sags in a shallow parabola whose end slope is 4 sqrt(3 e / 8); water stays where that exceeds
    /// the facet's own slope, so from e = tan^2(tilt) / 6 on (own derivation; an estimate, the ease taken wholly along the slope).
    /// </summary>
    public static double LargestEaseThatDrains(double tiltRadians) => Math.Pow(Math.Tan(tiltRadians), 2) / 6;

    private static IEnumerable<Notice> Raise(Job job, Frame frame)
    {
        var raised = frame.Base.Where(hub => frame.Hubs[hub].Position.Z > LevelBase).ToArray();
        if (raised.Length > 0 && !job.Deck.IsMeasured)
        {
            var most = raised.Max(hub => frame.Hubs[hub].Position.Z);
            var isLevelElsewhere = job.Frame.Division is FrameDivision.LevelByEdgeHubs or FrameDivision.LevelByInnerHubs && job.Frame is { Survey: null, Gores: null } && most > LevelBase + (job.Frame.Struts is null ? 0 : MostStrutRaise);
            var isDoorLikely = job.Frame.Survey is not null && most > LeastDoor;
            yield return new Notice(
                isDoorLikely || isLevelElsewhere ? NoticeLevel.Warning : NoticeLevel.Note,
                "raised-base-hubs",
                string.Empty,
                FormattableString.Invariant($"{raised.Length} of {frame.Base.Length} base hubs stand above the lowest by up to {most:0.0} mm. Measure them on the frame: the skirt follows these heights.{(isDoorLikely ? " " + DoorLeftOut : string.Empty)}{(isLevelElsewhere ? " " + LevelCuts(job.Frame.Frequency) : string.Empty)}"));
        }
    }

    private static string LevelCuts(int frequency) => frequency == 3
        ? "This division is level at the cuts 4/9 (3/8) and 5/9 (5/8) only."
        : "This division is level at the cuts 5/12 and 7/12 only.";

    /// <summary>A facet that was forgotten in a survey looks like a window that is meant to stay open.</summary>
    private static IEnumerable<Notice> Open(Job job, Frame frame)
    {
        foreach (var opening in job.Frame.Survey is null ? [] : frame.Openings)
        {
            var round = opening.Select((hub, i) => Point3.Distance(frame.Hubs[hub].Position, frame.Hubs[opening[(i + 1) % opening.Length]].Position)).Sum();
            yield return new Notice(
                NoticeLevel.Note,
                "left-open",
                frame.Hubs[opening[0]].Label,
                FormattableString.Invariant($"The survey has no facet between {string.Join(", ", opening.Take(MostListed).Select(hub => frame.Hubs[hub].Label))}{(opening.Length > MostListed ? ", ..." : string.Empty)}: a place {round:0} mm round is left open there and gets the hem's allowance. If a facet was forgotten, add it."));
        }
    }

    private static IEnumerable<Notice> Chafing(Job job)
    {
        var proud = job.StandOff.HubHeight.Millimetres - job.StandOff.TubeRadius.Millimetres;
        if (proud > ProudHub)
        {
            yield return new Notice(
                NoticeLevel.Warning,
                "proud-hubs",
                string.Empty,
                FormattableString.Invariant($"The hubs stand {proud:0.#} mm prouder than the tubes: the cloth rides on them and misses the struts. Put caps on bolt ends and patches at the hubs; more than {ProudHub:0} mm chafes (common practice, no source)."));
        }
    }

    private static IEnumerable<Notice> Ponding(Job job, Shell shell)
    {
        var ponds = Upward(shell).Where(entry => job.Ease > LargestEaseThatDrains(entry.Tilt)).ToArray();
        if (ponds.Length > 0)
        {
            yield return new Notice(
                NoticeLevel.Warning,
                "ponding",
                Listed(ponds),
                FormattableString.Invariant($"{ponds.Length} facets would hold water: the ease of {job.Ease * 100:0.###} % is more than {LargestEaseThatDrains(ponds[0].Tilt) * 100:0.###} %, above which slack cloth sags deeper than the flattest facet slopes ({Degrees(ponds[0].Tilt):0.0} degrees; parabola estimate). Take less ease."));
        }
    }

    private static IEnumerable<Notice> Flat(Shell shell)
    {
        var flat = Upward(shell).Where(entry => Degrees(entry.Tilt) < FlatDegrees).ToArray();
        if (flat.Length > 0)
        {
            yield return new Notice(
                NoticeLevel.Warning,
                "flat-facets",
                Listed(flat),
                FormattableString.Invariant($"{flat.Length} facets are flatter than {FlatDegrees:0} degrees (the flattest {Degrees(flat[0].Tilt):0.0}): water and snow stay there easily."));
        }
    }

    private static IEnumerable<Notice> OnTheEdge(Job job, Frame frame, Shell shell)
    {
        var heights = HemHeights.Of(job, frame, StandOff.Move(frame, job.StandOff.Millimetres));
        double Gap(int hub) => Math.Abs(heights.AboveEdge[hub] + heights.Lifted) * (1 + job.Ease);
        var hubs = frame.Base.Where(hub => shell.Nodes[hub].AboveHem == 0 && Gap(hub) > 0.001).ToArray();
        if (hubs.Length > 0)
        {
            yield return new Notice(
                NoticeLevel.Note,
                "hubs-on-the-edge",
                frame.Hubs[hubs[0]].Label,
                FormattableString.Invariant($"At {hubs.Length} base hubs the cover ends within 1 mm of the finished edge: the edge runs through the hub there instead of {hubs.Max(Gap):0.00} mm beside it."));
        }
    }

    /// <summary>Facets that face up, flattest first.</summary>
    private static IEnumerable<(string Label, double Tilt)> Upward(Shell shell) => shell.Faces
        .Where(face => face.Kind == FaceKind.Facet)
        .Select(face => (face.Label, Tilt: Tilt(shell, face)))
        .Where(entry => entry.Tilt < Math.PI / 2)
        .OrderBy(entry => entry.Tilt)
        .ThenBy(entry => entry.Label, StringComparer.Ordinal);

    /// <summary>Angle between the face's outward normal and straight up, radians.</summary>
    private static double Tilt(Shell shell, ShellFace face)
    {
        var normal = FaceNormal.Of(shell, face);
        return Math.Atan2(normal.Plan.Length, normal.Z);
    }

    private static double Degrees(double radians) => radians * 180 / Math.PI;

    private static string Listed((string Label, double Tilt)[] facets) =>
        string.Join(", ", facets.Take(MostListed).Select(entry => entry.Label).Order(StringComparer.Ordinal)) + (facets.Length > MostListed ? ", ..." : string.Empty);
}
