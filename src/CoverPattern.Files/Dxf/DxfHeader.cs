namespace CoverPattern.Files.Dxf;

/// <summary>The HEADER section: release, units, extent.</summary>
internal static class DxfHeader
{
    private const int Millimetres = 4;
    private const int Metric = 1;
    private const int Decimal = 2;

    public static DxfTags Write(DxfPlan plan) => new DxfTags()
        .Add(9, "$ACADVER").Add(1, "AC1015")
        .Add(9, "$DWGCODEPAGE").Add(3, "ANSI_1252")
        .Add(9, "$INSBASE").AddInSpace(10, default)
        .Add(9, "$EXTMIN").AddInSpace(10, plan.Extent.Low)
        .Add(9, "$EXTMAX").AddInSpace(10, plan.Extent.High)
        .Add(9, "$LTSCALE").Add(40, 1.0)
        .Add(9, "$TEXTSTYLE").Add(7, DxfTables.TextStyle)
        .Add(9, "$CLAYER").Add(8, DxfTables.PlainLayer)
        .Add(9, "$LUNITS").Add(70, Decimal)
        .Add(9, "$INSUNITS").Add(70, Millimetres)
        .Add(9, "$MEASUREMENT").Add(70, Metric)
        .Add(9, "$HANDSEED").Add(5, plan.Handles.Seed());
}
