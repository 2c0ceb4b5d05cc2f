using System.Linq;
using System.Threading;

namespace CoverPattern.Lays.Nesting;

/// <summary>True outlines one by one, each to the leftmost, then lowest place; many orders, the shortest lay kept.</summary>
/// <remarks>
/// Bottom-left fill with search over the order [Dowsland Vaid Dowsland 2002, from memory]. First orders: by area, by
/// extent across and by extent along the strip, each with three rules for choosing between turns; then the best order
/// so far with a few copies moved, late ones most often, since they lie at the right end. Where rows end raggedly their tail is filled
/// this way too. A work unit is <see cref="PlacesPerUnit"/> turns of copies looked at.
/// </remarks>
public static class BottomLeftFill
{
    /// <summary>Places looked for in a work unit: one a copy and turn.</summary>
    public const int PlacesPerUnit = 100;

    /// <summary>Fills the strip.</summary>
    /// <param name="task">What is to be placed.</param>
    /// <param name="cancel">Stops the search; what was found so far is kept, if anything.</param>
    /// <inheritdoc cref="Nester.Nest" path="/exception"/>
    public static NestingLayout Fill(NestingTask task, CancellationToken cancel)
    {
        var search = new FillSearch(new OutlineTable(task), progress: null, cancel);
        search.Run();
        return search.Best.Count > 0 || task.Items.IsEmpty ? Placed.ToLayout(search.Best, "bottom-left") : throw new StripTooLongException(task.Items.Sum(item => item.Quantity));
    }
}
