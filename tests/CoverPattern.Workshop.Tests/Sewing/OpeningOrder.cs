using System;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>One opening that was ordered, about the middle of a facet; lengths in millimetres.</summary>
/// <param name="Facet">Label of the facet that holds its middle.</param>
/// <param name="Right">How far right of the facet's incentre.</param>
/// <param name="Up">How far above it.</param>
/// <param name="Turned">Counter-clockwise, degrees.</param>
/// <param name="IsCarried">Whether it has its exact size along the cloth; else it is seen square to the facet.</param>
internal sealed record OpeningOrder(string Facet, double Right, double Up, double Turned, bool IsCarried)
{
    /// <summary>What the arcs of its rim begin with; empty where it is the only opening.</summary>
    internal string Label { get; init; } = string.Empty;

    /// <summary>Whether an arc is a part of its rim, or of what fills it.</summary>
    internal bool Owns(string arc) => Label.Length == 0 || IsNamedFor(arc, Label);

    /// <summary>Whether a label goes on behind that of an opening: "O1-2" and "O1p" for O1, but not "O12".</summary>
    internal static bool IsNamedFor(string label, string opening) =>
        label.StartsWith(opening, StringComparison.Ordinal) && !(label.Length > opening.Length && char.IsDigit(opening[^1]) && char.IsDigit(label[opening.Length]));

    /// <summary>Width and height of the box that it fills.</summary>
    internal required (double Width, double Height) Size { get; init; }

    /// <summary>Radius of its corners; half of both for a circle, 0 for a rectangle.</summary>
    internal double Corner { get; init; }

    /// <summary>Whether only its upper corners are round, as those of an arch.</summary>
    internal bool IsArch { get; init; }

    /// <summary>Whether its ring is one drawing for all facets, turned on each until its marks meet: its way round does not begin where the rim's does.</summary>
    internal bool IsSetByMarks { get; init; }

    internal double TurnUnder { get; init; } = 15;

    /// <summary>How far the sheet reaches beyond the rim; null where there is none.</summary>
    internal double? Lap { get; init; }

    /// <summary>Direction in which it is seen from outside, backward: out of the cover; null where that is square to the facet.</summary>
    internal SpacePoint? Along { get; init; }

    /// <summary>Its middle in space, where that does not follow from the facet.</summary>
    internal SpacePoint? Middle { get; init; }

    /// <summary>Kind of the piece that fills it.</summary>
    internal string FillKind { get; init; } = "pane";

    /// <summary>What is left open in that piece: an outline of its own about the same middle.</summary>
    internal OpeningOrder? Hole { get; init; }

    /// <summary>Area of such an opening on the cover where it has another form.</summary>
    internal double HoleArea { get; init; }

    /// <summary>Whether an arc of a rim is joined to nothing though the opening is filled: those of further layers, and of what slips into a pocket.</summary>
    internal bool IsFree(string arc) => HasLayers && (arc.EndsWith('s') || arc.EndsWith('f') || arc.Contains('x', StringComparison.Ordinal));

    /// <summary>Whether something else than a sheet that is sewn in fills it.</summary>
    internal bool HasLayers { get; init; }

    /// <summary>Whether anything is joined to its rim.</summary>
    internal bool IsJoined => Lap is not null || HasLayers;

    /// <summary>Area of the outline in its plane.</summary>
    internal double Area => (Size.Width * Size.Height) - ((4 - Math.PI) * Corner * Corner / (IsArch ? 2 : 1));

    /// <summary>Distance of a point of the opening's plane from its outline; negative inside.</summary>
    internal double Beyond(FlatPoint point)
    {
        var (sin, cos) = Math.SinCos(Turned * Math.PI / 180);
        var own = new FlatPoint((cos * point.X) + (sin * point.Y), (cos * point.Y) - (sin * point.X));
        var spring = (Size.Height / 2) - Corner;
        if (IsArch && own.Y > spring)
        {
            return new FlatPoint(own.X, own.Y - spring).Length - Corner;
        }

        var corner = IsArch ? 0 : Corner;
        var (x, y) = (Math.Abs(own.X) - (Size.Width / 2) + corner, (IsArch ? -own.Y : Math.Abs(own.Y)) - (Size.Height / 2) + corner);
        return new FlatPoint(Math.Max(x, 0), Math.Max(y, 0)).Length + Math.Min(Math.Max(x, y), 0) - corner;
    }

    /// <summary>The point of the outline in a direction from its middle: halved until nothing is left.</summary>
    internal FlatPoint OnOutline(double angle)
    {
        var (near, far) = (0.0, Size.Width + Size.Height);
        var along = new FlatPoint(Math.Cos(angle), Math.Sin(angle));
        for (var i = 0; i < 60; i++)
        {
            var middle = (near + far) / 2;
            (near, far) = Beyond(middle * along) < 0 ? (middle, far) : (near, middle);
        }

        return near * along;
    }
}
