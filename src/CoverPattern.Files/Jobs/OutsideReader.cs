using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json;
using System.Text.RegularExpressions;
using CoverPattern.Files.Dxf;
using CoverPattern.Files.Exchange;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads pieces drawn elsewhere from pattern exchange files beside the job.</summary>
internal static partial class OutsideReader
{
    /// <summary>Names of exchange files beside a job: no folders, no odd letters, since a result carries the file on.</summary>
    internal const string NamePattern = "^[A-Za-z0-9](?:[A-Za-z0-9 ._-]{0,76}[A-Za-z0-9])?\\.dxf$";

    private const int MostFaults = 10;

    /// <summary>Reads the sections, with the files they name.</summary>
    /// <param name="sections">The sections.</param>
    /// <param name="cloths">The job's cloths.</param>
    /// <param name="notes">Takes faults.</param>
    /// <param name="beside">Gives the bytes of a file beside the job, null when there is none.</param>
    internal static ImmutableArray<OutsideWish> Read(ImmutableArray<JobSection> sections, ImmutableArray<Cloth> cloths, JobNotes notes, Func<string, byte[]?>? beside)
    {
        var wishes = ImmutableArray.CreateBuilder<OutsideWish>();
        foreach (var section in sections)
        {
            var cloth = WindowReader.Cloth("cloth", section, cloths, notes) ?? string.Empty;
            if (section.Take<string>("file", FileName) is { } name && Pieces(section, name, wishes, notes, beside) is { } read)
            {
                wishes.Add(new OutsideWish(name, [.. read.File], cloth, read.Pieces));
            }
        }

        return wishes.ToImmutable();
    }

    private static (byte[] File, ImmutableArray<OutsidePiece> Pieces)? Pieces(
        JobSection section, string name, IEnumerable<OutsideWish> before, JobNotes notes, Func<string, byte[]?>? beside)
    {
        var place = section.PlaceOf("file");
        if (beside?.Invoke(name) is not { } file)
        {
            notes.Refuse(place, $"\"{name}\", which cannot be read", "a file in the folder of the job file");
            return null;
        }

        if (before.Any(wish => string.Equals(wish.Source, name, StringComparison.OrdinalIgnoreCase)) || string.Equals(name, "pieces.dxf", StringComparison.OrdinalIgnoreCase) || name.StartsWith("lay-", StringComparison.OrdinalIgnoreCase))
        {
            notes.Refuse(place, $"\"{name}\"", "each file once, and no name of a result's own drawings (pieces.dxf, lay-...)");
            return null;
        }

        var reading = ExchangeReader.Read(file);
        foreach (var fault in reading.Faults.Take(MostFaults))
        {
            notes.Refuse(place, $"\"{name}\", {fault}", "a pattern exchange file; see docs/plots.md");
        }

        return reading.Style is { } style ? (file, Turned(style, before, place, name, notes)) : null;
    }

    private static ImmutableArray<OutsidePiece> Turned(ExchangeStyle style, IEnumerable<OutsideWish> before, string place, string name, JobNotes notes)
    {
        var taken = before.SelectMany(wish => wish.Pieces).Select(piece => piece.Name).ToHashSet(StringComparer.Ordinal);
        var pieces = ImmutableArray.CreateBuilder<OutsidePiece>();
        foreach (var piece in style.Pieces)
        {
            var (made, fault) = OutsideTurn.Make(piece, Free(piece.Name, taken));
            if (made is null)
            {
                notes.Refuse(place, $"\"{name}\", piece {piece.Name}: {fault}", "pieces with a grain line, in a true quantity, their sew lines and holes inside the cut line");
                continue;
            }

            pieces.Add(made);
        }

        return pieces.ToImmutable();
    }

    /// <summary>The name in letters that labels may have, with a number where it is taken.</summary>
    private static string Free(string name, HashSet<string> taken)
    {
        var plain = DxfRelease12.Plain(name).Replace('$', '-').Replace('_', '-');
        var free = plain.Length == 0 ? "-" : plain;
        for (var i = 2; !taken.Add(free); i++)
        {
            free = FormattableString.Invariant($"{plain}-{i}");
        }

        return free;
    }

    private static bool FileName(JobKey key, JsonElement element, out string? value, out string hint)
    {
        value = element.ValueKind == JsonValueKind.String ? element.GetString() : null;
        hint = value is not null && value.AsSpan().ContainsAny('/', '\\') ? "the file stands in the folder of the job: its name alone" : "";
        return value is not null && Name().IsMatch(value);
    }

    [GeneratedRegex(NamePattern, RegexOptions.None, matchTimeoutMilliseconds: -1)]
    private static partial Regex Name();
}
