using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Files.Drawings;

/// <summary>What a drawn file shows, whatever its format; x to the right, y up, millimetres.</summary>
/// <param name="Title">Name for people and screens.</param>
/// <param name="Blocks">Figures that are inserted; names differ.</param>
/// <param name="Insertions">Blocks on the sheet, in order.</param>
/// <param name="Lines">Further lines on the sheet.</param>
/// <param name="Texts">All writing.</param>
public sealed record Drawing(
    string Title,
    ImmutableArray<DrawnBlock> Blocks,
    ImmutableArray<BlockInsertion> Insertions,
    ImmutableArray<DrawnLine> Lines,
    ImmutableArray<DrawnText> Texts)
{
    /// <summary>Every line as it lies on the sheet: those of the inserted blocks first, then the sheet's own.</summary>
    public IEnumerable<DrawnLine> LinesOnSheet()
    {
        var blocks = Blocks.ToDictionary(block => block.Name);
        foreach (var insertion in Insertions)
        {
            var map = insertion.Map;
            foreach (var line in blocks[insertion.Block].Lines)
            {
                yield return line with { Points = map.Apply(line.Points) };
            }
        }

        foreach (var line in Lines)
        {
            yield return line;
        }
    }
}
