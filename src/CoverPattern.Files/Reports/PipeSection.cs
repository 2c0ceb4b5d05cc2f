using System.Linq;
using CoverPattern.Files.Results;

namespace CoverPattern.Files.Reports;

/// <summary>Stove pipes: where they go through, what the papers of stove and cloth said, and what is measured to sew and to check it.</summary>
internal static class PipeSection
{
    public static void Write(PageWriter page, Result result)
    {
        if (result.Pipes.IsEmpty)
        {
            return;
        }

        var ruler = Ruler.Of(result.Job);
        page.Line("h2", "Stove pipes");
        page.Line("p", "Cut back and turn under the cover's cloth at the rim, lay the patch over it from outside, sew its edge down. Turn the edge of the patch's hole up into the foot of the sleeve and sew the sleeve on over it, its own seam on the tick at the lowest place. Sew the rain flap on the drawn line above the patch; hang the closing flap by its upper edge on its drawn line. A steel band clamps the sleeve round the pipe; fasten the closing flap with metal studs: no plastic, zip, liner or insulation within the clear distance.");
        page.Line("p", "To close the hole without a stove, turn the sleeve inward and fasten the closing flap over it.");
        page.Table("wide", ["Pipe", "Where", "Diameter", "Clear distance", "Heat cloth", "Sleeve", "Hole in the patch", "Rim of the patch"], PipeFacts.Of(result).Select(pipe => Row(pipe, ruler)));
        if (PipeFacts.Of(result).Any(pipe => !pipe.Ordinates.IsEmpty))
        {
            page.Line("h3", "Feet of straight sleeves, to mark or check by hand");
            page.Line("p", "Height of the foot over its lowest point, at each twelfth of the girth from the sleeve's own seam, to the right seen from outside.");
            page.Table(
                "numbers",
                ["Sleeve", "Girth " + ruler.Unit, .. Enumerable.Range(0, 12).Select(station => Printed.Count(station) + "/12")],
                PipeFacts.Of(result).Where(pipe => !pipe.Ordinates.IsEmpty).Select(pipe => new[] { pipe.Pipe.Label + "s", ruler.Of(pipe.FootMm.Girth) }.Concat(pipe.Ordinates.Select(ruler.Of)).ToArray()));
        }
    }

    private static string[] Row(PipeFacts facts, Ruler ruler)
    {
        var wish = facts.Pipe.Wish;
        return
        [
            facts.Pipe.Label,
            $"{Printed.Word(wish.Place.Run)}, through {facts.Facet}, {Printed.Number(facts.TiltDegrees, 1)}\u00b0 off square to it",
            wish.Diameter.Typed,
            $"{wish.Clear.Typed} from the pipe's wall, as the job states it from the papers of the stove",
            $"{wish.Cloth}, stated service temperature {Printed.Count(facts.ServiceTemperature)} \u00b0C",
            wish.Spread is { } spread ? $"cone boot, half angle {Printed.Number(spread, 1)}\u00b0" : $"straight, {ruler.WithUnit(2 * wish.SleeveRadius)} wide, {wish.Sleeve.Typed} over its foot",
            $"{ruler.WithUnit(facts.FootMm.Rim)} round",
            $"{ruler.WithUnit(facts.RimMm)} round",
        ];
    }
}
