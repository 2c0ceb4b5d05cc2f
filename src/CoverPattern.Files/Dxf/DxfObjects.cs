using System.Collections.Generic;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Dxf;

/// <summary>The OBJECTS section: the dictionaries every file has, and the two layouts.</summary>
internal static class DxfObjects
{
    private const string PlotStyleName = "Normal";

    public static DxfTags Write(DxfPlan plan)
    {
        var (root, groups, layouts, plotStyles) =
            (plan.Handles.Next(), plan.Handles.Next(), plan.Handles.Next(), plan.Handles.Next());
        var objects = new DxfTags();
        Dictionary(
            objects, root, "0", [("ACAD_GROUP", groups), ("ACAD_LAYOUT", layouts), ("ACAD_PLOTSTYLENAME", plotStyles)]);
        Dictionary(objects, groups, root, []);
        Dictionary(objects, layouts, root, [("Layout1", plan.PaperLayout), ("Model", plan.ModelLayout)]);
        PlotStyles(objects, plan, plotStyles, root);
        Layout(objects, layouts, ("Model", plan.ModelLayout, plan.ModelRecord), plan.Extent);
        Layout(objects, layouts, ("Layout1", plan.PaperLayout, plan.PaperRecord), default);
        return objects;
    }

    private static void Dictionary(DxfTags objects, string handle, string owner, IEnumerable<(string Name, string Handle)> entries)
    {
        objects.Add(0, "DICTIONARY").Add(5, handle).Add(330, owner).Add(100, "AcDbDictionary").Add(281, 1);
        foreach (var entry in entries)
        {
            objects.Add(3, entry.Name).Add(350, entry.Handle);
        }
    }

    /// <summary>The one plot style, which changes nothing; every layer must name one.</summary>
    private static void PlotStyles(DxfTags objects, DxfPlan plan, string handle, string root)
    {
        objects.Add(0, "ACDBDICTIONARYWDFLT").Add(5, handle).Add(330, root).Add(100, "AcDbDictionary").Add(281, 1)
            .Add(3, PlotStyleName).Add(350, plan.PlotStyle).Add(100, "AcDbDictionaryWithDefault").Add(340, plan.PlotStyle);
        objects.Add(0, "ACDBPLACEHOLDER").Add(5, plan.PlotStyle).Add(330, handle);
    }

    private static void Layout(DxfTags objects, string owner, (string Name, string Handle, string Record) layout, Box2 extent)
    {
        var isModel = layout.Name == "Model";
        objects.Add(0, "LAYOUT").Add(5, layout.Handle).Add(330, owner);
        PlotSettings(objects, isModel);
        objects.Add(100, "AcDbLayout").Add(1, layout.Name).Add(70, 1).Add(71, isModel ? 0 : 1)
            .Add(10, extent.Low).Add(11, extent.High).AddInSpace(12, default)
            .AddInSpace(14, extent.Low).AddInSpace(15, extent.High).Add(146, 0.0).AddInSpace(13, default)
            .Add(16, 1.0).Add(26, 0.0).Add(36, 0.0).Add(17, 0.0).Add(27, 1.0).Add(37, 0.0).Add(76, 0)
            .Add(330, layout.Record);
    }

    /// <summary>No printer, no margins, scale 1:1.</summary>
    private static void PlotSettings(DxfTags objects, bool isModel)
    {
        const int ForModel = 1024;
        const int WithLineWidths = 128;
        objects.Add(100, "AcDbPlotSettings").Add(1, "").Add(2, "").Add(4, "").Add(6, "");
        for (var code = 40; code <= 49; code++)
        {
            objects.Add(code, 0.0);
        }

        objects.Add(140, 0.0).Add(141, 0.0).Add(142, 1.0).Add(143, 1.0)
            .Add(70, WithLineWidths | (isModel ? ForModel : 0)).Add(72, 1).Add(73, 0).Add(74, isModel ? 1 : 5).Add(7, "")
            .Add(75, 16).Add(147, 1.0).Add(148, 0.0).Add(149, 0.0);
    }
}
