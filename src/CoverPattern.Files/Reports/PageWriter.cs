using System;
using System.Collections.Generic;
using System.IO;
using System.Text;
using System.Xml;
using CoverPattern.Files.Drawings;

namespace CoverPattern.Files.Reports;

/// <summary>Writes a page that is both HTML 5 and well-formed XML.</summary>
/// <remarks>
/// All text passes through the XML writer, so that nothing a person typed can become markup. No element outside drawings is
/// written in the short form that HTML takes for an opening tag; no namespace is named, so that the file holds no address.
/// </remarks>
internal sealed class PageWriter : IDisposable
{
    private readonly MemoryStream stream = new();
    private readonly XmlWriter xml;

    public PageWriter() => xml = XmlWriter.Create(stream, new XmlWriterSettings
    {
        Encoding = new UTF8Encoding(false),
        OmitXmlDeclaration = true,
        NewLineChars = "\n",
        NewLineHandling = NewLineHandling.Replace,
    });

    /// <summary>Begins the page with its title and style.</summary>
    /// <param name="title">Any text.</param>
    /// <param name="style">Style sheet without the signs that XML escapes.</param>
    public void Begin(string title, string style)
    {
        xml.WriteRaw("<!DOCTYPE html>\n");
        Open("html", ("lang", "en"));
        Open("head");
        Empty("meta", ("charset", "utf-8"));
        Empty("meta", ("name", "viewport"), ("content", "width=device-width"));
        Line("title", title);
        Line("style", style);
        Close();
        Open("body");
    }

    /// <summary>Opens an element; what follows stands in it until <see cref="Close"/>.</summary>
    public void Open(string name, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        xml.WriteStartElement(name);
        foreach (var (attribute, value) in attributes)
        {
            xml.WriteAttributeString(attribute, value);
        }
    }

    /// <summary>Closes the element opened last.</summary>
    public void Close()
    {
        xml.WriteFullEndElement();
        xml.WriteRaw("\n");
    }

    /// <summary>An element that can hold nothing.</summary>
    public void Empty(string name, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Open(name, attributes);
        xml.WriteEndElement();
    }

    /// <summary>Text in the element opened last.</summary>
    /// <param name="text">Any text; control signs and signs that turn the direction of reading are replaced.</param>
    public void Text(string text) => xml.WriteString(PlainWords.Of(text));

    /// <summary>An element that holds a text.</summary>
    public void Line(string name, string text, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Open(name, attributes);
        Text(text);
        Close();
    }

    /// <summary>A table.</summary>
    /// <param name="kind">Class of the table; the style sheet knows it.</param>
    /// <param name="heads">One a column.</param>
    /// <param name="rows">Cells of each row; those that are numbers are set right by the table's kind.</param>
    public void Table(string kind, IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows)
    {
        Open("table", ("class", kind));
        Open("thead");
        Row("th", heads);
        Close();
        Open("tbody");
        foreach (var row in rows)
        {
            Row("td", row);
        }

        Close();
        Close();
    }

    /// <summary>Ends the page.</summary>
    /// <returns>The file in UTF-8.</returns>
    public byte[] End()
    {
        Close();
        Close();
        xml.Flush();
        return stream.ToArray();
    }

    public void Dispose()
    {
        xml.Dispose();
        stream.Dispose();
    }

    private void Row(string cell, IReadOnlyList<string> texts)
    {
        xml.WriteStartElement("tr");
        foreach (var text in texts)
        {
            xml.WriteStartElement(cell);
            Text(text);
            xml.WriteFullEndElement();
        }

        Close();
    }
}
