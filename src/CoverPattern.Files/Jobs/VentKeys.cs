using System.Collections.Immutable;

namespace CoverPattern.Files.Jobs;

/// <summary>Keys of the vent sheet.</summary>
internal static class VentKeys
{
    internal static readonly ImmutableArray<JobKey> All =
    [
        new("vents", KeyKind.Section, "Openings that let air in below and out above; a vent sheet for the shop is made of them.") { IsWish = true },
        new("vents.low", KeyKind.Labels, "Low ones, such as \"O1\".") { IsRequired = true, Least = 1, Most = 50 },
        new("vents.high", KeyKind.Labels, "High ones.") { IsRequired = true, Least = 1, Most = 50 },
        new("vents.meshOpen", KeyKind.Ratio, "Share of a screen that is open.") { Least = 0.1, Most = 1, Default = "50 %", Standing = JobKeys.CommonPractice },
        new("vents.inside", KeyKind.Whole, "Air inside, degrees Celsius, for the inner figure of the flow; none without it.") { Least = -40, Most = 60 },
        new("vents.outside", KeyKind.Whole, "Air outside.") { Least = -40, Most = 60 },
    ];
}
