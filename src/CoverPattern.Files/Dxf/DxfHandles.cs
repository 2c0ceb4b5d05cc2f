using System.Globalization;

namespace CoverPattern.Files.Dxf;

/// <summary>Hands out the numbers by which the things of a DXF file name each other; never the same twice.</summary>
internal sealed class DxfHandles
{
    private int last;

    /// <summary>A number that has not been used yet.</summary>
    public string Next() => Hexadecimal(++last);

    /// <summary>The number a reader may use first, written into the header.</summary>
    public string Seed() => Hexadecimal(last + 1);

    private static string Hexadecimal(int number) => number.ToString("X", CultureInfo.InvariantCulture);
}
