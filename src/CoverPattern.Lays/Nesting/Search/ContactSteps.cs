using System;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Finds the short steps along one axis after which a copy exactly touches a neighbour.</summary>
/// <remarks>
/// Sampling alone never hits a contact, and where pieces fit exactly only contacts will do. Exact best shifts along one axis:
/// idea [Egeblad 2007]; here only contacts near the present place are looked at.
/// </remarks>
internal sealed class ContactSteps
{
    private const int Most = 64;

    private readonly Strip _strip;
    private readonly int[] _found;
    private readonly int[] _steps = new int[Most];

    public ContactSteps(Strip strip)
    {
        _strip = strip;
        _found = new int[strip.Count];
    }

    /// <summary>Lists the steps, shortest first.</summary>
    /// <param name="copy">The copy; its own present place is no obstacle.</param>
    /// <param name="spot">Where it is tried.</param>
    /// <param name="alongX">Axis of the steps.</param>
    /// <param name="reach">Longest step, steps of the grid.</param>
    public ReadOnlySpan<int> Gather(int copy, in Spot spot, bool alongX, int reach)
    {
        var box = spot.Shape.Box.Moved(spot.X, spot.Y);
        var wide = alongX
            ? box with { Left = box.Left - reach, Right = box.Right + reach }
            : box with { Bottom = box.Bottom - reach, Top = box.Top + reach };
        var count = 0;
        foreach (var shift in _strip.Repeats(stackalloc int[3]))
        {
            var near = _strip.Collect(wide.Moved(-shift, 0), _found);
            for (var k = 0; k < near; k++)
            {
                var other = _found[k];
                if (other != copy)
                {
                    var shape = _strip.Shapes[other];
                    double x = _strip.X[other] + shift - spot.X, y = _strip.Y[other] - spot.Y;
                    Sweep(new Side(spot.Shape, shape, x, y, 1), alongX, reach, ref count);
                    Sweep(new Side(shape, spot.Shape, -x, -y, -1), alongX, reach, ref count);
                }
            }
        }

        return _steps.AsSpan(0, count);
    }

    /// <param name="Corners">The shape whose corners reach an edge.</param>
    /// <param name="Edges">The shape whose edges are reached.</param>
    /// <param name="X">Where the edges' shape lies, seen from the corners' shape.</param>
    /// <param name="Y">Where the edges' shape lies, seen from the corners' shape.</param>
    /// <param name="Sign">+1 when the corners move, -1 when the edges do.</param>
    private readonly record struct Side(PreparedShape Corners, PreparedShape Edges, double X, double Y, int Sign);

    private void Sweep(in Side side, bool alongX, int reach, ref int count)
    {
        var (fixedCorner, movedCorner) = alongX ? (side.Corners.Y, side.Corners.X) : (side.Corners.X, side.Corners.Y);
        var (fixedEdge, movedEdge) = alongX ? (side.Edges.Y, side.Edges.X) : (side.Edges.X, side.Edges.Y);
        var (fixedStep, movedStep) = alongX ? (side.Edges.StepY, side.Edges.StepX) : (side.Edges.StepX, side.Edges.StepY);
        var (fixedShift, movedShift) = alongX ? (side.Y, side.X) : (side.X, side.Y);
        for (var j = 0; j < side.Edges.EdgeCount; j++)
        {
            var (start, step) = (fixedEdge[j] + fixedShift, fixedStep[j]);
            var (low, high) = step >= 0 ? (start, start + step) : (start + step, start);
            for (var i = 0; i < side.Corners.EdgeCount && step != 0; i++)
            {
                var height = fixedCorner[i];
                if (height < low || height > high)
                {
                    continue;
                }

                var gap = movedEdge[j] + movedShift + ((height - start) / step * movedStep[j]) - movedCorner[i];
                if (Math.Abs(gap) <= reach && !Cone.Overlap(Contact.At(side.Corners, i), Contact.Beside(side.Edges, j)))
                {
                    Add((int)Math.Floor(side.Sign * gap), ref count);
                    Add((int)Math.Ceiling(side.Sign * gap), ref count);
                }
            }
        }
    }

    /// <summary>Puts a step into the list by its size; steps that are there or none are passed over.</summary>
    private void Add(int step, ref int count)
    {
        if (step == 0 || _steps.AsSpan(0, count).Contains(step) || (count == Most && Math.Abs(_steps[count - 1]) <= Math.Abs(step)))
        {
            return;
        }

        var place = count < Most ? count++ : count - 1;
        for (; place > 0 && Math.Abs(_steps[place - 1]) > Math.Abs(step); place--)
        {
            _steps[place] = _steps[place - 1];
        }

        _steps[place] = step;
    }
}
