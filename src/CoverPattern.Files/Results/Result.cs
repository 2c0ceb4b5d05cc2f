using System;
using System.Collections.Immutable;
using CoverPattern.Lays;
using CoverPattern.Lays.Estimates;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Results;

/// <summary>All that one run of the corridor made; every file of the result folder is written from it.</summary>
/// <param name="JobText">The job file as typed.</param>
/// <param name="Job">The job as understood.</param>
/// <param name="Frame">The bars, without stand-off and ease.</param>
/// <param name="Shell">The finished surface.</param>
/// <param name="Cut">The surface cut up.</param>
/// <param name="Pieces">Patterns and pieces.</param>
/// <param name="Lays">Where they lie on the rolls.</param>
/// <param name="Estimate">What the job takes.</param>
/// <param name="Notices">What a person should see, loudest first.</param>
public sealed record Result(
    ReadOnlyMemory<byte> JobText,
    Job Job,
    Frame Frame,
    Shell Shell,
    Subdivision Cut,
    PieceSet Pieces,
    ImmutableArray<Lay> Lays,
    Estimate Estimate,
    ImmutableArray<Notice> Notices)
{
    /// <summary>Where lines of the cover meet, and what lies one above the other there.</summary>
    public ImmutableArray<CrossingBulk> Crossings { get; init; } = [];

    /// <summary>The liner, whose pieces are among those of the cover; null without one.</summary>
    public LinerMaking? Liner { get; init; }

    /// <summary>Free areas of vents; null where the job wishes no vent sheet.</summary>
    public VentSheet? Vents { get; init; }

    /// <summary>Openings at their places, without windows and slits.</summary>
    public ImmutableArray<LaidOpening> Openings { get; init; } = [];

    /// <summary>Stove pipes at their places.</summary>
    public ImmutableArray<LaidPipe> Pipes { get; init; } = [];
}
