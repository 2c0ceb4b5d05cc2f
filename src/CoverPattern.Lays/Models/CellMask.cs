using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Models;

/// <summary>Outlines as cells of a millimetre: a cell is taken when an outline comes near it, so that what does not overlap here does not overlap.</summary>
internal sealed class CellMask
{
    private const int Bits = 64;

    // Outlines are kept this far apart at least, millimetres: scissors go between.
    private const double Clearance = 0.75;

    private readonly ulong[] words;

    private CellMask(int width, int height, int wordsPerRow)
    {
        (Width, Height, WordsPerRow) = (width, height, wordsPerRow);
        words = new ulong[height * wordsPerRow];
    }

    internal int Width { get; }

    internal int Height { get; }

    internal int WordsPerRow { get; }

    /// <summary>Cells that are taken.</summary>
    internal int Count => words.Sum(word => (int)ulong.PopCount(word));

    /// <summary>For each cell, row by row, the side of the largest square of cells that are all taken, or all free, of which it is the last.</summary>
    /// <remarks>One more than the least of the cells left, below, and left below (from memory).</remarks>
    internal ushort[] Squares(bool taken)
    {
        var sides = new ushort[Width * Height];
        for (var at = 0; at < sides.Length; at++)
        {
            var (x, y) = (at % Width, at / Width);
            if (IsTaken(x, y) == taken)
            {
                var before = x == 0 || y == 0 ? 0 : Math.Min(sides[at - Width - 1], Math.Min(sides[at - Width], sides[at - 1]));
                sides[at] = (ushort)(before + 1);
            }
        }

        return sides;
    }

    private bool IsTaken(int x, int y) => ((words[(y * WordsPerRow) + (x / Bits)] >> (x % Bits)) & 1) != 0;

    /// <summary>A free sheet.</summary>
    internal static CellMask Sheet(int width, int height) => new(width, height, (width + Bits - 1) / Bits);

    /// <summary>How many cells wide and high the mask of rings in a box is.</summary>
    internal static (int Width, int Height) Size(Box2 box) => ((int)Math.Ceiling(box.Width) + 1, (int)Math.Ceiling(box.Height) + 1);

    /// <summary>The cells that some rings cover; their lower left corner is the corner of the rings' box.</summary>
    internal static CellMask Of(ImmutableArray<ImmutableArray<Point2>> rings)
    {
        var box = Rings.Bounds(rings.SelectMany(ring => ring));
        var (width, height) = Size(box);
        var mask = Sheet(width, height);
        foreach (var ring in rings)
        {
            for (var y = 0; y < mask.Height; y++)
            {
                mask.FillRow(ring, box.Low, y);
            }
        }

        return mask;
    }

    /// <summary>The same cells moved to the right within rows of a sheet's length.</summary>
    internal CellMask MovedRight(int by, int wordsPerRow)
    {
        var moved = new CellMask(Width, Height, wordsPerRow);
        var (skip, shift) = (by / Bits, by % Bits);
        for (var y = 0; y < Height; y++)
        {
            for (var i = 0; i < WordsPerRow; i++)
            {
                var word = words[(y * WordsPerRow) + i];
                moved.Put(y, i + skip, word << shift);
                moved.Put(y, i + skip + 1, shift == 0 ? 0 : word >> (Bits - shift));
            }
        }

        return moved;
    }

    /// <summary>Whether no cell of a mask, moved up, is taken here.</summary>
    internal bool IsFree(CellMask mask, int up)
    {
        var shift = up * WordsPerRow;
        for (var i = 0; i < mask.words.Length; i++)
        {
            if ((mask.words[i] & words[i + shift]) != 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Takes the cells of a mask, moved up.</summary>
    internal void Take(CellMask mask, int up)
    {
        for (var i = 0; i < mask.words.Length; i++)
        {
            words[i + (up * WordsPerRow)] |= mask.words[i];
        }
    }

    private void Put(int row, int at, ulong word)
    {
        if (word != 0)
        {
            words[(row * WordsPerRow) + at] |= word;
        }
    }

    /// <summary>Takes the cells of one row: those that an edge passes near, and those between edges.</summary>
    private void FillRow(ImmutableArray<Point2> ring, Point2 low, int y)
    {
        var (bottom, top) = (low.Y + y - Clearance, low.Y + y + 1 + Clearance);
        var crossings = new System.Collections.Generic.List<double>();
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            var (lower, upper) = a.Y <= b.Y ? (a, b) : (b, a);
            if (upper.Y >= bottom && lower.Y <= top)
            {
                var (from, to) = (At(lower, upper, Math.Max(bottom, lower.Y)), At(lower, upper, Math.Min(top, upper.Y)));
                Take(y, Math.Min(from, to) - Clearance - low.X, Math.Max(from, to) + Clearance - low.X);
            }

            var middle = low.Y + y + 0.5;
            if (a.Y > middle != b.Y > middle)
            {
                crossings.Add(At(lower, upper, middle));
            }
        }

        crossings.Sort();
        for (var i = 0; i + 1 < crossings.Count; i += 2)
        {
            Take(y, crossings[i] - low.X, crossings[i + 1] - low.X);
        }
    }

    private static double At(Point2 lower, Point2 upper, double y) =>
        upper.Y == lower.Y ? lower.X : lower.X + ((upper.X - lower.X) * (y - lower.Y) / (upper.Y - lower.Y));

    private void Take(int y, double from, double to)
    {
        for (var x = Math.Max(0, (int)Math.Floor(from)); x <= Math.Min(Width - 1, (int)Math.Floor(to)); x++)
        {
            words[(y * WordsPerRow) + (x / Bits)] |= 1UL << (x % Bits);
        }
    }
}
