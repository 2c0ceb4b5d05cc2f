using System.Globalization;
using System.Text;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Dxf;

/// <summary>The text of a DXF file while it grows: pairs of a group code and a value, a line each.</summary>
internal sealed class DxfTags
{
    private readonly StringBuilder text = new();

    /// <summary>Adds a text that is already fit for DXF.</summary>
    public DxfTags Add(int code, string value)
    {
        text.Append(CultureInfo.InvariantCulture, $"{code,3}\n{value}\n");
        return this;
    }

    public DxfTags Add(int code, int value) => Add(code, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>Adds a number with as many decimals as a number of the grid can have.</summary>
    public DxfTags Add(int code, double value)
    {
        var written = CoordinateText.Write(value, CoordinateText.GridDecimals);
        return Add(code, written.Contains('.') ? written : written + ".0");
    }

    /// <summary>Adds a point of the plane: its y ten codes after its x.</summary>
    public DxfTags Add(int code, Point2 point) => Add(code, point.X).Add(code + 10, point.Y);

    /// <summary>Adds a point of space at height 0.</summary>
    public DxfTags AddInSpace(int code, Point2 point) => Add(code, point).Add(code + 20, 0.0);

    public DxfTags Add(DxfTags other)
    {
        text.Append(other.text);
        return this;
    }

    public override string ToString() => text.ToString();
}
