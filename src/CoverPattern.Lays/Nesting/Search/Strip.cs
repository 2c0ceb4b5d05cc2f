using System;
using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Where every copy lies at the moment, with the boxes that tell quickly who can meet whom. One a worker.</summary>
internal sealed class Strip
{
    private const int Lanes = 8;

    // From here on a walk through bins is cheaper than looking at all boxes, eight at a time.
    private const int ManyCopies = 300;

    private readonly int[] _left;
    private readonly int[] _bottom;
    private readonly int[] _right;
    private readonly int[] _top;

    private readonly StripBins? _bins;
    private readonly int _pieces;

    public Strip(SearchScene scene)
    {
        var (count, width) = (scene.Copies.Length, scene.Width);
        _bins = count >= ManyCopies ? new StripBins(count, scene.WidestBox) : null;
        (Count, Width, _pieces, IsRound) = (count, width, scene.Pieces, scene.IsRound);
        (X, Y, Shapes) = (new int[count], new int[count], new PreparedShape[count]);
        var padded = (count + Lanes - 1) / Lanes * Lanes;
        (_left, _bottom, _right, _top) = (new int[padded], new int[padded], new int[padded], new int[padded]);
        // Copies that are not laid yet, and the padding, have boxes that meet nothing.
        Array.Fill(_left, int.MaxValue);
        Array.Fill(_right, int.MinValue);
    }

    /// <summary>Number of copies.</summary>
    public int Count { get; }

    /// <summary>Width, steps.</summary>
    public int Width { get; }

    /// <summary>Whether the ends of the strip meet, so that what lies over one end lies at the other too.</summary>
    public bool IsRound { get; }

    /// <summary>Length within which copies must lie, steps; on a round strip the way round, no shorter than any box that lies on it.</summary>
    public int Length { get; set; }

    public int[] X { get; }

    public int[] Y { get; }

    public PreparedShape[] Shapes { get; }

    /// <summary>Shifts along the strip at which another copy may meet one: none, and on a round strip once round either way.</summary>
    public ReadOnlySpan<int> Repeats(Span<int> room)
    {
        room[0] = 0;
        if (!IsRound)
        {
            return room[..1];
        }

        (room[1], room[2]) = (-Length, Length);
        return room[..3];
    }

    /// <summary>The nearest spot that keeps the shape on the strip; on a round one the same spot once round.</summary>
    public Spot Kept(PreparedShape shape, int x, int y)
    {
        var kept = Math.Max(-shape.TrueBox.Bottom, Math.Min(y, Width - shape.TrueBox.Top));
        if (!IsRound)
        {
            return new Spot(shape, Math.Max(-shape.TrueBox.Left, Math.Min(x, Length - shape.TrueBox.Right)), kept);
        }

        var left = (x + shape.Box.Left) % Length;
        return new Spot(shape, (left < 0 ? left + Length : left) - shape.Box.Left, kept);
    }

    /// <summary>The last place of a shape along the strip; on a round one all the way round.</summary>
    public int LastX(PreparedShape shape) => IsRound ? Length - 1 - shape.TrueBox.Left : Length - shape.TrueBox.Right;

    /// <summary>Whether a shape has room on the strip at all.</summary>
    public bool Fits(PreparedShape shape) =>
        (IsRound ? shape.Box.Width : shape.TrueBox.Width) <= Length && shape.TrueBox.Height <= Width;

    public void Place(int copy, in Spot spot)
    {
        (X[copy], Y[copy], Shapes[copy]) = (spot.X, spot.Y, spot.Shape);
        var box = spot.Shape.Box;
        (_left[copy], _right[copy]) = (box.Left + spot.X, box.Right + spot.X);
        (_bottom[copy], _top[copy]) = (box.Bottom + spot.Y, box.Top + spot.Y);
        _bins?.Put(copy, _left[copy]);
    }

    public Spot At(int copy) => new(Shapes[copy], X[copy], Y[copy]);

    /// <summary>Lists, in a fixed order, the copies whose boxes share inner points with the given box.</summary>
    /// <param name="box">Steps on the strip.</param>
    /// <param name="found">Room for all copies.</param>
    /// <returns>How many were found.</returns>
    public int Collect(in StepBox box, int[] found) => _bins is null ? CollectAmongAll(box, found) : CollectInBins(_bins, box, found);

    private int CollectInBins(StripBins bins, in StepBox box, int[] found)
    {
        var count = 0;
        var (first, number) = bins.Reaching(box.Left, box.Right);
        for (var bin = first; bin < first + number; bin++)
        {
            foreach (var copy in bins.Members(bin))
            {
                if (_left[copy] < box.Right && _right[copy] > box.Left && _bottom[copy] < box.Top && _top[copy] > box.Bottom)
                {
                    found[count++] = copy;
                }
            }
        }

        return count;
    }

    private int CollectAmongAll(in StepBox box, int[] found)
    {
        var (left, right) = (Vector256.Create(box.Left), Vector256.Create(box.Right));
        var (bottom, top) = (Vector256.Create(box.Bottom), Vector256.Create(box.Top));
        ref var lefts = ref MemoryMarshal.GetArrayDataReference(_left);
        ref var rights = ref MemoryMarshal.GetArrayDataReference(_right);
        ref var bottoms = ref MemoryMarshal.GetArrayDataReference(_bottom);
        ref var tops = ref MemoryMarshal.GetArrayDataReference(_top);
        var count = 0;
        for (nuint k = 0; k < (nuint)_left.Length; k += Lanes)
        {
            var meets = Vector256.LessThan(Vector256.LoadUnsafe(ref lefts, k), right)
                & Vector256.GreaterThan(Vector256.LoadUnsafe(ref rights, k), left)
                & Vector256.LessThan(Vector256.LoadUnsafe(ref bottoms, k), top)
                & Vector256.GreaterThan(Vector256.LoadUnsafe(ref tops, k), bottom);
            for (var bits = meets.ExtractMostSignificantBits(); bits != 0; bits &= bits - 1)
            {
                found[count++] = (int)k + BitOperations.TrailingZeroCount(bits);
            }
        }

        return count;
    }

    public ImmutableArray<Spot> Copy()
    {
        var spots = ImmutableArray.CreateBuilder<Spot>(Count);
        for (var i = 0; i < Count; i++)
        {
            spots.Add(At(i));
        }

        return spots.MoveToImmutable();
    }

    public void Take(ImmutableArray<Spot> spots)
    {
        for (var i = 0; i < Count; i++)
        {
            Place(i, spots[i]);
        }
    }

    /// <summary>The rightmost point of a piece's true outline, steps; on a round strip the way round.</summary>
    public int UsedLength()
    {
        if (IsRound)
        {
            return Length;
        }

        var used = 0;
        for (var i = 0; i < _pieces; i++)
        {
            used = Math.Max(used, X[i] + Shapes[i].TrueBox.Right);
        }

        return used;
    }
}
