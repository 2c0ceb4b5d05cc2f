using System;
using System.Linq;
using System.Text.Json;
using CoverPattern.Patterns.Frames;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads the cut of a frame: a name such as "5/8", or a number of rows from the top.</summary>
internal static class CutReader
{
    /// <summary>A reader that knows the frequency; 0 when it is not known, and then only the form is checked.</summary>
    internal static ValueReader<CutName> For(int frequency) => (JobKey key, JsonElement element, out CutName? value, out string hint) =>
    {
        hint = "";
        value = element.ValueKind switch
        {
            JsonValueKind.String => Named(element.GetString()!, frequency),
            JsonValueKind.Number => Counted(element.GetDouble(), frequency),
            _ => null,
        };
        if (value is null && frequency > 0)
        {
            hint = Offer(element, frequency);
        }

        return value is not null;
    };

    private static CutName? Named(string name, int frequency) =>
        frequency == 0 ? new CutName(name, 0)
        : CutNames.TryFindRows(frequency, name, out var rows) ? new CutName(name, rows)
        : null;

    private static CutName? Counted(double rows, int frequency) =>
        frequency == 0 ? new CutName("", 0)
        : double.IsInteger(rows) && rows >= 1 && rows <= CutNames.MostRows(frequency) ? new CutName(FormattableString.Invariant($"{rows:0}"), (int)rows)
        : null;

    private static string Offer(JsonElement element, int frequency)
    {
        var near = CutNames.Near(frequency, element.ValueKind == JsonValueKind.String ? element.GetString()! : "");
        var names = string.Join(", ", near.Select(cut => FormattableString.Invariant($"\"{cut.Name}\" ({cut.Rows} rows)")));
        return FormattableString.Invariant($"at frequency {frequency}: {names}, or 1 to {CutNames.MostRows(frequency)} rows");
    }
}
