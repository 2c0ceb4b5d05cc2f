using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Openings;

/// <summary>A part of a shell that is taken out and filled otherwise: laid, not yet cut.</summary>
/// <param name="Label">Label of its rim, such as "R001".</param>
/// <param name="Purpose">What it is for, such as "window".</param>
/// <param name="Centre">The point by which it was placed.</param>
/// <param name="Up">Direction in that face's chart that is up for what fills it, length 1.</param>
/// <param name="Allowance">Cloth of the shell inside the rim, millimetres.</param>
/// <param name="Rim">Its border face by face, counter-clockwise seen from outside: closed, or from the hem to the hem.</param>
public sealed record Region(string Label, string Purpose, SurfacePoint Centre, Point2 Up, double Allowance, ImmutableArray<RimStretch> Rim)
{
    /// <summary>What people call the opening, such as "W1.07" or "O1"; the label of its rim where it has no other name.</summary>
    public string Name { get; init; } = Label;

    /// <summary>Width of what is sewn on round its border, outside of it, millimetres.</summary>
    public double RingMm { get; init; }

    /// <summary>Whether what fills it is made up along the cover's seams; else it goes over them uncut.</summary>
    public bool IsSeamed { get; init; }

    /// <summary>Places along its rim, from where that begins, counter-clockwise, that bear a mark on both sides, millimetres, each with its purpose.</summary>
    public ImmutableArray<(double At, string Purpose)> Marks { get; init; } = [];

    /// <summary>Where along its rim two leaves meet, millimetres; 0 where none do.</summary>
    public double Middle { get; init; }

    /// <summary>Radius when it is a whole circle inside one face, millimetres; null elsewhere.</summary>
    public double? Radius { get; init; }

    /// <summary>What is drawn beside it on the cover.</summary>
    public ImmutableArray<RegionMark> Drawn { get; init; } = [];

    /// <summary>Whether it takes a part of the hem with it: the rim runs from hem to hem.</summary>
    public bool ReachesHem => !Rim[0].IsRing && Rim[0].Enter != Rim[^1].Leave;

    /// <summary>Length of the rim, millimetres.</summary>
    public double RimLength => Radius is { } radius ? 2 * System.Math.PI * radius : Rim.Sum(stretch => stretch.Length);

    /// <summary>A round region inside one face.</summary>
    /// <param name="label">See <see cref="Label"/>.</param>
    /// <param name="purpose">See <see cref="Purpose"/>.</param>
    /// <param name="centre">Its middle.</param>
    /// <param name="radius">See <see cref="Radius"/>.</param>
    /// <param name="fill">Up for what fills it, and the allowance.</param>
    /// <returns>Its rim is a polygon of the circle's exact area.</returns>
    public static Region Round(string label, string purpose, SurfacePoint centre, double radius, (Point2 Up, double Allowance) fill) =>
        new(label, purpose, centre, fill.Up, fill.Allowance, [new RimStretch(centre.Face, Circles.Unsnapped(centre.At, radius), null, null)]) { Radius = radius };
}
