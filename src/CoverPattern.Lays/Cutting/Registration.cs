using System.Collections.Generic;
using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Cutting;

/// <summary>Crosses at the ends of sections, by which the cloth is laid on again for the next one.</summary>
/// <remarks>Each section draws the arms that lie on it, so that nothing reaches beyond the machine; with the next section's they make whole crosses.</remarks>
public static class Registration
{
    /// <summary>Label that the strokes bear in place of a piece's.</summary>
    public const string Label = "registration";

    // From the roll's edge and half a cross; own choice, millimetres: in the selvedge, where no piece lies.
    private const double FromEdge = 5;
    private const double Half = 4;

    /// <summary>Crosses near both edges of the roll, at each end that the section shares with another.</summary>
    /// <param name="section">The section.</param>
    /// <param name="lay">Its lay.</param>
    public static ImmutableArray<Stroke> Of(Section section, Lay lay)
    {
        System.ArgumentNullException.ThrowIfNull(section);
        System.ArgumentNullException.ThrowIfNull(lay);

        var strokes = ImmutableArray.CreateBuilder<Stroke>();
        foreach (var (x, inward) in Ends(section, lay))
        {
            strokes.AddRange(Cross(new Point2(x, FromEdge), inward));
            strokes.AddRange(Cross(new Point2(x, lay.RollWidthMm - FromEdge), inward));
        }

        return strokes.ToImmutable();
    }

    private static IEnumerable<(double X, int Inward)> Ends(Section section, Lay lay)
    {
        if (section.FromMm > 0)
        {
            yield return (0, 1);
        }

        if (section.ToMm < lay.LengthMm)
        {
            yield return (section.ToMm - section.FromMm, -1);
        }
    }

    private static IEnumerable<Stroke> Cross(Point2 at, int inward)
    {
        yield return new Stroke(Label, StrokeUse.Draw, "cross", [at, at + new Point2(inward * Half, 0)]);
        yield return new Stroke(Label, StrokeUse.Draw, "cross", [at - new Point2(0, Half), at + new Point2(0, Half)]);
    }
}
