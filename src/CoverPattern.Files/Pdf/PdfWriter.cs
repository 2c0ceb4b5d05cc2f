using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using System.Text;
using CoverPattern.Files.Drawings;

namespace CoverPattern.Files.Pdf;

/// <summary>Writes pages as a PDF file of our own making: plain text throughout, no date, the same bytes for the same pages.</summary>
internal static class PdfWriter
{
    private const int Catalogue = 1;
    private const int Pages = 2;
    private const int Font = 3;
    private const int About = 4;
    private const int SecondFont = 5;

    /// <param name="title">Title in the file's properties, in any letters.</param>
    /// <param name="pages">At least one.</param>
    internal static byte[] Write(string title, ImmutableArray<PdfPage> pages)
    {
        var file = new StringBuilder("%PDF-1.6\n");
        var starts = new List<int>();
        Add("<< /Type /Catalog /Pages 2 0 R /ViewerPreferences << /PrintScaling /None >> >>");
        Add($"<< /Type /Pages /Count {Text(pages.Length)} /Kids [{string.Join(' ', pages.Select((_, i) => $"{Text(PageOf(i))} 0 R"))}] >>");
        Add("<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>");
        Add($"<< /Title {Property(PlainWords.Of(title))} /Producer {Helvetica.Literal(Results.ProgramVersion.Text)} >>");
        Add($"<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding {EastLetters.Encoding} >>");
        foreach (var (page, i) in pages.Select((page, i) => (page, i)))
        {
            var content = page.Content();
            Add($"<< /Type /Page /Parent {Text(Pages)} 0 R /MediaBox [0 0 {Units(page, page.Size.WidthMm)} {Units(page, page.Size.HeightMm)}]"
                + (page.UserUnit > 1 ? $" /UserUnit {Text(page.UserUnit)}" : string.Empty)
                + $" /Resources << /Font << /{Helvetica.First} {Text(Font)} 0 R /{Helvetica.Second} {Text(SecondFont)} 0 R >> >> /Contents {Text(PageOf(i) + 1)} 0 R >>");
            Add($"<< /Length {Text(content.Length)} >>\nstream\n{content}\nendstream");
        }

        return End(file, starts);

        void Add(string content)
        {
            starts.Add(file.Length);
            file.Append(CultureInfo.InvariantCulture, $"{starts.Count} 0 obj\n{content}\nendobj\n");
        }
    }

    /// <summary>The table of where each object begins; every entry is twenty bytes.</summary>
    private static byte[] End(StringBuilder file, List<int> starts)
    {
        var table = file.Length;
        file.Append(CultureInfo.InvariantCulture, $"xref\n0 {starts.Count + 1}\n0000000000 65535 f \n");
        foreach (var start in starts)
        {
            file.Append(CultureInfo.InvariantCulture, $"{start:0000000000} 00000 n \n");
        }

        file.Append(CultureInfo.InvariantCulture, $"trailer\n<< /Size {starts.Count + 1} /Root {Catalogue} 0 R /Info {About} 0 R >>\nstartxref\n{table}\n%%EOF\n");
        return Encoding.ASCII.GetBytes(file.ToString());
    }

    /// <summary>A text of the file's properties: as it is where it is ASCII, else in UTF-16 behind its mark, as hexadecimal digits.</summary>
    private static string Property(string text) => text.All(letter => letter is >= ' ' and <= '~')
        ? Helvetica.Literal(text)
        : "<FEFF" + string.Concat(text.Select(letter => ((int)letter).ToString("X4", CultureInfo.InvariantCulture))) + ">";

    private static int PageOf(int index) => SecondFont + 1 + (2 * index);

    private static string Units(PdfPage page, double millimetres) => PdfPage.Number(millimetres * page.Scale, 5);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
