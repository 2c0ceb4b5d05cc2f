using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads how zips, bindings and tapes are sold; what the job takes none of is not asked for.</summary>
internal static class NotionReader
{
    /// <param name="section">The section "notions".</param>
    /// <param name="seam">Tells whether zips and bindings are sewn.</param>
    /// <param name="hem">Tells whether webbing or binding goes along the lower edge.</param>
    /// <param name="marks">Tell whether there are ties.</param>
    /// <param name="openings">Tell what closes them.</param>
    /// <param name="hasRoof">Whether a roof comes off by zips.</param>
    internal static NotionWish Read(JobSection section, SeamWish seam, HemWish hem, MarkWish marks, ImmutableArray<OpeningWish> openings, bool hasRoof)
    {
        var areZipped = openings.Any(opening => opening.HasZips) || hasRoof;
        var (hasZips, hasBindings) = (areZipped, hem.Webbing is not null || hem.Gap is not null || openings.Any(opening => opening.Webbing is not null || opening.HasZips) || hasRoof);
        var areHooked = openings.Any(opening => opening.Held == JoinKind.HookLoop || opening.Strip is not null || opening.Threshold is not null);
        foreach (var makeUp in seam.Known())
        {
            hasZips |= makeUp.Form == MakeUpForm.Zip;
            hasBindings |= makeUp.Form == MakeUpForm.Bound;
        }

        var usual = NotionWish.Usual;
        return new NotionWish(
            Length(section, "zipStep", hasZips, usual.ZipStep),
            Length(section, "zipEnds", hasZips, usual.ZipEnds),
            Length(section, "tapeStep", hasBindings || areHooked || marks.Ties != TieRule.None, usual.TapeStep),
            Length(section, "tapeEnds", hasBindings, usual.TapeEnds))
        {
            ZipType = areZipped || section.States("zipType") ? section.Take<string>("zipType", Values.Line) ?? usual.ZipType : usual.ZipType,
            ZipRadius = Length(section, "zipRadius", areZipped, usual.ZipRadius),
            ZipLongest = Length(section, "zipLongest", areZipped, usual.ZipLongest),
            ZipChain = Length(section, "zipChain", openings.Any(opening => opening.HasZips), usual.ZipChain),
            HookLoop = Length(section, "hookLoop", areHooked, usual.HookLoop),
        };
    }

    private static Measure Length(JobSection section, string name, bool isNeeded, Measure usual) =>
        isNeeded || section.States(name) ? section.Take<Measure>(name, Values.Length) : usual;
}
