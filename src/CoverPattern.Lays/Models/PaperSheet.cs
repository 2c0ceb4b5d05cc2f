using System.Linq;

namespace CoverPattern.Lays.Models;

/// <summary>A sheet of paper while outlines are put on it.</summary>
internal sealed class PaperSheet
{
    private readonly CellMask cells;

    // What tells quickly where an outline cannot lie: its largest square must be free too.
    private ushort[] squares;

    /// <param name="width">Cells across.</param>
    /// <param name="height">Cells up.</param>
    internal PaperSheet(int width, int height)
    {
        cells = CellMask.Sheet(width, height);
        squares = cells.Squares(taken: false);
        Free = width * height;
        LargestSquare = squares.Max();
    }

    internal int Width => cells.Width;

    internal int Height => cells.Height;

    internal int WordsPerRow => cells.WordsPerRow;

    /// <summary>Outlines on it.</summary>
    internal int Pieces { get; private set; }

    /// <summary>Cells that are free.</summary>
    internal int Free { get; private set; }

    /// <summary>Side of the largest free square.</summary>
    internal int LargestSquare { get; private set; }

    /// <summary>Whether a square, moved right and up, is free.</summary>
    internal bool MayHold(CellSquare square, int right, int up) => squares[((square.Y + up) * Width) + square.X + right] >= square.Side;

    /// <summary>Whether no cell of a mask that was moved right is taken when it is moved up.</summary>
    internal bool IsFree(CellMask mask, int up) => cells.IsFree(mask, up);

    /// <summary>Takes the cells of a mask that was moved right, moved up.</summary>
    internal void Take(CellMask mask, int up)
    {
        cells.Take(mask, up);
        squares = cells.Squares(taken: false);
        Free = (Width * Height) - cells.Count;
        LargestSquare = squares.Max();
        Pieces++;
    }
}
