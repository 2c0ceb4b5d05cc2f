using System;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>
/// For two shapes, a chart over all shifts of the second against the first: cells where they surely overlap, surely do not,
/// or where it must be asked exactly.
/// </summary>
/// <remarks>
/// Between overlap and no overlap the shapes touch: a corner of one on an edge of the other, with insides apart. Those shifts
/// are straight pieces, one for each such corner and edge. A cell none of them meets is of one kind, so one exact answer
/// serves it and every neighbour it joins. The chart changes no answer, only its price.
/// </remarks>
internal sealed class PairTable
{
    private const byte Unsure = 2;
    private const byte Unknown = 3;

    // A cell's border belongs to both cells, with a reserve far above the rounding of a cell number.
    private const double Reserve = 1e-6;

    private readonly double _left;
    private readonly double _bottom;
    private readonly double _columnsPerStep;
    private readonly double _rowsPerStep;
    private readonly int _size;
    private readonly byte[] _cells;

    public PairTable(PreparedShape a, PreparedShape b, int size)
    {
        (_left, _bottom, _size) = ((double)a.Box.Left - b.Box.Right, (double)a.Box.Bottom - b.Box.Top, size);
        _columnsPerStep = size / ((double)a.Box.Width + b.Box.Width);
        _rowsPerStep = size / ((double)a.Box.Height + b.Box.Height);
        _cells = new byte[size * size];
        Array.Fill(_cells, Unknown);
        MarkTouching(a, b, outward: false);
        MarkTouching(b, a, outward: true);
        Decide(a, b);
    }

    /// <summary>+1 they overlap, 0 they do not, -1 ask exactly.</summary>
    public int Look(double x, double y)
    {
        var column = (int)((x - _left) * _columnsPerStep);
        var row = (int)((y - _bottom) * _rowsPerStep);
        if ((uint)column >= (uint)_size || (uint)row >= (uint)_size)
        {
            return 0;
        }

        var cell = _cells[(row * _size) + column];
        return cell == Unsure ? -1 : cell;
    }

    /// <summary>Marks the shifts at which a corner of one shape slides along an edge of the other, insides apart.</summary>
    /// <param name="corners">The shape whose corners touch.</param>
    /// <param name="edges">The shape whose edges are touched.</param>
    /// <param name="outward">Whether the corners belong to the second shape, so that shifts count from edge to corner.</param>
    private void MarkTouching(PreparedShape corners, PreparedShape edges, bool outward)
    {
        for (var i = 0; i < corners.EdgeCount; i++)
        {
            var cone = Contact.At(corners, i);
            for (var j = 0; j < edges.EdgeCount; j++)
            {
                if (Cone.Overlap(cone, Contact.Beside(edges, j)))
                {
                    continue;
                }

                var (x, y) = (corners.X[i] - edges.X[j], corners.Y[i] - edges.Y[j]);
                var (toX, toY) = (x - edges.StepX[j], y - edges.StepY[j]);
                Mark(outward ? (-x, -y) : (x, y), outward ? (-toX, -toY) : (toX, toY));
            }
        }
    }

    /// <summary>Marks every cell a straight piece meets, row by row.</summary>
    private void Mark((double X, double Y) from, (double X, double Y) to)
    {
        var (fromX, fromY) = ((from.X - _left) * _columnsPerStep, (from.Y - _bottom) * _rowsPerStep);
        var (toX, toY) = ((to.X - _left) * _columnsPerStep, (to.Y - _bottom) * _rowsPerStep);
        var (low, high) = (CellAt(Math.Min(fromY, toY) - Reserve), CellAt(Math.Max(fromY, toY) + Reserve));
        for (var row = low; row <= high; row++)
        {
            var (first, last) = (At(row - Reserve), At(row + 1 + Reserve));
            var (left, right) = (CellAt(Math.Min(first, last) - Reserve), CellAt(Math.Max(first, last) + Reserve));
            _cells.AsSpan((row * _size) + left, right - left + 1).Fill(Unsure);
        }

        // The x at which the piece passes a height, kept between its ends.
        double At(double y)
        {
            var share = toY == fromY ? (y <= fromY ? 0 : 1) : Math.Clamp((y - fromY) / (toY - fromY), 0, 1);
            return fromX + (share * (toX - fromX));
        }
    }

    private int CellAt(double place) => Math.Clamp((int)Math.Floor(place), 0, _size - 1);

    private void Decide(PreparedShape a, PreparedShape b)
    {
        for (var row = 0; row < _size; row++)
        {
            for (var column = 0; column < _size; column++)
            {
                ref var cell = ref _cells[(row * _size) + column];
                if (cell != Unknown)
                {
                    continue;
                }

                var beside = column > 0 ? _cells[(row * _size) + column - 1] : Unsure;
                var below = row > 0 ? _cells[((row - 1) * _size) + column] : Unsure;
                cell = beside != Unsure ? beside : below != Unsure ? below : Ask(a, b, column, row);
            }
        }
    }

    private byte Ask(PreparedShape a, PreparedShape b, int column, int row)
    {
        var x = Math.Round(_left + ((column + 0.5) / _columnsPerStep));
        var y = Math.Round(_bottom + ((row + 0.5) / _rowsPerStep));
        return Overlap.Exists(a, b, x, y) ? (byte)1 : (byte)0;
    }
}
