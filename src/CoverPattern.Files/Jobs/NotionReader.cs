using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads how zips, bindings and tapes are sold; what the job takes none of is not asked for.</summary>
internal static class NotionReader
{
    /// <param name="section">The section "notions".</param>
    /// <param name="seam">Tells whether zips and bindings are sewn.</param>
    /// <param name="hem">Tells whether webbing or binding goes along the lower edge.</param>
    /// <param name="marks">Tell whether there are ties.</param>
    internal static NotionWish Read(JobSection section, SeamWish seam, HemWish hem, MarkWish marks)
    {
        var (hasZips, hasBindings) = (false, hem.Webbing is not null || hem.Gap is not null);
        foreach (var makeUp in seam.Known())
        {
            hasZips |= makeUp.Form == MakeUpForm.Zip;
            hasBindings |= makeUp.Form == MakeUpForm.Bound;
        }

        var usual = NotionWish.Usual;
        return new NotionWish(
            Length(section, "zipStep", hasZips, usual.ZipStep),
            Length(section, "zipEnds", hasZips, usual.ZipEnds),
            Length(section, "tapeStep", hasBindings || marks.Ties != TieRule.None, usual.TapeStep),
            Length(section, "tapeEnds", hasBindings, usual.TapeEnds));
    }

    private static Measure Length(JobSection section, string name, bool isNeeded, Measure usual) =>
        isNeeded || section.States(name) ? section.Take<Measure>(name, Values.Length) : usual;
}
