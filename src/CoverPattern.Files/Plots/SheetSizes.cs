using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Jobs;
using CoverPattern.Lays.Sheets;

namespace CoverPattern.Files.Plots;

/// <summary>Sheets of paper by their names.</summary>
public static class SheetSizes
{
    private const double Inch = 25.4;

    // ISO 216 and the North American sizes.
    private static readonly ImmutableSortedDictionary<string, SheetSize> Named = new Dictionary<string, SheetSize>
    {
        ["A0"] = new(841, 1189),
        ["A1"] = new(594, 841),
        ["A2"] = new(420, 594),
        ["A3"] = new(297, 420),
        ["A4"] = new(210, 297),
        ["Legal"] = new(8.5 * Inch, 14 * Inch),
        ["Letter"] = new(8.5 * Inch, 11 * Inch),
        ["Tabloid"] = new(11 * Inch, 17 * Inch),
    }.ToImmutableSortedDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>What may be typed, for people.</summary>
    public static string Allowed => string.Join(", ", Named.Keys) + " or width x height with units, such as \"610 mm x 914 mm\"";

    /// <summary>Reads the name of a sheet, or its width and height.</summary>
    public static bool TryParse(string text, out SheetSize sheet)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (Named.TryGetValue(text.Trim(), out sheet))
        {
            return true;
        }

        var sides = text.Split('x', '\u00d7').Select(side => LengthParser.TryParse(side, signed: false, out var length, out _) ? length : 0).ToArray();
        sheet = sides.Length == 2 ? new SheetSize(sides[0], sides[1]) : default;
        return sheet is { WidthMm: > 0, HeightMm: > 0 };
    }
}
