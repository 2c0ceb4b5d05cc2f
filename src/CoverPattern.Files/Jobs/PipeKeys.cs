using System.Collections.Immutable;

namespace CoverPattern.Files.Jobs;

/// <summary>Keys of stove pipes.</summary>
internal static class PipeKeys
{
    internal static readonly ImmutableArray<JobKey> All =
    [
        new("pipes", KeyKind.Sections, "Stove pipes that go through the cover.") { Least = 1, Most = 10 },
        new("pipes[].run", KeyKind.Word, "Which way the pipe runs where it goes through.") { IsRequired = true, Words = ["vertical", "level"] },
        Length("pipes[].diameter", "Outer diameter of the pipe.", 60, 600) with { IsRequired = true },
        Length("pipes[].clear", "Clear distance from the pipe's wall to all that can burn, from the papers of stove and pipe.", 50, 3000),
        new("pipes[].cloth", KeyKind.ClothName, "Heat cloth of patch, sleeve and flaps, one of the cloths; it must state a service temperature.") { IsRequired = true, Least = 1, Most = 40 },
        new("pipes[].facet", KeyKind.Line, "Facet through which its middle line goes, such as \"F4.02\"; or x and y, or above and towards instead.") { Most = 40 },
        new("pipes[].right", KeyKind.SignedLength, "How far right of that facet's incentre, seen from outside.") { Least = -10_000, Most = 10_000 },
        new("pipes[].up", KeyKind.SignedLength, "How far above the incentre, square to the facet's ring edge.") { Least = -10_000, Most = 10_000 },
        new("pipes[].x", KeyKind.SignedLength, "Place of a vertical pipe on the frame's plan, from the centre towards the front.") { Least = -60_000, Most = 60_000 },
        new("pipes[].y", KeyKind.SignedLength, "The same to the left of that.") { Least = -60_000, Most = 60_000 },
        Length("pipes[].above", "Height of a level pipe's middle line above the deck.", 0, 50_000),
        new("pipes[].towards", KeyKind.Degrees, "Direction in which that pipe runs out from the deck's centre, counter-clockwise seen from above, 0 at the front.") { Least = 0, Most = 360 },
        new("pipes[].boot", KeyKind.Word, "A straight sleeve, or a cone boot inside one facet; straight when not stated.") { Words = ["straight", "cone"] },
        new("pipes[].spread", KeyKind.Degrees, "Half the angle of the cone.") { Least = 5, Most = 45 },
        Length("pipes[].gap", "Room between pipe and sleeve.", 0, 20) with { Default = "3 mm", Standing = JobKeys.OwnChoice },
        Length("pipes[].sleeve", "Height of the sleeve's top over the highest point of its foot, along the pipe.", 50, 1000) with { Default = "150 mm", Standing = JobKeys.CommonPractice },
        Length("pipes[].turnUnder", "Cloth turned under at rims, foot, top and round the flaps.", 5, 50) with { Default = "15 mm", Standing = JobKeys.CommonPractice },
        Length("pipes[].lap", "How far the patch lies over the cover.", 10, 200) with { Default = "40 mm", Standing = JobKeys.CommonPractice },
        Length("pipes[].rainFlap", "How far the rain flap hangs over the patch, seen along the pipe.", 30, 300) with { Default = "80 mm", Standing = JobKeys.CommonPractice },
        Length("pipes[].closingFlap", "How far the closing flap reaches beyond the hole, seen along the pipe.", 20, 200) with { Default = "40 mm", Standing = JobKeys.CommonPractice },
    ];

    private static JobKey Length(string place, string meaning, double least, double most) => new(place, KeyKind.Length, meaning) { Least = least, Most = most };
}
