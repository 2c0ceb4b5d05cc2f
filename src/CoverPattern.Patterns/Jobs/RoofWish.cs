using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>Facets that come off as a roof, zipped to the wall below.</summary>
/// <param name="Flap">Width of the flap that hangs from the roof's edge outside the wall.</param>
/// <param name="Tabs">Largest distance between two load tabs.</param>
/// <param name="HookLoop">Width of the hook and loop along the flap's lower edge.</param>
public sealed record RoofWish(Measure Flap, Measure Tabs, Measure HookLoop)
{
    /// <summary>Name of the make-up between roof and wall.</summary>
    public const string ZipName = "roof zip";

    /// <summary>Name of the make-up between two lengths of the flap.</summary>
    public const string FlapName = "roof flap";

    /// <summary>What stands before every label of a roof screen, behind that of the cover.</summary>
    public const char ScreenLetter = 'M';

    /// <summary>Lowest row of the roof; null where facets are named.</summary>
    public int? Row { get; init; }

    /// <summary>Labels of its facets; empty where a row is stated.</summary>
    public ImmutableArray<string> Facets { get; init; } = [];

    /// <summary>Mesh of a roof screen beneath it, zipped to the wall along the same line; null without one.</summary>
    public string? Screen { get; init; }

    /// <summary>Whether it has lifting loops.</summary>
    public bool HasLoops { get; init; } = true;

    /// <summary>Between roof and wall: the middle of the teeth is the seam, cloth is turned back on both sides (common practice, no source).</summary>
    public static MakeUp Zip { get; } = MakeUp.Of(MakeUpForm.Zip, new Measure(20, "20 mm")) with { Name = ZipName };

    /// <summary>Between two lengths of the flap.</summary>
    public static MakeUp FlapSeam { get; } = MakeUp.Of(MakeUpForm.Plain, new Measure(15, "15 mm")) with { Name = FlapName };

    /// <summary>Between two pieces of the roof screen.</summary>
    public static MakeUp ScreenSeam { get; } = MakeUp.Of(MakeUpForm.Plain, new Measure(15, "15 mm")) with { Name = "roof screen" };

    /// <summary>All make-ups of a roof.</summary>
    public static ImmutableArray<MakeUp> MakeUps { get; } = [Zip, FlapSeam, ScreenSeam];
}
