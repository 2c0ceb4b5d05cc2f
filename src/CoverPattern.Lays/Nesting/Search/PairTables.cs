using System.Threading;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>The pair tables of a task, each made when its pair has been asked for often enough to pay.</summary>
/// <remarks>Workers share it without locks: a table made twice is the same table, and answers do not depend on it.</remarks>
internal sealed class PairTables
{
    private const int AsksBeforeTable = 200;

    // Beyond this many shapes the list of tables itself would be too large.
    private const int MostShapes = 1200;

    private const long MostCells = 48_000_000;

    private readonly PairTable?[] _tables;
    private readonly byte[] _asks;
    private readonly int _count;
    private readonly int _size;

    /// <param name="all">Number of shapes.</param>
    /// <param name="used">Whether to use tables at all.</param>
    public PairTables(int all, bool used)
    {
        _count = used && all <= MostShapes ? all : 0;
        _tables = new PairTable?[_count * _count];
        _asks = new byte[_count * _count];
        var pairs = (long)all * (all + 1) / 2;
        _size = pairs * 96 * 96 <= MostCells ? 96 : pairs * 64 * 64 <= MostCells ? 64 : 32;
    }

    /// <summary><see cref="Search.Overlap.Exists"/>, but no piece overlaps a flawed area that it bears, nor one area another.</summary>
    public bool Overlap(PreparedShape a, PreparedShape b, double x, double y)
    {
        if (a.Grade >= b.LeastGrade || b.Grade >= a.LeastGrade)
        {
            return false;
        }

        if (_count == 0 || a.Index == PreparedShape.NoIndex || b.Index == PreparedShape.NoIndex)
        {
            return Search.Overlap.Exists(a, b, x, y);
        }

        return a.Index <= b.Index ? Ordered(a, b, x, y) : Ordered(b, a, -x, -y);
    }

    private bool Ordered(PreparedShape a, PreparedShape b, double x, double y)
    {
        var pair = (a.Index * _count) + b.Index;
        var table = _tables[pair];
        if (table is null)
        {
            return Counted(pair, a, b, (x, y));
        }

        var look = table.Look(x, y);
        return look < 0 ? Search.Overlap.Exists(a, b, x, y) : look > 0;
    }

    private bool Counted(int pair, PreparedShape a, PreparedShape b, (double X, double Y) shift)
    {
        if (++_asks[pair] >= AsksBeforeTable)
        {
            Volatile.Write(ref _tables[pair], new PairTable(a, b, _size));
        }

        return Search.Overlap.Exists(a, b, shift.X, shift.Y);
    }
}
