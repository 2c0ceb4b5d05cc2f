using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Reports;
using CoverPattern.Geometry;
using CoverPattern.Lays;
using CoverPattern.Lays.Cutting;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Drawings;

/// <summary>Draws a stretch of a lay, for machines shorter than the lay.</summary>
public static class SectionDrawing
{
    private const double HeadGap = 60;

    /// <summary>The drawings of a lay's sections; the lay's own drawing where it is one.</summary>
    /// <param name="lay">The lay.</param>
    /// <param name="set">The pieces it places.</param>
    /// <param name="notes">What nobody has confirmed.</param>
    /// <param name="longest">Most length of a section, millimetres; null without limit.</param>
    public static ImmutableArray<(Section Section, Drawing Drawing)> Of(Lay lay, PieceSet set, PaperNotes notes, double? longest)
    {
        ArgumentNullException.ThrowIfNull(lay);
        ArgumentNullException.ThrowIfNull(notes);

        var whole = LayDrawing.Draw(lay, set, notes);
        var sections = SectionPlanner.Split(lay, set, longest ?? double.PositiveInfinity);
        return sections.Length == 1
            ? [(sections[0], whole)]
            : [.. sections.Select(section => (section, Part(whole, lay, section, Below(lay, section, sections.Length, notes))))];
    }

    /// <summary>Lines are broken at the section's ends and lie on the sheet, because a block cannot be inserted in part.</summary>
    private static Drawing Part(Drawing whole, Lay lay, Section section, ImmutableArray<string> below)
    {
        var (shift, corner) = (new Point2(section.FromMm, 0), new Point2(0, Math.Ceiling(lay.RollWidthMm) + HeadGap));
        var strip = new Box2(new Point2(section.FromMm, -Grid.LargestMillimetres), new Point2(section.ToMm, lay.RollWidthMm));
        var lines = whole.LinesOnSheet().Where(line => line.Layer != DrawingLayers.TestSquare).SelectMany(line => Parts(line, strip))
            .Select(line => line with { Points = [.. line.Points.Select(point => point - shift)] });
        var crosses = Registration.Of(section, lay).Select(stroke => new DrawnLine(DrawingLayers.Registration, stroke.Points, IsClosed: false));
        var texts = whole.Texts.Where(text => text.Layer != DrawingLayers.Title && text.Layer != DrawingLayers.TestSquare)
            .Where(text => text.At.X >= section.FromMm && text.At.X <= section.ToMm)
            .Select(text => text with { At = text.At - shift });
        var title = FormattableString.Invariant($"{whole.Title}, section {section.Number}");
        return new Drawing(title, [], [], [.. lines, .. crosses, SheetHead.Square(corner)], [.. SheetHead.Texts(corner, title, below), .. texts]);
    }

    private static IEnumerable<DrawnLine> Parts(DrawnLine line, Box2 strip)
    {
        var parts = BoxClip.Within(strip, line.IsClosed ? line.Points.Add(line.Points[0]) : line.Points);
        return line.IsClosed && parts.Length == 1 && parts[0].Length == line.Points.Length + 1 && parts[0][0] == parts[0][^1]
            ? [line]
            : parts.Select(part => line with { Points = part, IsClosed = false });
    }

    private static string Ends(Section section, Ruler ruler) => $"{ruler.Of(section.FromMm)} to {ruler.WithUnit(section.ToMm)}";

    private static ImmutableArray<string> Below(Lay lay, Section section, int count, PaperNotes notes) =>
    [
        FormattableString.Invariant($"Section {section.Number} of {count}: {Ends(section, new Ruler(notes.IsInInches))} from the cut end, face {(lay.FaceDown ? "down" : "up")}; lay the cloth on the crosses again"),
        FormattableString.Invariant($"Measure the square: 100 mm each way{(notes.Unconfirmed.IsEmpty ? string.Empty : $"; NOT CONFIRMED: {notes.Unconfirmed.Length} assumed values")}"),
    ];
}
