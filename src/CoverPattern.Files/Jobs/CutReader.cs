using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads the cut of a frame: a name such as "5/8", a number of rows from the top, or the hubs along it.</summary>
internal static class CutReader
{
    // More names than this are no cut of a ball of twelve parts.
    private const int MostHubs = 1000;

    /// <summary>Reads the cut; where the ball is not known, its frequency being 0, only the form is checked.</summary>
    /// <param name="frame">The section of the frame.</param>
    /// <param name="wish">Family, frequency, division and what is up, as read.</param>
    /// <param name="notes">Takes faults.</param>
    internal static FrameWish Read(JobSection frame, FrameWish wish, JobNotes notes)
    {
        var ball = wish.Frequency > 0 ? Ball.Divide(wish) : null;
        var cut = frame.Take("cut", For(wish, ball)) ?? wish;
        if (ball is not null && notes.AreClean(frame.PlaceOf("cut")) && ball.Above(cut, out var trouble) is null)
        {
            notes.Refuse(frame.PlaceOf("cut"), cut.Cut, $"{trouble}; {Possible(ball, cut)}");
        }

        return cut;
    }

    private static ValueReader<FrameWish> For(FrameWish wish, Ball? ball) => (JobKey key, JsonElement element, out FrameWish? value, out string hint) =>
    {
        hint = "";
        value = element.ValueKind switch
        {
            JsonValueKind.String => Named(element.GetString()!, wish, ball),
            JsonValueKind.Number => Counted(element.GetDouble(), wish, ball),
            JsonValueKind.Array => Listed(element, wish),
            _ => null,
        };
        if (value is null && ball is not null)
        {
            hint = Offer(element, wish, ball);
        }

        return value is not null;
    };

    private static FrameWish? Named(string name, FrameWish wish, Ball? ball) =>
        ball is null ? wish with { Cut = name }
        : CutNames.TryFindRows(wish, ball.MostRows, name, out var rows) ? wish with { Cut = name, Rows = rows }
        : null;

    private static FrameWish? Counted(double rows, FrameWish wish, Ball? ball) =>
        ball is null ? wish
        : double.IsInteger(rows) && rows >= 1 && rows <= ball.MostRows ? wish with { Cut = FormattableString.Invariant($"{rows:0}"), Rows = (int)rows }
        : null;

    private static FrameWish? Listed(JsonElement element, FrameWish wish)
    {
        ImmutableArray<string> names = element.GetArrayLength() is >= 3 and <= MostHubs && element.EnumerateArray().All(item => item.ValueKind == JsonValueKind.String)
            ? [.. element.EnumerateArray().Select(item => item.GetString()!)]
            : [];
        return names.IsEmpty ? null : wish with { Cut = FormattableString.Invariant($"along {names.Length} hubs"), CutHubs = names };
    }

    private static string Offer(JsonElement element, FrameWish wish, Ball ball)
    {
        if (!CutNames.IsCustomary(wish))
        {
            return FormattableString.Invariant($"on this ball: {Possible(ball, wish)}");
        }

        var near = CutNames.Near(wish.Frequency, element.ValueKind == JsonValueKind.String ? element.GetString()! : "");
        var names = string.Join(", ", near.Select(cut => FormattableString.Invariant($"\"{cut.Name}\" ({cut.Rows} rows)")));
        return FormattableString.Invariant($"at frequency {wish.Frequency}: {names}, or 1 to {ball.MostRows} rows");
    }

    private static string Possible(Ball ball, FrameWish wish)
    {
        var rows = Enumerable.Range(1, ball.MostRows).Where(count => ball.Above(wish with { Rows = count, CutHubs = [] }, out _) is not null);
        return FormattableString.Invariant($"rows that end on one ring of hubs: {string.Join(", ", rows)}; or hubs in order round the ball, named {ball.Names[0]} to {ball.Names.Max(StringComparer.Ordinal)}: ring from the top, position counter-clockwise from the front");
    }
}
