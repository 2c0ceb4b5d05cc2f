using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>An inner shell that hangs below the frame, tied to its hubs.</summary>
/// <param name="Cloth">Name of its cloth.</param>
/// <param name="Gap">Distance between the cover's facets and the liner's, at least.</param>
/// <param name="Hem">Height of its finished edge above the deck, so that water that runs down the cover's inside gets out.</param>
public sealed record LinerWish(string Cloth, Measure Gap, Measure Hem)
{
    /// <summary>Lowest row of a roof that comes off by itself, joined to the wall by zips; null for a liner in one part.</summary>
    public int? RoofRow { get; init; }

    /// <summary>Labels of the cover's windows and openings below which it has holes; null: of all.</summary>
    public ImmutableArray<string>? Openings { get; init; }

    /// <summary>How much larger its holes are than the cover's, all round.</summary>
    public Measure Margin { get; init; }

    /// <summary>How its pieces are joined: plain seams, and the zips of a roof.</summary>
    public static ImmutableArray<MakeUp> MakeUps { get; } = [MakeUp.Of(MakeUpForm.Plain, new Measure(15, "15 mm")) with { Name = "liner plain" }, MakeUp.Of(MakeUpForm.Zip, new Measure(20, "20 mm")) with { Name = "liner zip" }];
}
