namespace CoverPattern.Files.Dxf;

/// <summary>Which form of DXF is written.</summary>
public enum DxfRelease
{
    /// <summary>Of the year 2000: units in the header, handles and owners throughout.</summary>
    AC1015,

    /// <summary>Release 12, for programs that read nothing newer: no units, no handles, POLYLINE for lines.</summary>
    AC1009,
}
