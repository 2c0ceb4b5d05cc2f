using System.Collections.Immutable;

namespace CoverPattern.Files.Jobs;

/// <summary>Keys of openings of any outline.</summary>
internal static class OpeningKeys
{
    internal static readonly ImmutableArray<JobKey> All =
    [
        new("openings", KeyKind.Sections, "Openings of any outline, over edges too.") { Least = 1, Most = 50 },
        new("openings[].outline", KeyKind.Word, "Its form; the others tell its sizes.") { IsRequired = true, Words = ["circle", "rectangle", "rounded", "arch", "regular", "polygon", "facets", "line"] },
        Length("openings[].width", "Width; diameter of a circle, or of the circle through the corners of a regular polygon.", 60),
        Length("openings[].height", "Height of rectangle, rounded rectangle and arch; length of a line.", 60),
        Length("openings[].corner", "Radius of a rounded rectangle's corners.", 10),
        new("openings[].sides", KeyKind.Whole, "Sides of a regular polygon, one corner up.") { Least = 3, Most = 24 },
        new("openings[].points", KeyKind.Labels, "Corners of a polygon in order, right and up of its middle, such as \"-300 mm; 200 mm\".") { Least = 3, Most = 100 },
        new("openings[].facets", KeyKind.Labels, "Whole facets.") { Least = 1, Most = 2000 },
        Length("openings[].margin", "Cloth left at the edges of whole facets.", 0),
        new("openings[].facet", KeyKind.Line, "Facet that holds its middle, such as \"F2.07\"; or above and towards instead.") { Most = 40 },
        new("openings[].right", KeyKind.SignedLength, "How far right of that facet's incentre, seen from outside.") { Least = -10_000, Most = 10_000 },
        new("openings[].up", KeyKind.SignedLength, "How far above the incentre, square to the facet's ring edge.") { Least = -10_000, Most = 10_000 },
        Length("openings[].above", "Height of its middle above the deck.", 0) with { Most = 50_000 },
        new("openings[].towards", KeyKind.Degrees, "Direction of its middle from the deck's centre, counter-clockwise seen from above, 0 at the front.") { Least = 0, Most = 360 },
        new("openings[].turned", KeyKind.Degrees, "By how much it is turned, counter-clockwise seen from outside.") { Least = -360, Most = 360 },
        new("openings[].laid", KeyKind.Word, "Carried over edges at its exact size, or projected; carried where no hub is inside when not stated.") { Words = ["either", "carried", "projected"] },
        Length("openings[].turnUnder", "Cloth of the cover turned under at its rim.", 0) with { Most = 100, Default = "15 mm", Standing = JobKeys.CommonPractice },
        new("openings[].kind", KeyKind.Word, "What it is for: a window when not stated.") { Words = ["window", "door", "baseVent", "highVent", "slit"] },
        new("openings[].sheet", KeyKind.ClothName, "Clear sheet that fills a window, one of the cloths; open without it.") { Least = 1, Most = 40 },
        new("openings[].screen", KeyKind.ClothName, "Mesh, one of the cloths: in a window in place of the sheet, behind the flap of a door or vent.") { Least = 1, Most = 40 },
        new("openings[].flap", KeyKind.ClothName, "Cloth of the flap of a door or vent, one of the cloths; the cover's when not stated.") { Least = 1, Most = 40 },
        new("openings[].held", KeyKind.Word, "How what opens is held; sewn: it does not open.") { Words = ["sewn", "zip", "hookLoop", "ring"], Standing = JobKeys.CommonPractice },
        new("openings[].opens", KeyKind.Word, "Which sides of a door or vent open, seen from outside; the others are sewn.") { Words = ["around", "left", "right", "both", "middle"], Standing = JobKeys.CommonPractice },
        Length("openings[].lap", "How far a part that is sewn in, or held by hook and loop or a ring, reaches beyond the rim.", 5) with { Most = 200, Default = "20 mm", Standing = JobKeys.CommonPractice },
        Length("openings[].ring", "Width of the ring of cloth round a window that is held by one.", 10) with { Most = 300, Default = "35 mm", Standing = JobKeys.CommonPractice },
        Length("openings[].strip", "Finished width of the strip over its zips; 0 mm: none.", 0) with { Most = 300, Standing = JobKeys.CommonPractice },
        Length("openings[].drip", "Finished width of the flap over its upper edge that sheds rain; 0 mm: none.", 0) with { Most = 500, Standing = JobKeys.CommonPractice },
        Length("openings[].hood", "How far the lower edge of the hood over a high vent stands off.", 20) with { Most = 1000, Default = "150 mm", Standing = JobKeys.CommonPractice },
        Length("openings[].threshold", "Finished height of a strip across the foot of a door; none when not stated.", 0) with { Most = 600 },
        Length("openings[].webbing", "Width of the webbing along jambs and head; 0 mm: none.", 0) with { Most = 100, Standing = JobKeys.CommonPractice },
        new("openings[].doubled", KeyKind.Labels, "Struts such as \"H0.02-H1.01\" and hubs that the customer's frame has not in the opening, because a doubled frame goes round it.") { Least = 1, Most = 100 },
        new("openings[].seams", KeyKind.Word, "Whether what fills it goes uncut over the cover's seams, or is made up along them.") { Words = ["uncut", "asCover"] },
    ];

    private static JobKey Length(string place, string meaning, double least) => new(place, KeyKind.Length, meaning) { Least = least, Most = 10_000 };
}
