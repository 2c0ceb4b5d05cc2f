using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json;
using System.Text.RegularExpressions;
using CoverPattern.Files.Results;
using CoverPattern.Lays;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads how pieces are laid.</summary>
internal static partial class LayReader
{
    /// <summary>Names of files of lays beside a job: no folders, no odd letters.</summary>
    internal const string NamePattern = "^[A-Za-z0-9](?:[A-Za-z0-9 ._-]{0,76}[A-Za-z0-9])?\\.json$";

    /// <summary>Reads the section with the lays that it names.</summary>
    /// <param name="section">The section.</param>
    /// <param name="notes">Takes faults and assumptions.</param>
    /// <param name="beside">Gives the bytes of a file beside the job, null when there is none.</param>
    internal static LayWish Read(JobSection section, JobNotes notes, Func<string, byte[]?>? beside)
    {
        var wish = new LayWish(
            section.Take<Measure>("spacing", Values.Length),
            section.Take<Measure>("endAllowance", Values.Length),
            section.Take<TurnRule>("turns", Values.Word),
            section.Take<bool>("faceDown", Values.Flag),
            section.Take<int>("effort", Values.Whole),
            section.Take<int>("seed", Values.Whole))
        {
            Style = section.Take<LayStyle>("style", Values.Word),
            OffGrainDegrees = section.States("offGrain") ? section.Take<double>("offGrain", Values.Degrees) : 0,
            InHoles = section.Take<bool>("inHoles", Values.Flag),
            Table = section.States("table") ? section.Take<Measure>("table", Values.Length) : null,
            Plies = section.Take<int>("plies", Values.Whole),
            Spread = section.Take<PlySpread>("spread", Values.Word),
            Grades = section.States("grades") ? [.. section.Sections("grades").Select(ReadGrade)] : [],
            Start = ReadLays(section, "start", notes, beside),
            Locked = section.States("locked") ? section.Take<ImmutableArray<string>>("locked", Values.Labels) : [],
            Keep = ReadLays(section, "keep", notes, beside),
        };
        if (notes.AreClean(section.Place))
        {
            Check(wish, section, notes);
        }

        return wish;
    }

    /// <summary>Plies all one way follow each other off the roll; how the cloth is turned face to face is not said, so that nobody knows where its flaws come to lie.</summary>
    internal static void CheckFlaws(LayWish lay, ImmutableArray<Cloth> cloths, JobNotes notes)
    {
        if (lay.Plies > 1 && lay.Spread == PlySpread.FaceToFace && notes.AreClean("lay", "cloths") && cloths.Any(cloth => cloth.Rolls.Any(roll => !roll.Flaws.IsEmpty)))
        {
            notes.Refuse("lay.spread", FormattableString.Invariant($"{lay.Plies} plies face to face off a roll with flaws"), "oneWay where a roll has flaws, or a single ply: how the cloth is turned face to face is not known");
        }
    }

    private static GradeWish ReadGrade(JobSection section) => new(
        section.Take<ImmutableArray<string>>("pieces", Values.Labels) is { IsDefault: false } pieces ? pieces : [],
        section.Take<int>("grade", Values.Whole));

    private static EarlierLays? ReadLays(JobSection section, string key, JobNotes notes, Func<string, byte[]?>? beside)
    {
        if (!section.States(key) || section.Take<string>(key, FileName) is not { } name)
        {
            return null;
        }

        if (beside?.Invoke(name) is not { } bytes)
        {
            notes.Refuse(section.PlaceOf(key), $"\"{name}\", which cannot be read", "a file in the folder of the job file, such as the lays.json of an earlier result, renamed");
            return null;
        }

        try
        {
            var lays = LaysFile.Read(bytes);
            var same = lays.GroupBy(lay => (lay.Cloth, lay.Number)).FirstOrDefault(group => group.Count() > 1);
            if (same is not null)
            {
                notes.Refuse(section.PlaceOf(key), FormattableString.Invariant($"\"{name}\", in which cloth {same.Key.Cloth} has {same.Count()} lays of number {same.Key.Number}"), "a number of its own for every lay of a cloth");
            }

            return new EarlierLays(name, [.. lays.Select(Earlier)]);
        }
        catch (ResultFormatException fault)
        {
            notes.Refuse(section.PlaceOf(key), $"\"{name}\": {fault.Message}", "a file of lays as \"coverpattern make\" writes it");
            return null;
        }
    }

    private static EarlierLay Earlier(Lay lay) => new(lay.Cloth, lay.Number, [.. lay.Placements.Select(place => new EarlierPlace(place.Piece, place.Under, place.X, place.Y, place.TurnDegrees, place.Mirrored))])
    {
        Roll = lay.Roll,
        FromMm = lay.FromMm,
        Plies = lay.Plies,
    };

    private static void Check(LayWish wish, JobSection section, JobNotes notes)
    {
        if (wish is { Start: { } start, Keep: not null })
        {
            notes.Refuse(section.PlaceOf("start"), $"\"{start.File}\" beside \"keep\"", "one of the two: kept lays are not searched again");
        }

        if (!wish.Locked.IsEmpty && wish.Start is null)
        {
            notes.Refuse(section.PlaceOf("locked"), "pieces, but no lays", "with \"start\" only, which says where they lie");
        }

        foreach (var label in wish.Start is null ? [] : wish.Locked.Where(label => !wish.Start.Lays.Any(lay => lay.Places.Any(place => string.Equals(place.Piece, label, StringComparison.Ordinal)))))
        {
            notes.Refuse(section.PlaceOf("locked"), $"\"{label}\"", $"labels of pieces that lie in {wish.Start!.File}");
        }

        if (wish.Plies > 1 && wish.Start is not null)
        {
            notes.Refuse(section.PlaceOf("plies"), FormattableString.Invariant($"{wish.Plies} beside \"start\""), "1 where the search goes on from earlier lays");
        }

        if (wish.Spread == PlySpread.FaceToFace && wish.Plies % 2 != 0)
        {
            notes.Refuse(section.PlaceOf("plies"), FormattableString.Invariant($"{wish.Plies} plies face to face"), "an even number of plies");
        }

        if (wish.Table is { } table && table.Millimetres <= 2 * wish.EndAllowance.Millimetres)
        {
            notes.Refuse(section.PlaceOf("table"), table.Typed, $"more than twice the end allowance, {wish.EndAllowance.Typed}");
        }
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
