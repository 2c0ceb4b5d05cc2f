using System;
using System.Globalization;
using System.Linq;
using System.Text;
using CoverPattern.Lays.Nesting;

namespace Bench;

/// <summary>Draws a layout as SVG, for looking at.</summary>
internal static class LayoutDrawing
{
    public static string Svg(NestingTask task, NestingLayout layout) =>
        string.Create(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 {-task.Width} {layout.Length} {task.Width}\">\n{Strip(task, layout, 0)}</svg>\n");

    /// <summary>Two layouts of a task one above the other, to one scale.</summary>
    public static string Both(NestingTask task, NestingLayout upper, NestingLayout lower)
    {
        var (length, step) = (Math.Max(upper.Length, lower.Length), 1.2 * task.Width);
        return string.Create(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"1200\" viewBox=\"0 {-task.Width} {length:F0} {task.Width + step:F0}\">\n{Strip(task, upper, 0)}{Strip(task, lower, step)}</svg>\n");
    }

    private static string Strip(NestingTask task, NestingLayout layout, double down)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"<g transform=\"translate(0 {down:F0}) scale(1 -1)\" fill=\"#ddd\" stroke=\"#000\" stroke-width=\"{task.Width / 300:F2}\" fill-rule=\"evenodd\">\n");
        text.Append(CultureInfo.InvariantCulture, $"<rect width=\"{layout.Length:F1}\" height=\"{task.Width}\" fill=\"#fff\"/>\n");
        foreach (var placement in layout.Placements)
        {
            text.Append("<path d=\"");
            foreach (var ring in task.Items[placement.Item].Holes.Prepend(task.Items[placement.Item].Outline))
            {
                text.Append('M').AppendJoin('L', placement.Apply(ring).Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.X:F1} {p.Y:F1}"))).Append('Z');
            }

            text.Append("\"/>\n");
        }

        return text.Append("</g>\n").ToString();
    }
}
