using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Shells;

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
        var measured = MeasuredRaise.Of(result.Job, frame);
        if (measured.IsEmpty)
        {
            page.Line("p", "By the model. Measure these heights on the frame: the skirt follows them.", ("class", "small"));
            return;
        }

        page.Line("h3", "Measured heights against the model");
        page.Table("numbers", ["Base hub", "Model " + ruler.Unit, "Measured " + ruler.Unit, "Higher by " + ruler.Unit, "Look again"], measured.Select(height =>
            new[] { height.Hub, ruler.Of(height.ModelMm), ruler.Of(height.MeasuredMm), ruler.Of(height.GapMm), height.IsFarOff ? "YES" : string.Empty }));
        page.Line("p", $"Over the mean of the hubs that are lowest by the model. More than {ruler.WithUnit(MeasuredRaise.LargestGap)} apart hints at a slip in struts, deck or tape: measure again before cutting. Skirt and hem follow the measured heights, facets the strut lengths.", ("class", "small"));
    }
}
