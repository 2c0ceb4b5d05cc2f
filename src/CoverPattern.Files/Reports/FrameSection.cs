using System.Linq;
using CoverPattern.Files.Results;

namespace CoverPattern.Files.Reports;

/// <summary>The frame in numbers: what to hold against the real one before cutting.</summary>
internal static class FrameSection
{
    public static void Write(PageWriter page, Result result)
    {
        var (frame, ruler) = (result.Frame, Ruler.Of(result.Job));
        page.Line("h2", "Frame");
        page.Table("numbers", ["Hubs", "Struts", "Facets", "Base hubs"],
        [
            [Printed.Count(frame.Hubs.Length), Printed.Count(frame.Struts.Length), Printed.Count(frame.Facets.Length), Printed.Count(frame.Base.Length)],
        ]);
        page.Line("h3", "Struts, hub centre to hub centre");
        page.Table("numbers", ["Class", "Length " + ruler.Unit, "Count"], frame.Classes.Select(strut =>
            new[] { strut.Label, ruler.Of(strut.LengthMm), Printed.Count(strut.Count) }));
        page.Line("h3", "Raise of the base hubs over the lowest of them");
        page.Table("facts", ["Raise " + ruler.Unit, "Count", "Base hubs"], frame.Base
            .GroupBy(hub => ruler.Of(frame.Hubs[hub].Position.Z))
            .OrderBy(hubs => frame.Hubs[hubs.First()].Position.Z)
            .Select(hubs => new[] { hubs.Key, Printed.Count(hubs.Count()), string.Join(", ", hubs.Select(hub => frame.Hubs[hub].Label)) }));
        page.Line("p", "Measure these heights on the frame: the skirt follows them.", ("class", "small"));
    }
}
