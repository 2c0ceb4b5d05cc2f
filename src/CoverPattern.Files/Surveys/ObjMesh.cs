using System;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Surveys;

/// <summary>Reads the corners and faces of an OBJ file; lines of other kinds, such as colours, are passed over.</summary>
internal static class ObjMesh
{
    internal static void Read(string text, double unit, SurveyDraft draft)
    {
        var number = 0;
        foreach (var span in text.AsSpan().EnumerateLines())
        {
            number++;
            var line = span.Trim();
            if (draft.IsGivenUp)
            {
                return;
            }

            if (line.StartsWith("v ", StringComparison.Ordinal) || line.StartsWith("f ", StringComparison.Ordinal) || line.StartsWith("l ", StringComparison.Ordinal))
            {
                ReadLine(line.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries), FormattableString.Invariant($"line {number}"), unit, draft);
            }
        }
    }

    private static void ReadLine(string[] words, string place, double unit, SurveyDraft draft)
    {
        if (words[0] == "v")
        {
            ReadCorner(words, place, unit, draft);
            return;
        }

        var indexes = words[1..].Select(word => Index(word, draft.HubCount)).ToArray();
        if (indexes.Length < (words[0] == "f" ? 3 : 2) || indexes.Contains(-1))
        {
            draft.Refuse($"{place}: \"{string.Join(' ', words.Take(8))}\"", FormattableString.Invariant($"numbers of corners listed before, 1 to {draft.HubCount}; three or more for a face, two for a line"));
        }
        else if (words[0] == "f")
        {
            draft.AddFacet([.. indexes], place);
        }
        else
        {
            for (var i = 0; i + 1 < indexes.Length; i++)
            {
                draft.AddStrut(indexes[i], indexes[i + 1], place);
            }
        }
    }

    private static void ReadCorner(string[] words, string place, double unit, SurveyDraft draft)
    {
        var values = words.Skip(1).Take(3).Select(word => double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : double.NaN).ToArray();
        if (values.Length < 3 || values.Any(value => !double.IsFinite(value)))
        {
            draft.Refuse($"{place}: \"{string.Join(' ', words.Take(8))}\"", "a corner with three numbers");
            return;
        }

        draft.AddHub("", unit * new Point3(values[0], values[1], values[2]), place);
    }

    /// <summary>From "7", "7/1/3" or, counted back from the last, "-1"; -1 when it names no corner.</summary>
    private static int Index(string word, int count)
    {
        var slash = word.IndexOf('/', StringComparison.Ordinal);
        var isNumber = int.TryParse(slash < 0 ? word : word[..slash], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var said);
        var index = said < 0 ? count + (long)said : said - 1L;
        return isNumber && index >= 0 && index < count ? (int)index : -1;
    }
}
