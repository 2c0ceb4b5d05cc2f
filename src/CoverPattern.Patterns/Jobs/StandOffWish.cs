namespace CoverPattern.Patterns.Jobs;

/// <summary>What holds the cloth off the hub centres, as a calliper measures it.</summary>
/// <param name="TubeRadius">Half the outer diameter of the struts' tube, not negative.</param>
/// <param name="HubHeight">How far the hub stands out above the hub centre, not negative.</param>
/// <param name="Padding">Padding or liner between frame and cloth, not negative.</param>
public sealed record StandOffWish(Measure TubeRadius, Measure HubHeight, Measure Padding)
{
    /// <summary>How far a hub with its bolts reaches from the hub centre along the facets; openings keep clear of it.</summary>
    public Measure HubRadius { get; init; } = new(50, "50 mm");

    /// <summary>Distance between the plane of the struts' axes and the cloth, millimetres: the prouder of tube and hub, and the padding.</summary>
    public double Millimetres => System.Math.Max(TubeRadius.Millimetres, HubHeight.Millimetres) + Padding.Millimetres;
}
