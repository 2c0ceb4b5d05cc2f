using System.Globalization;
using CoverPattern.Lays;
using CoverPattern.Lays.Cutting;

namespace CoverPattern.Files.Plots;

/// <summary>Names of plot files.</summary>
internal static class PlotNames
{
    /// <summary>The name of a lay without ending, such as "lay-canvas"; a second lay of the same cloth carries its number.</summary>
    internal static string Of(Lay lay) => "lay-" + lay.Cloth + (lay.Number == 1 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"-{lay.Number}"));

    /// <summary>The name of a section of a lay, numbered so that names sort as the sections follow.</summary>
    internal static string Of(Lay lay, Section section, int count)
    {
        var digits = count.ToString(CultureInfo.InvariantCulture).Length;
        return Of(lay) + (count == 1 ? string.Empty : "-section-" + section.Number.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0'));
    }
}
