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
        if (!AreHazards(a, b))
        {
            return false;
        }

        var sign = a.Index <= b.Index ? 1 : -1;
        var look = TableFor(a, b).Look(sign * x, sign * y);
        return look == PairTable.Unsure ? Search.Overlap.Exists(a, b, x, y) : look != PairTable.Apart;
    }

    /// <summary>Whether two shapes must keep clear of each other: not a piece and a flawed area that it bears, nor two areas.</summary>
    public static bool AreHazards(PreparedShape a, PreparedShape b) => a.Grade < b.LeastGrade && b.Grade < a.LeastGrade;

    /// <summary>The table of two shapes, the one of the lower index first, as far as it is made; asking for it often enough makes it.</summary>
    /// <returns><see cref="PairTable.None"/> while there is none.</returns>
    public PairTable TableFor(PreparedShape a, PreparedShape b)
    {
        if (_count == 0 || a.Index == PreparedShape.NoIndex || b.Index == PreparedShape.NoIndex)
        {
            return PairTable.None;
        }

        var (first, second) = a.Index <= b.Index ? (a, b) : (b, a);
        var pair = (first.Index * _count) + second.Index;
        return _tables[pair] ?? Asked(pair, first, second);
    }

    private PairTable Asked(int pair, PreparedShape first, PreparedShape second)
    {
        if (++_asks[pair] < AsksBeforeTable)
        {
            return PairTable.None;
        }

        var table = new PairTable(first, second, _size);
        Volatile.Write(ref _tables[pair], table);
        return table;
    }
}
