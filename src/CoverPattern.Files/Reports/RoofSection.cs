using System.Linq;
using CoverPattern.Files.Results;

namespace CoverPattern.Files.Reports;

/// <summary>The roof that comes off: its zips one by one with their hands, what to open for each corner, flap, tabs and loops.</summary>
internal static class RoofSection
{
    public static void Write(PageWriter page, Result result)
    {
        if (RoofFacts.Of(result) is not { } roof)
        {
            return;
        }

        var ruler = Ruler.Of(result.Job);
        page.Line("h2", "The roof that comes off");
        page.Line("p", $"{Printed.Count(roof.Zips.Length)} separating zips join roof and wall. Each starts at a hub, with the pin on the roof and the box on the wall, and runs with the roof on its left seen from outside, to the right where the roof is above; with its start turned down the roof's half is the left one, the wall's the right. So all roof halves are of one hand, and all wall halves of the other; the pieces bear \"zip: pin side\" and \"zip: box side\". The middle of the teeth is the seam; roof and wall are one line there and equally long. Each zip is bought longer and gets a stop at both ends of its sewn length.");
        page.Table("wide", ["Zip", "Starts at", "Stops at", "Seams", "Sewn length", "Bought", "Stops"], roof.Zips.Select(zip => new[]
        {
            roof.Wish.Screen is null ? zip.Label : $"{zip.Label}, {zip.Label}s", zip.From, zip.To, string.Join(", ", zip.Seams), ruler.WithUnit(zip.LengthMm), ruler.WithUnit(zip.SoldMm), "2",
        }));
        page.Line("h3", "Corners that fold back");
        page.Line("p", "To fold a corner back open the zip that starts there all its length, the one that stops there as far as needed, and the load tabs along both. Never in wind.");
        page.Table("wide", ["Corner", "Open all of", "Open a part of"], roof.Corners.Select(corner => new[] { corner.Hub, corner.OpenWhole, corner.OpenPart }));
        page.Line("p", $"The flap, {ruler.WithUnit(roof.Wish.Flap.Millimetres)} wide, hangs from the roof's edge outside and below the wall's, for nothing else sheds the water there: sew its lengths together at the hubs to one ring, lay their raw upper edges under the roof's turned-back edge, and hook and loop of {ruler.WithUnit(roof.Wish.HookLoop.Millimetres)} along the lower edge and on the wall below it.");
        page.Line("p", $"{Printed.Count(roof.TabCount)} load tabs under the flap, each in two halves on the lines \"load tab\" of roof and wall with a buckle between: close them first, they carry the tension and not the zip.{Loops(roof)}{Weight(roof)}");
        if (roof.Wish.Screen is not null)
        {
            page.Line("p", "The roof screen lies beneath the roof: pieces M and the roof's labels. Its zips, with \"s\" behind, are sewn to the wall in one seam with the roof's, inside of them, pin on the screen.");
        }
    }

    private static string Loops(RoofFacts roof) => roof.Loops.IsEmpty ? string.Empty : $" Lifting loops, sewn down at both ends on the hub's seams: {string.Join(", ", roof.Loops)}; they carry the roof's own weight and nothing else.";

    private static string Weight(RoofFacts roof) => roof.WeightKg is { } weight ? System.FormattableString.Invariant($" The roof weighs about {weight:0.#} kg without zips and fittings.") : string.Empty;
}
