using System;
using System.Collections.Generic;
using System.Linq;

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
    /// <summary>What <see cref="Look"/> tells of shifts at which the shapes do not overlap.</summary>
    public const byte Apart = 0;

    /// <summary>What <see cref="Look"/> tells where it must be asked exactly.</summary>
    public const byte Unsure = 1;

    // Any higher number: they overlap, and the number tells how badly at least.
    private const byte LeastOverlap = 2;
    private const byte MostOverlap = 254;
    private const byte Unknown = 255;

    // Numbers for each halving of the severity.
    private const int Fineness = 24;

    private static readonly float[] Shares = [.. Enumerable.Range(0, 256).Select(code => code > LeastOverlap ? MathF.Pow(2, (code - MostOverlap) / (float)Fineness) : 0)];

    // A cell's border belongs to both cells, with a reserve far above the rounding of a cell number.
    private const double Reserve = 1e-6;

    private readonly double _left;
    private readonly double _bottom;
    private readonly double _columnsPerStep;
    private readonly double _rowsPerStep;
    private readonly int _size;
    private readonly byte[] _cells;
    private readonly float _worst;

    private PairTable() => (_cells, Touching) = ([Unsure], []);

    public PairTable(PreparedShape a, PreparedShape b, int size)
    {
        (_left, _bottom, _size) = ((double)a.Box.Left - b.Box.Right, (double)a.Box.Bottom - b.Box.Top, size);
        _columnsPerStep = size / ((double)a.Box.Width + b.Box.Width);
        _rowsPerStep = size / ((double)a.Box.Height + b.Box.Height);
        // One cell more stands for all beyond.
        _cells = new byte[(size * size) + 1];
        Array.Fill(_cells, Unknown);
        _cells[^1] = Apart;
        var pieces = new List<Touching>();
        Search.Touching.Collect(a, b, pieces);
        Touching = [.. pieces];
        foreach (var piece in Touching)
        {
            Mark((piece.X, piece.Y), (piece.ToX, piece.ToY));
        }

        Decide(a, b);
        _worst = Grade(a, b);
    }

    /// <summary>Knows nothing.</summary>
    public static PairTable None { get; } = new();

    /// <summary>The shifts at which the shapes touch.</summary>
    public Touching[] Touching { get; }

    /// <summary><see cref="Apart"/>, <see cref="Unsure"/>, or else a number for <see cref="Least"/>: they overlap.</summary>
    public byte Look(double x, double y)
    {
        var column = (int)((x - _left) * _columnsPerStep);
        var row = (int)((y - _bottom) * _rowsPerStep);
        return (uint)column < (uint)_size && (uint)row < (uint)_size ? _cells[(row * _size) + column] : _cells[^1];
    }

    /// <summary>A severity that no shift with this number falls below.</summary>
    public float Least(byte code) => _worst * Shares[code];

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

    /// <summary>Writes down for each cell of overlap how bad it is at least.</summary>
    /// <returns>The severity that the highest number stands for.</returns>
    private float Grade(PreparedShape a, PreparedShape b)
    {
        var least = new float[_cells.Length];
        var reach = (float)(0.5 * Math.Sqrt((1 / (_columnsPerStep * _columnsPerStep)) + (1 / (_rowsPerStep * _rowsPerStep))));
        for (var k = 0; k < least.Length; k++)
        {
            if (_cells[k] == LeastOverlap)
            {
                var (x, y) = (_left + (((k % _size) + 0.5) / _columnsPerStep), _bottom + (((k / _size) + 0.5) / _rowsPerStep));
                least[k] = Severity.Least(a, b, (float)x, (float)y, reach);
            }
        }

        var worst = least.Max();
        for (var k = 0; k < least.Length; k++)
        {
            if (least[k] > 0)
            {
                // Rounded down, with a little to spare for the rounding of the numbers themselves.
                _cells[k] = (byte)Math.Max(LeastOverlap, Math.Floor(MostOverlap - 0.001 + (Fineness * Math.Log2(least[k] / worst))));
            }
        }

        return worst;
    }

    private byte Ask(PreparedShape a, PreparedShape b, int column, int row)
    {
        var x = Math.Round(_left + ((column + 0.5) / _columnsPerStep));
        var y = Math.Round(_bottom + ((row + 0.5) / _rowsPerStep));
        return Overlap.Exists(a, b, x, y) ? LeastOverlap : Apart;
    }
}
