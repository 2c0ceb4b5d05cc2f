using System;
using System.Globalization;
using System.Linq;
using System.Xml.Linq;
using CoverPattern.Files.Reports;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Reports;

public sealed class ReportFileTests
{
    [Fact]
    public void Write_Dome_NamesNoAddressAndRunsNothing()
    {
        var page = new ReportPage(ReportResults.WithoutLays(ReportResults.Dome(3, 5)));

        Assert.DoesNotContain("http", page.Text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("url(", page.Text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("@import", page.Text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain('\r', page.Text);
        Assert.StartsWith("<!DOCTYPE html>", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(page.Root.Descendants(), element => element.Name.LocalName is "script" or "link" or "img" or "iframe" or "object" or "a");
        Assert.DoesNotContain(page.Root.DescendantsAndSelf().Attributes(), attribute => attribute.Name.LocalName is "src" or "href" or "style" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
    }

    [Fact]
    public void Write_Dome_ShortTagsOnlyWhereHtmlKnowsThem()
    {
        // HTML reads <p/> as an opening tag; it knows only void elements, and inside svg every element.
        var page = new ReportPage(ReportResults.WithoutLays(ReportResults.Dome(2, 3)));

        var shortTags = page.Root.DescendantsAndSelf().Where(element => element.IsEmpty).Select(element => element.Name.LocalName).Distinct().Order();

        Assert.Equal(["meta", "polygon", "polyline"], shortTags);
        Assert.DoesNotContain('&', page.Root.Descendants("style").Single().Value);
        Assert.DoesNotContain('<', page.Root.Descendants("style").Single().Value);
        Assert.DoesNotContain('>', page.Root.Descendants("style").Single().Value);
    }

    [Fact]
    public void Write_HostileNames_StayText()
    {
        const string Hostile = "</title><script>alert(1)</script> \"&amp;' ]]> <b>x";
        var job = ReportResults.Dome(1, 2, 900);
        job = job with { Title = Hostile + "\u0001", Cloths = [job.Cloths[0] with { Name = "<i>" + Hostile }] };

        var page = new ReportPage(ReportResults.WithLays(job));

        Assert.Equal(Hostile + "\ufffd", page.Root.Descendants("h1").Single().Value);
        Assert.Equal(Hostile + "\ufffd", page.Root.Element("head")!.Element("title")!.Value);
        Assert.DoesNotContain(page.Root.Descendants(), element => element.Name.LocalName is "script" or "b" or "i");
        Assert.Contains(page.Root.Descendants("td"), cell => cell.Value == "<i>" + Hostile);
        Assert.DoesNotContain("<script", page.Text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Write_TwiceAndUnderAnotherCulture_GivesTheSameBytes()
    {
        var result = ReportResults.WithLays(ReportResults.Dome(2, 3, 1500));
        var first = ReportFile.Write(result);
        var before = CultureInfo.CurrentCulture;
        try
        {
            // Decimal comma, and a minus sign that is not the hyphen.
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("sv-SE");

            Assert.Equal(first, ReportFile.Write(result));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Write_Notices_LoudOnesStandAboveTheDrawings()
    {
        var result = ReportResults.WithoutLays(ReportResults.Dome(3, 5));
        var page = new ReportPage(result);

        var head = page.Root.Descendants("h2").First().ElementsBeforeSelf().ToArray();
        var loud = result.Notices.Where(notice => notice.Level != NoticeLevel.Note).ToArray();
        var notes = result.Notices.Where(notice => notice.Level == NoticeLevel.Note).ToArray();

        // The caution of the test and the hubs 8 mm prouder than the tubes.
        Assert.Equal(2, loud.Length);
        Assert.All(loud, notice => Assert.Single(head, element => element.Value.Contains(notice.Text, StringComparison.Ordinal)));
        Assert.NotEmpty(notes);
        Assert.All(notes, notice => Assert.Single(page.Section("Notices").Descendants("td"), cell => cell.Value == notice.Text));
        Assert.Single(head, element => element.Value == "All drawings seen from outside");
    }

    [Fact]
    public void Write_Assumptions_SayWhatNobodyConfirmed()
    {
        var page = new ReportPage(ReportResults.WithoutLays(ReportResults.Dome(2, 3)));

        var rows = page.Section("Assumptions").Descendants("tbody").Single().Elements("tr").Select(row => string.Join('|', row.Elements("td").Select(cell => cell.Value)));

        Assert.Equal(["ease|0.3 %|common practice, no source|yes", "skirt.drop|60 mm|common practice, no source|NO"], rows);
        Assert.Contains("1 value was assumed", page.OfClass("unconfirmed").Single().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_FrameTable_HoldsClassesAndRaises()
    {
        var page = new ReportPage(ReportResults.WithoutLays(ReportResults.Dome(3, 5, 3657.6)));

        var tables = page.Section("Frame").Where(element => element.Name == "table").Select(Cells).ToArray();

        // 3V 5/8: 61 hubs, 165 struts, 105 facets; chord factors 0.34862, 0.40355, 0.41241 times R = 3657.6 [Clinton 1971].
        Assert.Equal(["61", "165", "105", "15"], tables[0]);
        Assert.Equal(["A", "1275", "30", "B", "1476", "55", "C", "1508", "80"], tables[1]);
        // 2.297 in = 58.3 mm at R = 144 in on ten of fifteen base hubs (common practice, no source).
        Assert.Equal(["0", "5", "58", "10"], tables[2].Where((_, i) => i % 3 != 2));

        static string[] Cells(XElement table) => [.. table.Descendants("td").Select(cell => cell.Value)];
    }

    [Fact]
    public void Write_MassNotStated_WeightIsNotKnown()
    {
        var job = ReportResults.Dome(1, 2, 900);
        var known = new ReportPage(ReportResults.WithLays(job));
        var unknown = new ReportPage(ReportResults.WithLays(job with { Cloths = [job.Cloths[0] with { MassPerArea = null }] }));

        // Once for the lay, once in all.
        Assert.Equal(2, unknown.Root.Descendants("td").Count(cell => cell.Value == "not known"));
        Assert.Equal(0, known.Root.Descendants("td").Count(cell => cell.Value == "not known"));
    }
}
