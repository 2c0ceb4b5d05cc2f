using System;
using System.Collections.Generic;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>
/// Hubs and facets of the icosahedron, class I, vertex up, on the sphere of radius 1, an upper five-strut hub on +x:
/// laid ring by ring from the top, each ring five equal sectors.
/// </summary>
/// <remarks>
/// p = unit(a A + b B + c C), a + b + c = n [Clinton 1971; formula from memory]. Held to chord factors of an own calculation,
/// counts and areas in <see cref="TrueCoverTests"/>.
/// </remarks>
internal sealed class TrueFrame
{
    private const int Sectors = 5;

    private readonly int frequency;
    private readonly List<int> ringStarts = [];

    internal TrueFrame(int frequency, int rows)
    {
        this.frequency = frequency;
        for (var ring = 0; ring <= rows; ring++)
        {
            ringStarts.Add(Hubs.Count);
            AddRing(ring);
        }

        for (var row = 1; row <= rows; row++)
        {
            AddRow(row);
        }
    }

    /// <summary>For each ring from the top down the index of its first hub.</summary>
    internal IReadOnlyList<int> RingStarts => ringStarts;

    /// <summary>Hub centres from the top down.</summary>
    internal List<SpacePoint> Hubs { get; } = [];

    /// <summary>
    /// Facets from the top down, three hubs each, counter-clockwise seen from outside; the first two lie in one ring.
    /// Row 1 is at the top here. A standing facet has its ring edge below.
    /// </summary>
    internal List<(int RowFromTop, int[] Hubs, bool Stands)> Facets { get; } = [];

    private static SpacePoint Top => new(0, 0, 1);

    private static SpacePoint Upper(int sector) => OnCone(72 * sector, 1);

    private static SpacePoint Lower(int sector) => OnCone(36 + (72 * sector), -1);

    /// <summary>Closed form: both rings of five stand at height 1/sqrt 5 and radius 2/sqrt 5.</summary>
    private static SpacePoint OnCone(double degrees, int side)
    {
        var angle = degrees * Math.PI / 180;
        return (1 / Math.Sqrt(5)) * new SpacePoint(2 * Math.Cos(angle), 2 * Math.Sin(angle), side);
    }

    /// <summary>Steps from one sector's first hub of a ring to the next sector's.</summary>
    private int StepsOf(int ring) => Math.Min(ring, Math.Min(frequency, (3 * frequency) - ring));

    private void AddRing(int ring)
    {
        if (ring == 0)
        {
            Hubs.Add(Top);
            return;
        }

        for (var sector = 0; sector < Sectors; sector++)
        {
            for (var step = 0; step < StepsOf(ring); step++)
            {
                Hubs.Add(HubAt(ring, sector, step).Unit);
            }
        }
    }

    private SpacePoint HubAt(int ring, int sector, int step)
    {
        var (upper, nextUpper, lower, nextLower) = (Upper(sector), Upper(sector + 1), Lower(sector), Lower(sector + 1));
        if (ring <= frequency)
        {
            return ((frequency - ring) * Top) + ((ring - step) * upper) + (step * nextUpper);
        }

        if (ring > 2 * frequency)
        {
            var left = (3 * frequency) - ring;
            return ((ring - (2 * frequency)) * (-1 * Top)) + ((left - step) * lower) + (step * nextLower);
        }

        // The middle band: first the face that hangs from two upper corners, then the one that stands on two lower ones.
        var down = ring - frequency;
        var across = step - (frequency - down);
        return across <= 0
            ? ((frequency - down - step) * upper) + (down * lower) + (step * nextUpper)
            : ((frequency - down) * nextUpper) + ((down - across) * lower) + (across * nextLower);
    }

    private int IndexAt(int ring, int sector, int step) =>
        ring == 0 ? 0 : ringStarts[ring] + (((sector * StepsOf(ring)) + step) % (Sectors * StepsOf(ring)));

    /// <summary>In a sector hanging and standing facets take turns; above the upper five the row begins and ends with a standing one.</summary>
    private void AddRow(int row)
    {
        var beginsHanging = row <= frequency ? 0 : 1;
        for (var sector = 0; sector < Sectors; sector++)
        {
            int Above(int step) => IndexAt(row - 1, sector, step);
            int Below(int step) => IndexAt(row, sector, step);
            for (var step = 0; step < StepsOf(row - 1); step++)
            {
                Facets.Add((row, [Above(step + 1), Above(step), Below(step + 1 - beginsHanging)], false));
            }

            for (var step = 0; step < StepsOf(row); step++)
            {
                Facets.Add((row, [Below(step), Below(step + 1), Above(step + beginsHanging)], true));
            }
        }
    }
}
