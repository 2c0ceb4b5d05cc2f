using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using System.Text.RegularExpressions;
using CoverPattern.Files.Jobs;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Surveys;

/// <summary>Reads a survey written as lines: "unit, mm", "hub, label, x, y, z", "strut, label, label", "facet, label, label, label".</summary>
/// <remarks>
/// Cells stand apart by semicolons, else tabs, else commas: the first of these that the text holds anywhere. With semicolons or
/// tabs a comma is a decimal comma. A coordinate with its own unit, such as 12' 6", needs no unit line.
/// </remarks>
internal sealed partial class SurveyLines
{
    private static readonly ImmutableArray<char> Separators = [';', '\t', ','];
    private readonly SurveyDraft draft;
    private readonly char separator;
    private readonly Dictionary<string, int> hubByLabel = new(StringComparer.Ordinal);
    private readonly double? said;
    private double? unit;

    private SurveyLines(char separator, double? unit, SurveyDraft draft)
    {
        (this.separator, this.unit, said, this.draft) = (separator, unit, unit, draft);
    }

    /// <summary>Millimetres in one of the units that may be named.</summary>
    internal static double? UnitOf(string word) => word switch
    {
        "mm" => 1,
        "cm" => 10,
        "m" => 1000,
        "in" => 25.4,
        "ft" => 304.8,
        _ => null,
    };

    internal static void Read(string text, double? unit, SurveyDraft draft)
    {
        var lines = text.Split('\n').Select((line, i) => (Text: line.Trim(), Place: FormattableString.Invariant($"line {i + 1}")))
            .Where(line => line.Text.Length > 0 && line.Text[0] != '#').ToArray();
        var mark = Separators.FirstOrDefault(one => lines.Any(line => line.Text.Contains(one, StringComparison.Ordinal)), ',');
        var reader = new SurveyLines(mark, unit, draft);

        // Hubs first: struts may be listed before the hubs they name.
        var cells = lines.Select(line => (Cells: reader.Cells(line.Text), line.Place)).ToArray();
        foreach (var (parts, place) in cells.TakeWhile(_ => !draft.IsGivenUp))
        {
            reader.ReadFirst(parts, place);
        }

        foreach (var (parts, place) in cells.TakeWhile(_ => !draft.IsGivenUp))
        {
            reader.ReadSecond(parts, place);
        }
    }

    /// <summary>Cells without the blanks and the quotation marks round them.</summary>
    private string[] Cells(string line) =>
    [
        .. line.TrimEnd(separator).Split(separator).Select(cell => cell.Trim())
            .Select(cell => cell.Length >= 2 && cell[0] == '"' && cell[^1] == '"' ? cell[1..^1].Replace("\"\"", "\"", StringComparison.Ordinal) : cell),
    ];

    private void ReadFirst(string[] cells, string place)
    {
        switch (cells[0].ToLowerInvariant())
        {
            case "unit":
                unit = cells.Length == 2 ? UnitOf(cells[1]) : null;
                if (unit is null)
                {
                    draft.RefuseAll($"{place}: \"{Shown(cells)}\"", "unit and one of mm, cm, m, in, ft");
                }
                else if (said is not null && said != unit)
                {
                    draft.RefuseAll($"{place}: \"{Shown(cells)}\", where frame.survey.unit says another", "one unit: the line's or the job's");
                }

                break;
            case "hub":
                ReadHub(cells, place);
                break;
            case "strut" or "facet":
                break;
            default:
                draft.Refuse($"{place}: \"{Shown(cells)}\"", "lines that begin with unit, hub, strut, facet or #");
                break;
        }
    }

    private void ReadHub(string[] cells, string place)
    {
        if (cells.Length != 5 || !Label().IsMatch(cells[1]))
        {
            draft.Refuse($"{place}: \"{Shown(cells)}\"", "hub, a label of 1 to 12 letters a-z, digits, points and dashes, then x, y and z");
            return;
        }

        if (hubByLabel.TryGetValue(cells[1], out _))
        {
            draft.Refuse($"{place}: hub {cells[1]} a second time", "each label once");
            return;
        }

        var values = cells[2..].Select((cell, i) => Coordinate(cell, $"{place}: hub {cells[1]}, {"xyz"[i]}")).ToArray();
        hubByLabel.Add(cells[1], draft.HubCount);
        draft.AddHub(cells[1], new Point3(values[0], values[1], values[2]), place);
    }

    private double Coordinate(string cell, string place)
    {
        var plain = separator == ',' ? cell : cell.Replace(',', '.');
        if (double.TryParse(plain, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number))
        {
            if (unit is null)
            {
                draft.RefuseAll($"{place}: {cell} without a unit", "a line \"unit, mm\" before the first hub, or a unit behind each number");
            }

            return number * (unit ?? 1);
        }

        if (!LengthParser.TryParse(cell, signed: true, out var millimetres, out var trouble))
        {
            draft.Refuse($"{place} is \"{cell}\": {trouble}", LengthParser.Allowed);
        }

        return millimetres;
    }

    private void ReadSecond(string[] cells, string place)
    {
        var kind = cells[0].ToLowerInvariant();
        if (kind is not ("strut" or "facet"))
        {
            return;
        }

        if (kind == "strut" ? cells.Length != 3 : cells.Length < 4)
        {
            draft.Refuse($"{place}: \"{Shown(cells)}\"", "strut and two labels, or facet and three labels or more in order round it");
            return;
        }

        var unknown = cells[1..].FirstOrDefault(label => !hubByLabel.ContainsKey(label));
        if (unknown is not null)
        {
            draft.Refuse($"{place}: the label \"{unknown}\", which no hub has", "labels of hub lines");
            return;
        }

        ImmutableArray<int> hubs = [.. cells[1..].Select(label => hubByLabel[label])];
        if (kind == "strut")
        {
            draft.AddStrut(hubs[0], hubs[1], place);
        }
        else
        {
            draft.AddFacet(hubs, place);
        }
    }

    private string Shown(string[] cells)
    {
        var line = string.Join(separator == '\t' ? ' ' : separator, cells);
        return string.Concat((line.Length > 60 ? line[..60] + "..." : line).Select(c => char.IsControl(c) || char.IsSurrogate(c) ? '?' : c));
    }

    [GeneratedRegex(@"\A[A-Za-z0-9._-]{1,12}\z", RegexOptions.None, matchTimeoutMilliseconds: -1)]
    private static partial Regex Label();
}
