using System;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>One stove pipe that was ordered, through a facet; lengths in millimetres, angles in degrees.</summary>
/// <param name="Facet">Label of the facet through which its middle line goes.</param>
/// <param name="Right">How far right of the facet's incentre.</param>
/// <param name="Up">How far above it.</param>
/// <param name="IsLevel">Level and outward; else straight up.</param>
/// <param name="Radius">Of the pipe.</param>
/// <param name="Clear">Clear distance from its wall.</param>
internal sealed record PipeOrder(string Facet, double Right, double Up, bool IsLevel, double Radius, double Clear)
{
    internal double Gap { get; init; } = 3;

    internal double Sleeve { get; init; } = 150;

    internal double TurnUnder { get; init; } = 15;

    internal double Lap { get; init; } = 40;

    internal double RainFlap { get; init; } = 80;

    internal double ClosingFlap { get; init; } = 40;

    /// <summary>Half the angle of a cone boot; null for a straight sleeve.</summary>
    internal double? Spread { get; init; }

    /// <summary>Which way the pipe runs out.</summary>
    internal SpacePoint Along(TrueCover cover)
    {
        var outward = cover.Faces[Facet].Outward;
        return IsLevel ? new SpacePoint(outward.X, outward.Y, 0).Unit : new SpacePoint(0, 0, 1);
    }

    /// <summary>The cylinder of a radius as an outline seen along the pipe.</summary>
    internal OpeningOrder Cylinder(TrueCover cover, double radius) => new(Facet, Right, Up, 0, IsCarried: false)
    {
        Size = (2 * radius, 2 * radius),
        Corner = radius,
        Along = Along(cover),
    };

    /// <summary>What is cut out of the cover, and the patch that fills it; a cone boot's hole is no cylinder.</summary>
    internal OpeningOrder Opening(TrueCover cover) => Cylinder(cover, Radius + Clear) with
    {
        TurnUnder = TurnUnder,
        Lap = Lap,
        FillKind = "pipePatch",
        Hole = Spread is null ? Cylinder(cover, Radius + Gap) : null,
        HoleArea = Spread is null ? 0 : ConeArea(cover),
    };

    /// <summary>Angle between the pipe and the facet's normal, radians.</summary>
    internal double Tilt(TrueCover cover) => Math.Acos(cover.Faces[Facet].Outward.Dot(Along(cover)));

    /// <summary>Height of a cone boot's apex over the foot of the pipe's middle line.</summary>
    internal double Apex(TrueCover cover)
    {
        var (half, both) = (Math.Tan(Spread!.Value * Math.PI / 180), Math.Tan(Spread.Value * Math.PI / 180) * Math.Tan(Tilt(cover)));
        return (Sleeve + ((Radius + Gap) / half)) / (1 - (both / (1 + both)));
    }

    /// <summary>Area of the ellipse in which a cone boot meets the facet: by the polar form of a conic, seen along the pipe pi p^2 / (1 - e^2)^1.5.</summary>
    private double ConeArea(TrueCover cover)
    {
        var half = Math.Tan(Spread!.Value * Math.PI / 180);
        var (p, e) = (Apex(cover) * half, half * Math.Tan(Tilt(cover)));
        return Math.PI * p * p / Math.Pow(1 - (e * e), 1.5) / Math.Cos(Tilt(cover));
    }
}
