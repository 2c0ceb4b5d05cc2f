using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Tests.Plots;

/// <summary>Reads HP-GL as a plotter does: two letters, numbers, semicolon; a step is 0.025 mm [HP PCL 5 TR II, Table 17-7].</summary>
internal sealed class HpglInterpreter
{
    private readonly List<(int Pen, List<Point2> Points)> lines = [];
    private bool isDown;
    private bool isRelative;
    private int pen;
    private (long X, long Y) at;

    /// <summary>Every line drawn, with its pen, millimetres.</summary>
    public static IReadOnlyList<(int Pen, Point2[] Points)> Read(byte[] plot)
    {
        var reader = new HpglInterpreter();
        var text = Encoding.ASCII.GetString(plot).Replace("\n", string.Empty, StringComparison.Ordinal);
        foreach (var command in text.Split(';', StringSplitOptions.RemoveEmptyEntries))
        {
            reader.Obey(command[..2], [.. command[2..].Split(',', StringSplitOptions.RemoveEmptyEntries).Select(word => long.Parse(word, CultureInfo.InvariantCulture))]);
        }

        return [.. reader.lines.Select(line => (line.Pen, line.Points.ToArray()))];
    }

    private void Obey(string command, long[] numbers)
    {
        switch (command)
        {
            case "IN":
                (isDown, isRelative, pen, at) = (false, false, 0, (0, 0));
                break;
            case "SP":
                (pen, isDown) = ((int)numbers.FirstOrDefault(), false);
                break;
            case "PA" or "PR":
                isRelative = command == "PR";
                Go(numbers);
                break;
            case "PU":
                isDown = false;
                Go(numbers);
                break;
            case "PD":
                isDown = true;
                Go(numbers);
                break;
            default:
                throw new FormatException("Unknown command " + command);
        }
    }

    /// <summary>An odd number at the end is ignored.</summary>
    private void Go(long[] numbers)
    {
        for (var i = 0; i + 1 < numbers.Length; i += 2)
        {
            var to = isRelative ? (at.X + numbers[i], at.Y + numbers[i + 1]) : (numbers[i], numbers[i + 1]);
            if (isDown && pen > 0)
            {
                Draw(to);
            }

            at = to;
        }
    }

    private void Draw((long X, long Y) to)
    {
        if (lines.Count == 0 || lines[^1].Pen != pen || lines[^1].Points[^1] != Millimetres(at))
        {
            lines.Add((pen, [Millimetres(at)]));
        }

        lines[^1].Points.Add(Millimetres(to));
    }

    private static Point2 Millimetres((long X, long Y) steps) => new(steps.X * 0.025, steps.Y * 0.025);
}
