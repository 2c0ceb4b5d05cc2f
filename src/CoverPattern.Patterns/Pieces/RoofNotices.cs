using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Tells what a person should know of a roof that comes off.</summary>
public static class RoofNotices
{
    // The guideline figure for one man near the waist (HSE guide to manual handling, INDG143, from memory), kilograms.
    private const double OnePerson = 25;

    /// <summary>All notices; none where no roof is wished.</summary>
    /// <param name="job">The order.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="openings">What is laid on it.</param>
    /// <param name="set">All patterns and pieces.</param>
    public static ImmutableArray<Notice> Of(Job job, Frame frame, Shell shell, OpeningLaying openings, PieceSet set)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(openings);
        if (job.Roof is not { } wish || RoofLine.Find(job, frame, shell) is not { } line)
        {
            return [];
        }

        var weight = Weight(job, shell, line, set);
        string[] pipes = [.. openings.Pipes.Where(pipe => pipe.Region.Rim.Any(stretch => line.Faces.Contains(stretch.Face))).Select(pipe => pipe.Label)];
        return
        [
            new Notice(NoticeLevel.Note, "roof-lap", "roof", FormattableString.Invariant($"Between wall and roof no cloth laps and the zip is not tight: the flap of {wish.Flap.Typed} sheds the water, outside and below the wall's edge. Where the wall below faces up, driving rain can get under it.")),
            new Notice(NoticeLevel.Caution, "roof-lifting", "roof", "Tabs first: close every load tab before the zips, open the zips before the tabs; a zip that carries load bursts. Lifting loops carry the roof's own weight, never a person, and no anchor. Do not take the roof off or put it on in wind, nor from a ladder alone."),
            .. weight > OnePerson ? [new Notice(NoticeLevel.Caution, "roof-weight", "roof", FormattableString.Invariant($"The roof weighs about {weight:0.#} kg without zips and fittings: more than {OnePerson:0} kg, the guideline for one person. Lift it with more hands, or divide it."))] : ImmutableArray<Notice>.Empty,
            .. weight is null ? [new Notice(NoticeLevel.Note, "roof-no-mass", "cloths[0].mass", "The roof's weight is not told: the job does not state the cloth's mass.")] : ImmutableArray<Notice>.Empty,
            .. pipes.Length > 0 ? [new Notice(NoticeLevel.Caution, "roof-pipe", "roof", $"{string.Join(", ", pipes)} goes through the roof: it can be taken off only when the fire is out, the pipe cold and its upper part taken down.")] : ImmutableArray<Notice>.Empty,
        ];
    }

    /// <summary>Weight of the roof of one cover with its flap, kilograms; null where a cloth's mass is not stated.</summary>
    /// <param name="job">Its cloths are read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="line">Where roof and wall part.</param>
    /// <param name="set">All patterns and pieces.</param>
    public static double? Weight(Job job, Shell shell, RoofLine line, PieceSet set)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(set);
        if (job.Cloths[0].MassPerArea is not { } mass)
        {
            return null;
        }

        var facets = line.Faces.Select(face => shell.Faces[face].Label).ToHashSet(StringComparer.Ordinal);
        var patterns = set.Patterns.ToDictionary(pattern => pattern.Id, StringComparer.Ordinal);
        var area = set.Pieces.Where(piece => patterns[piece.Pattern].Kind == PieceKind.RoofFlap || (piece.Facets.Length > 0 && facets.Contains(piece.Facets[0])))
            .Sum(piece => Rings.SignedArea(patterns[piece.Pattern].CutLine)) / job.Covers;
        return area * mass / 1e9;
    }
}
