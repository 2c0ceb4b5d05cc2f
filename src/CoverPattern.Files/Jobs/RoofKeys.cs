using System.Collections.Immutable;

namespace CoverPattern.Files.Jobs;

/// <summary>Keys of the roof that comes off.</summary>
internal static class RoofKeys
{
    internal static readonly ImmutableArray<JobKey> All =
    [
        new("roof", KeyKind.Section, "Facets that come off as a roof, zipped to the wall below.") { IsWish = true },
        new("roof.row", KeyKind.Whole, "Its lowest row; it and all rows above are the roof. This or facets.") { Least = 2, Most = 40 },
        new("roof.facets", KeyKind.Labels, "Its facets.") { Least = 1, Most = 2000 },
        Length("roof.flap", "Width of the flap that hangs from its edge outside the wall.", 90, 400) with { Default = "100 mm", Standing = JobKeys.CommonPractice },
        Length("roof.hookLoop", "Width of the hook and loop along the flap's lower edge.", 10, 100) with { Default = "50 mm", Standing = JobKeys.CommonPractice },
        Length("roof.tabs", "Largest distance between two load tabs.", 200, 2000) with { Default = "750 mm", Standing = JobKeys.CommonPractice },
        new("roof.screen", KeyKind.ClothName, "Mesh of a roof screen beneath it, one of the cloths; no screen without it.") { Least = 1, Most = 40 },
        new("roof.loops", KeyKind.Flag, "Whether it has lifting loops.") { Default = "true", Standing = JobKeys.CommonPractice },
    ];

    private static JobKey Length(string place, string meaning, double least, double most) => new(place, KeyKind.Length, meaning) { Least = least, Most = most };
}
