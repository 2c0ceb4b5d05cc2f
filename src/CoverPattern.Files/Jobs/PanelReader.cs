using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads how facets are made up into panels; whether rows, facets and struts exist, later stages tell.</summary>
internal static class PanelReader
{
    // Which of the keys that do not suit every form suit which; rows and facets are looked at apart.
    private static readonly ImmutableArray<(string Key, PanelForm Form)> Special =
    [
        ("parts", PanelForm.Bands), ("at", PanelForm.Bands), ("longest", PanelForm.Bands),
        ("slits", PanelForm.Gores), ("slits", PanelForm.Group), ("name", PanelForm.Group),
    ];

    internal static ImmutableArray<PanelWish> Read(ImmutableArray<JobSection> sections, JobNotes notes) =>
        [.. sections.Select(section => Read(section, notes))];

    private static PanelWish Read(JobSection section, JobNotes notes)
    {
        var form = section.Take<PanelForm>("as", Values.Word);
        var wish = new PanelWish(form, section.States("rows") ? section.Take<RowRange>("rows", Values.Rows) : null)
        {
            Facets = Labels(section, "facets"),
            Name = section.States("name") ? section.Take<string>("name", Values.PieceName) ?? "" : "",
            Parts = section.States("parts") ? section.Take<int>("parts", Values.Whole) : null,
            At = Labels(section, "at"),
            Longest = section.States("longest") ? section.Take<Measure>("longest", Values.Length) : null,
            Slits = Labels(section, "slits"),
        };
        if (section.States("as") && notes.AreClean(section.PlaceOf("as")))
        {
            CheckKeys(section, form, notes);
        }

        return wish;
    }

    private static ImmutableArray<string> Labels(JobSection section, string name) =>
        section.States(name) ? section.Take<ImmutableArray<string>>(name, Values.Labels) : [];

    /// <summary>Refuses keys that say nothing for this form: a wish nobody would fulfil.</summary>
    private static void CheckKeys(JobSection section, PanelForm form, JobNotes notes)
    {
        foreach (var key in Special.Select(pair => pair.Key).Distinct().Where(key => section.States(key) && !Special.Contains((key, form))))
        {
            notes.Refuse(section.PlaceOf(key), "a key that says nothing here", "only with " + string.Join(" and ", Special.Where(pair => pair.Key == key).Select(pair => $"\"as\": \"{WordOf(pair.Form)}\"")));
        }

        if (form == PanelForm.Group && (section.States("rows") || !section.States("facets")))
        {
            notes.Refuse(section.PlaceOf("facets"), section.States("facets") ? "rows and facets" : "nothing", "a group names its facets one by one, and no rows");
        }
        else if (section.States("facets") && (form is PanelForm.Bands or PanelForm.Gores || section.States("rows")))
        {
            notes.Refuse(section.PlaceOf("facets"), "facets named", form == PanelForm.Facets ? "either rows or facets" : "bands and gores are made of whole rows: name \"rows\"");
        }

        if (section.States("parts") && section.States("at"))
        {
            notes.Refuse(section.PlaceOf("at"), "parts and struts", "either a number of \"parts\" or the struts \"at\" which to cut");
        }
    }

    private static string WordOf(PanelForm form) => form.ToString().ToLowerInvariant();
}
