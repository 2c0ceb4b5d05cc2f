using System.Globalization;
using System.Linq;
using System.Text;
using CoverPattern.Lays.Nesting;

namespace Bench;

/// <summary>Draws a layout as SVG, for looking at.</summary>
internal static class LayoutDrawing
{
    public static string Svg(NestingTask task, NestingLayout layout)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 {-task.Width} {layout.Length} {task.Width}\">\n");
        text.Append(CultureInfo.InvariantCulture, $"<g transform=\"scale(1 -1)\" fill=\"#ddd\" stroke=\"#000\" stroke-width=\"{task.Width / 1000}\" fill-rule=\"evenodd\">\n");
        text.Append(CultureInfo.InvariantCulture, $"<rect width=\"{layout.Length}\" height=\"{task.Width}\" fill=\"none\"/>\n");
        foreach (var placement in layout.Placements)
        {
            text.Append("<path d=\"");
            foreach (var ring in task.Items[placement.Item].Holes.Prepend(task.Items[placement.Item].Outline))
            {
                text.Append('M').AppendJoin('L', placement.Apply(ring).Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.X} {p.Y}"))).Append('Z');
            }

            text.Append("\"/>\n");
        }

        return text.Append("</g>\n</svg>\n").ToString();
    }
}
