using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads what is sewn on at hubs; sizes of what there is none of are not asked for.</summary>
internal static class MarkReader
{
    /// <param name="section">The section "marks".</param>
    /// <param name="seam">Whether its seams stop short of hubs decides the default of patches.</param>
    internal static MarkWish Read(JobSection section, SeamWish seam)
    {
        var ties = section.Take<TieRule>("ties", Values.Word);
        var patches = section.Take<HubPatchPlace>("hubPatches", Values.Word, MakeUpDefaults.HubPatches(seam.StopAtHubs));
        return new MarkWish(
            ties,
            Length(section, "tieDistance", ties != TieRule.None),
            patches,
            Length(section, "patchDiameter", patches != HubPatchPlace.None),
            Length(section, "apexDiameter", patches != HubPatchPlace.None))
        {
            Pierce = section.Take<bool>("pierce", Values.Flag),
        };
    }

    private static Measure Length(JobSection section, string name, bool isNeeded) =>
        isNeeded || section.States(name) ? section.Take<Measure>(name, Values.Length) : default;
}
