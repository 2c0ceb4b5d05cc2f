using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>The cover row by row, each drawn as large as its names need.</summary>
internal static class RowSection
{
    // Own choices, millimetres on paper.
    private const double Width = 172;
    private const double StripHeight = 46;
    private const double CapHeight = 96;

    // Lower than this a strip is parted though all names would fit: seams of like direction run together.
    private const double LeastHeight = 22;

    // A row is parted into no more drawings than this.
    private const int MostParts = 12;

    public static void Write(PageWriter page, Result result)
    {
        page.Line("h2", "The cover row by row");
        page.Line("p", "Row 1 stands on the deck. Each row is rolled off to the right, counter-clockwise seen from above, and goes on in the next drawing; the top is drawn from above. Shapes nearly true, not to scale, the skirt higher than it is. Thick lines are seams with their names, broken lines folds; each piece bears its name once in a drawing.");
        foreach (var strip in RowStrip.Of(result))
        {
            foreach (var (figure, unnamed) in Draw(result, strip))
            {
                page.Open("div", ("class", "row"));
                page.Line("h3", figure.Name);
                FigureSvg.Write(page, figure);
                if (!unnamed.IsEmpty)
                {
                    page.Line("p", $"Too small here for their names: {string.Join(", ", unnamed)}.", ("class", "small"));
                }

                page.Close();
            }
        }
    }

    /// <summary>The row in as few drawings as hold all names; where none does, in the largest.</summary>
    public static ImmutableArray<(Figure Figure, ImmutableArray<string> Unnamed)> Draw(Result result, RowStrip strip)
    {
        var before = 0.0;
        ImmutableArray<(Figure Figure, ImmutableArray<string> Unnamed)> drawn = [];
        for (var count = 1; count <= MostParts; count++)
        {
            var parts = strip.Parts(count);
            var ratio = parts.Min(part => Ratio(strip, part));
            if (count > 1 && ratio <= before)
            {
                break;
            }

            before = ratio;
            if (!strip.IsCap && count < MostParts && ratio < parts.Min(part => LeastHeight / Height(part)))
            {
                continue;
            }

            drawn = [.. parts.Select(part => RowFigure.Draw(result, strip, part, ratio))];
            if (drawn.All(part => part.Unnamed.IsEmpty))
            {
                break;
            }
        }

        return drawn;
    }

    private static double Height(ImmutableArray<RowFace> part) => Rings.Bounds(part.SelectMany(face => face.Reach)).Height;

    private static double Ratio(RowStrip strip, ImmutableArray<RowFace> part)
    {
        var box = Rings.Bounds(part.SelectMany(face => face.Reach));
        return Math.Min(Width / box.Width, (strip.IsCap ? CapHeight : StripHeight) / box.Height);
    }
}
