using System;
using System.Globalization;
using System.Linq;
using System.Text;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;

namespace CoverPattern.Files.Surveys;

/// <summary>Writes a frame as a survey, so that it can be checked on site, corrected and read again.</summary>
/// <remarks>Numbers have all digits of the double: what is read back is the same frame. Lines over which a facet bends are written as its edges, not as folds.</remarks>
public static class SurveyWriter
{
    /// <summary>Lines of hubs and facets; labels of hubs are kept.</summary>
    public static string Csv(Frame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        var text = new StringBuilder("unit,mm\n");
        foreach (var hub in frame.Hubs)
        {
            text.Append("hub,").Append(hub.Label).Append(',').Append(Numbers(hub.Position, ',')).Append('\n');
        }

        foreach (var facet in frame.Facets)
        {
            text.Append("facet,").AppendJoin(',', facet.Hubs.Select(hub => frame.Hubs[hub].Label)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>An OBJ mesh in millimetres, z up.</summary>
    public static string Obj(Frame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        var text = new StringBuilder("# millimetres, z up\n");
        foreach (var hub in frame.Hubs)
        {
            text.Append("v ").Append(Numbers(hub.Position, ' ')).Append('\n');
        }

        foreach (var facet in frame.Facets)
        {
            text.Append("f ").AppendJoin(' ', facet.Hubs.Select(hub => (hub + 1).ToString(CultureInfo.InvariantCulture))).Append('\n');
        }

        return text.ToString();
    }

    private static string Numbers(Point3 point, char separator) => string.Join(
        separator, new[] { point.X, point.Y, point.Z }.Select(number => number.ToString("R", CultureInfo.InvariantCulture)));
}
