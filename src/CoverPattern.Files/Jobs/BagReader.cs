using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads bag and ground flap.</summary>
internal static class BagReader
{
    private static readonly string[] Sizes = ["length", "width", "height"];

    internal static BagWish Read(JobSection section, ImmutableArray<Cloth> cloths, JobNotes notes)
    {
        var cloth = WindowReader.Cloth("cloth", section, cloths, notes) ?? "";
        var stated = Sizes.Where(section.States).ToArray();
        if (stated.Length is > 0 and < 3)
        {
            var missing = Sizes.First(key => !section.States(key));
            notes.Refuse(section.PlaceOf(missing), "nothing", "all of length, width and height, or none of them");
        }

        // Folding matters only where nobody says how large the bag is.
        return stated.Length == 3
            ? new BagWish(cloth, (section.Take<Measure>("length", Values.Length), section.Take<Measure>("width", Values.Length), section.Take<Measure>("height", Values.Length)), 1)
            : new BagWish(cloth, null, section.Take<double>("packing", Values.Ratio));
    }

    internal static GroundFlapWish ReadFlap(JobSection section, ImmutableArray<Cloth> cloths, JobNotes notes) => new(
        WindowReader.Cloth("cloth", section, cloths, notes) ?? "",
        section.Take<Measure>("width", Values.Length),
        section.Take<string>("side", Values.Word) is "inward");
}
