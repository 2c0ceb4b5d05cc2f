using System.Text;
using CoverPattern.Files.Drawings;

namespace CoverPattern.Files.Dxf;

/// <summary>Writes a drawing as DXF of the release AC1015 or on request AC1009, in millimetres, text form.</summary>
/// <remarks>
/// Coordinates have ten decimals at most, so numbers of the grid are exact. A reader works out inserted blocks itself; for
/// turns other than quarter turns its rounding stays within 0.001 mm of ours, a hundredth of a pen line.
/// </remarks>
public static class DxfWriter
{
    /// <param name="drawing">The drawing.</param>
    /// <param name="release">The form of DXF.</param>
    /// <returns>The file in ASCII with "\n" line ends; the same bytes for the same drawing.</returns>
    public static byte[] Write(Drawing drawing, DxfRelease release = DxfRelease.AC1015)
    {
        if (release == DxfRelease.AC1009)
        {
            return DxfRelease12.Write(drawing);
        }

        var plan = new DxfPlan(drawing);
        var body = new DxfTags();
        Section(body, "CLASSES", new DxfTags());
        Section(body, "TABLES", DxfTables.Write(plan));
        Section(body, "BLOCKS", DxfBlocks.Write(plan));
        Section(body, "ENTITIES", DxfEntities.WriteSheet(plan));
        Section(body, "OBJECTS", DxfObjects.Write(plan));

        // The header names the first free handle, so it can only be written last.
        var file = new DxfTags();
        Section(file, "HEADER", DxfHeader.Write(plan));
        file.Add(body).Add(0, "EOF");
        return Encoding.ASCII.GetBytes(file.ToString());
    }

    private static void Section(DxfTags file, string name, DxfTags content) =>
        file.Add(0, "SECTION").Add(2, name).Add(content).Add(0, "ENDSEC");
}
