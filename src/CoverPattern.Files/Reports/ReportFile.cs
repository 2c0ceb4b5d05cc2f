using System;
using CoverPattern.Files.Results;

namespace CoverPattern.Files.Reports;

/// <summary>Writes report.html: one page for people that holds everything a shop needs to look at, to cut and to sew.</summary>
/// <remarks>
/// HTML 5 that is also well-formed XML; no script, no address, style and drawings within; prints on A4, also in grey.
/// Same result, same bytes.
/// </remarks>
public static class ReportFile
{
    /// <summary>Name of the file in the result folder.</summary>
    public const string Name = "report.html";

    /// <param name="result">All that one run made.</param>
    /// <returns>The file in UTF-8 with "\n" line ends.</returns>
    public static byte[] Write(Result result)
    {
        ArgumentNullException.ThrowIfNull(result);

        using var page = new PageWriter();
        page.Begin(HeadSection.Title(result.Job), ReportStyle.Sheet);
        HeadSection.Write(page, result);
        DomeSection.Write(page, result);
        RowSection.Write(page, result);
        FrameSection.Write(page, result);
        CoverSection.Write(page, result);
        LinerSection.Write(page, result);
        PipeSection.Write(page, result);
        PatternSection.Write(page, result);
        PieceSection.Write(page, result);
        OpeningSection.Write(page, result);
        RoofSection.Write(page, result);
        LaySection.Write(page, result);
        CountSection.Write(page, result);
        SewingSection.Write(page, result);
        ClosingSection.Write(page, result);
        EndSection.Write(page, result);
        return page.End();
    }
}
