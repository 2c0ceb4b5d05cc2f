using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Openings;

/// <summary>All openings of a shell, or what is wrong with them.</summary>
/// <param name="Windows">In order of their rims.</param>
/// <param name="Faults">What the job must change; empty when all is well.</param>
/// <param name="Notices">What a person should know.</param>
public sealed record OpeningLaying(ImmutableArray<LaidWindow> Windows, ImmutableArray<Fault> Faults, ImmutableArray<Notice> Notices)
{
    /// <summary>Openings of any outline, in order of the job's entries.</summary>
    public ImmutableArray<LaidOpening> Openings { get; init; } = [];

    /// <summary>Slits, in order of the job's entries.</summary>
    public ImmutableArray<LaidSlit> Slits { get; init; } = [];

    /// <summary>Lines to be drawn on the pieces: slits, and where drip flaps are stitched on.</summary>
    public ImmutableArray<SurfaceLine> Lines =>
    [
        .. Slits.SelectMany(slit => slit.Lines.Select(line => line with { Opening = slit.Label })),
        .. Openings.SelectMany(opening => opening.Lines.Select(line => line with { Opening = opening.Label })),
    ];

    /// <summary>Stove pipes, in order of the job's entries.</summary>
    public ImmutableArray<LaidPipe> Pipes { get; init; } = [];

    /// <summary>What is taken out of the shell: windows, then openings, then what lies within the clear distance of pipes.</summary>
    public ImmutableArray<Region> Regions => [.. Windows.Select(window => window.Region), .. Openings.Select(opening => opening.Region), .. Pipes.Select(pipe => pipe.Region)];
}
