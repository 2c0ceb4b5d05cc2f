namespace CoverPattern.Patterns.Jobs;

/// <summary>What is sewn on at hubs and drawn on the pieces for it.</summary>
/// <param name="Ties">Which hubs get a tie.</param>
/// <param name="TieDistance">From the hub to the tie, along the seam over a strut; 0 at the hub itself.</param>
/// <param name="HubPatches">Where patches lie over hubs.</param>
/// <param name="PatchDiameter">Diameter of a hub's patch.</param>
/// <param name="ApexDiameter">Diameter of the patch at the top hub.</param>
public sealed record MarkWish(TieRule Ties, Measure TieDistance, HubPatchPlace HubPatches, Measure PatchDiameter, Measure ApexDiameter)
{
    /// <summary>Neither ties nor patches.</summary>
    public static MarkWish Bare { get; } = new(TieRule.None, default, HubPatchPlace.None, default, default);

    /// <summary>Whether marks that lie under a patch or in an allowance are pierced; all others are drawn whatever it says.</summary>
    public bool Pierce { get; init; }

    /// <summary>Patches that lie over one hub.</summary>
    public int PatchesAtHub => HubPatches switch
    {
        HubPatchPlace.None => 0,
        HubPatchPlace.Both => 2,
        _ => 1,
    };
}
