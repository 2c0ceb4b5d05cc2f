using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Where the finished edge passes under every hub of the true cover, before ease.</summary>
/// <remarks>
/// Promised to the shop (docs/shell.md): a hub above the base takes the mean of what the base hubs of its facets were measured
/// higher than the model, less the ground there; a hub without such neighbours that of all base hubs.
/// </remarks>
internal sealed class TrueBase
{
    /// <summary>Hubs this near to the finished edge count as on it.</summary>
    internal const double OnEdge = 1;

    private const double Low = 0.5;

    private readonly CoverSizes sizes;
    private readonly IReadOnlyList<SpacePoint> hubs;
    private readonly IReadOnlyList<SpacePoint> nodes;
    private readonly double deck;

    /// <param name="sizes">What was ordered.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="hubs">Its hubs.</param>
    /// <param name="nodes">The same moved out by the stand-off.</param>
    internal TrueBase(CoverSizes sizes, TrueMesh frame, IReadOnlyList<SpacePoint> hubs, IReadOnlyList<SpacePoint> nodes)
    {
        (this.sizes, this.hubs, this.nodes) = (sizes, hubs, nodes);
        Hubs = frame.Base;
        Lift = [.. Hubs.Select((hub, i) => Stated(i) - hubs[hub].Z)];
        var over = Hubs.Select((hub, i) => Stated(i) + Tilt(hubs[hub])).ToArray();
        deck = Order.Measured is not null ? 0 : Order.IsMean ? over.Average() : over.Min() - Order.Plinth;
        var local = Lift.Select((lift, i) => lift - (Order.Ground?[i] ?? 0)).ToArray();
        double[] wished = [.. nodes.Select((node, i) => HeightOf(node, frame, i, local))];
        var near = Hubs.Select(hub => wished[hub]).Where(height => Math.Abs(height) < OnEdge && local.All(step => step == 0)).ToArray();
        Heights = [.. wished.Select(height => height - (near.Length > 0 ? near.Min() : 0))];
    }

    /// <summary>The base hubs, counter-clockwise from the front.</summary>
    internal IReadOnlyList<int> Hubs { get; }

    /// <summary>How much higher each of them is than the model has it, but for one step common to all.</summary>
    internal IReadOnlyList<double> Lift { get; }

    /// <summary>Of every hub of the cover over the finished edge.</summary>
    internal IReadOnlyList<double> Heights { get; }

    private BaseOrder Order => sizes.Base;

    /// <summary>Where the skirt's side ends below a base hub: straight below it, or where two facet planes meet the plane of the finished edge.</summary>
    /// <param name="hub">The hub.</param>
    /// <param name="before">Normal of the base facet that ends at it, going counter-clockwise.</param>
    /// <param name="after">Normal of the one that begins there.</param>
    internal SpacePoint FootOf(int hub, SpacePoint before, SpacePoint after)
    {
        var below = nodes[hub] - new SpacePoint(0, 0, Heights[hub]);
        if (Order.Shape != "slope")
        {
            return below;
        }

        // Cramer's rule on the steps from the hub: square to both normals, and down to the tilted plane through the point below.
        var angle = Order.Towards * Math.PI / 180;
        var up = new SpacePoint(Order.Fall * Math.Cos(angle), Order.Fall * Math.Sin(angle), 1);
        return nodes[hub] + ((-Heights[hub] / before.Dot(after.Cross(up))) * before.Cross(after));
    }

    private double Stated(int i) =>
        Order.Measured?[i] ?? (Order.Raise is { } raise ? (hubs[Hubs[i]].Z > Low ? raise : 0) : hubs[Hubs[i]].Z);

    private double Tilt(SpacePoint at)
    {
        var angle = Order.Towards * Math.PI / 180;
        return Order.Fall * ((at.X * Math.Cos(angle)) + (at.Y * Math.Sin(angle)));
    }

    private double HeightOf(SpacePoint node, TrueMesh frame, int hub, double[] local)
    {
        var place = Hubs.ToList().IndexOf(hub);
        if (Order.Shape == "chords")
        {
            return place >= 0 ? sizes.Drop : double.MaxValue;
        }

        var near = frame.Facets.Where(facet => facet.Hubs.Contains(hub)).SelectMany(facet => facet.Hubs).Select(other => Hubs.ToList().IndexOf(other)).Where(at => at >= 0).ToArray();
        var step = place >= 0 ? local[place] : near.Length > 0 ? near.Average(at => local[at]) : local.Average();
        return node.Z + step + Tilt(node) - deck + sizes.Drop;
    }
}
