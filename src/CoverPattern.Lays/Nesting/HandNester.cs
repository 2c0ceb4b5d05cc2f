using System;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>Lays for shears and rule: rows side by side, whose edges lie on common straight lines, with few turns.</summary>
/// <remarks>The shortest of boxes in rows, rows and rows of a double lattice. The tight lay is made beside it, so that its price can be told.</remarks>
public static class HandNester
{
    /// <summary>Lays by hand.</summary>
    /// <returns>Rows with the length of the tight lay beside theirs; the tight lay itself where rows cannot be (flaws, copies that stay) or it is no longer and no less plain.</returns>
    /// <inheritdoc cref="Nester.Nest"/>
    public static NestingLayout Nest(NestingTask task, IProgress<NestingProgress>? progress, CancellationToken cancel)
    {
        var tight = Nester.Nest(task, progress, cancel);
        var plain = task.Fixed.IsEmpty && !cancel.IsCancellationRequested ? Plain(new OutlineTable(task), cancel) : [];
        var best = plain.OrderBy(layout => layout.Length).FirstOrDefault(layout => layout.Length <= Grid.LargestMillimetres && LayoutCheck.Check(task, layout).IsEmpty) ?? tight;
        return best with { TightLength = Math.Min(tight.Length, best.Length) };
    }

    /// <summary>Boxes and rows; none when stopped meanwhile, for then the tight lay is at hand.</summary>
    private static NestingLayout[] Plain(OutlineTable table, CancellationToken cancel)
    {
        try
        {
            return [Placed.ToLayout(ShelfFill.Fill(table, cancel), "boxes"), Placed.ToLayout(RowFill.Fill(table, cancel), "rows")];
        }
        catch (OperationCanceledException)
        {
            return [];
        }
    }
}
