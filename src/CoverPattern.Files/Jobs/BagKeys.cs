using System.Collections.Immutable;

namespace CoverPattern.Files.Jobs;

/// <summary>Keys of bag and ground flap.</summary>
internal static class BagKeys
{
    internal static readonly ImmutableArray<JobKey> All =
    [
        new("groundFlap", KeyKind.Section, "Strips along the finished edge that lie on the ground.") { IsWish = true },
        new("groundFlap.cloth", KeyKind.ClothName, "Their cloth, one of the cloths.") { IsRequired = true, Least = 1, Most = 40 },
        new("groundFlap.side", KeyKind.Word, "Outward for earth or sand bags, with gussets at corners; inward under a floor sheet, lapped.") { IsRequired = true, Words = ["outward", "inward"] },
        Length("groundFlap.width", "Finished width.", 50, 1000) with { Default = "300 mm", Standing = JobKeys.CommonPractice },
        new("bag", KeyKind.Section, "The bag that each cover is packed in.") { IsWish = true },
        new("bag.cloth", KeyKind.ClothName, "Its cloth, one of the cloths.") { IsRequired = true, Least = 1, Most = 40 },
        Length("bag.length", "Length; all three sizes or none, then from the folded cover.", 100, 3000),
        Length("bag.width", "Width.", 100, 3000),
        Length("bag.height", "Height.", 100, 3000),
        new("bag.packing", KeyKind.Ratio, "Folded volume over area times thickness of the cloth.") { Least = 1, Most = 10, Default = "300 %", Standing = JobKeys.CommonPractice },
    ];

    private static JobKey Length(string place, string meaning, double least, double most) => new(place, KeyKind.Length, meaning) { Least = least, Most = most };
}
