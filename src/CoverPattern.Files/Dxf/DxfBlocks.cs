using CoverPattern.Files.Drawings;

namespace CoverPattern.Files.Dxf;

/// <summary>The BLOCKS section: the two spaces, which are empty here, and one block a figure.</summary>
internal static class DxfBlocks
{
    public const string ModelSpace = "*Model_Space";
    public const string PaperSpace = "*Paper_Space";

    public static DxfTags Write(DxfPlan plan)
    {
        var blocks = new DxfTags();
        Block(blocks, plan, ModelSpace, plan.ModelRecord);
        Block(blocks, plan, PaperSpace, plan.PaperRecord);
        foreach (var block in plan.Drawing.Blocks)
        {
            Block(blocks, plan, plan.BlockNames[block.Name], plan.BlockRecords[block.Name], block);
        }

        return blocks;
    }

    private static void Block(DxfTags blocks, DxfPlan plan, string name, string record, DrawnBlock? figure = null)
    {
        Mark(blocks, plan, "BLOCK", record, name == PaperSpace).Add(100, "AcDbBlockBegin")
            .Add(2, name).Add(70, 0).AddInSpace(10, default).Add(3, name).Add(1, "");
        foreach (var line in figure?.Lines ?? [])
        {
            DxfEntities.Line(blocks, plan, record, line);
        }

        Mark(blocks, plan, "ENDBLK", record, name == PaperSpace).Add(100, "AcDbBlockEnd");
    }

    private static DxfTags Mark(DxfTags blocks, DxfPlan plan, string kind, string record, bool isOnPaper)
    {
        blocks.Add(0, kind).Add(5, plan.Handles.Next()).Add(330, record).Add(100, "AcDbEntity");
        return (isOnPaper ? blocks.Add(67, 1) : blocks).Add(8, DxfTables.PlainLayer);
    }
}
