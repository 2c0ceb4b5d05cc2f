using System.Collections.Immutable;

namespace CoverPattern.Files.Jobs;

/// <summary>Keys of liner and insulation.</summary>
internal static class LinerKeys
{
    internal static readonly ImmutableArray<JobKey> All =
    [
        new("liner", KeyKind.Section, "An inner shell that hangs below the frame, tied to its hubs.") { IsWish = true },
        new("liner.cloth", KeyKind.ClothName, "Its cloth, one of the cloths.") { IsRequired = true, Least = 1, Most = 40 },
        Length("liner.gap", "Distance between cover and liner, at least.", 25, 500) with { Default = "40 mm", Standing = JobKeys.CommonPractice },
        Length("liner.hem", "Height of its finished edge above the deck.", 0, 500) with { Default = "50 mm", Standing = JobKeys.CommonPractice },
        new("liner.roofRow", KeyKind.Whole, "Lowest row of a roof that comes off by itself, joined to the wall by zips; one part when not stated.") { Least = 2, Most = 40 },
        new("liner.openings", KeyKind.Labels, "Windows and openings of the cover below which it has holes; all when not stated.") { Least = 1, Most = 100 },
        Length("liner.margin", "How much larger these holes are than the cover's, all round.", 0, 300) with { Default = "30 mm", Standing = JobKeys.CommonPractice },
        new("insulation", KeyKind.Section, "Pads between the struts, one a facet.") { IsWish = true },
        new("insulation.cloth", KeyKind.ClothName, "Their cloth, one of the cloths.") { IsRequired = true, Least = 1, Most = 40 },
        Length("insulation.tuck", "How far a pad reaches behind the wall of the tubes; less than their radius.", 0, 100) with { Default = "5 mm", Standing = JobKeys.CommonPractice },
    ];

    private static JobKey Length(string place, string meaning, double least, double most) => new(place, KeyKind.Length, meaning) { Least = least, Most = most };
}
