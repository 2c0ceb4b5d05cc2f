using System;
using System.Globalization;
using System.Linq;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Writes a commented job to begin from.</summary>
public static class StarterJob
{
    private const int Indent = 2;

    /// <summary>Writes the job; an answer that only repeats a default stays an assumption, for nobody may have measured it.</summary>
    /// <param name="answers">As typed; wrong ones are written too, and become faults when the job is read.</param>
    /// <returns>The text of a job file; defaults that nobody was asked for stand in it as comments, so that they stay assumptions.</returns>
    public static string Write(StarterAnswers answers)
    {
        ArgumentNullException.ThrowIfNull(answers);
        var text = new StringBuilder();
        text.Append("// A job for CoverPattern. Lengths: \"24 ft\", \"12' 6\\\"\", \"1 1/2 in\", \"38 mm\", \"2,5 cm\", or bare millimetres.\n");
        text.Append("// Lines behind // are defaults: take the // away and change the value, or name the place in \"confirmed\".\n");
        text.Append("{\n");
        WriteSection(text, "", answers);
        return text.Append("}\n").ToString();
    }

    private static void WriteSection(StringBuilder text, string section, StarterAnswers answers)
    {
        var margin = new string(' ', Indent * (1 + section.Count(c => c is '.' or '[') + (section.Length > 0 ? 1 : 0)));
        foreach (var key in JobKeys.In(section).Where(key => !IsLeftOut(key) && !key.IsAlternative))
        {
            WriteKey(text, margin, key, answers);
        }
    }

    /// <summary>Sections that say something by being there, lists that need not be there, and sections with nothing to show inside.</summary>
    private static bool IsLeftOut(JobKey key) =>
        key.IsWish
        || (key.Kind == KeyKind.Sections && !key.IsRequired)
        || (key.Kind == KeyKind.Section && !key.IsRequired && !JobKeys.In(key.Place).Any(inner => inner.IsAssumable || inner.Kind == KeyKind.Section));

    private static void WriteKey(StringBuilder text, string margin, JobKey key, StarterAnswers answers)
    {
        switch (key.Kind)
        {
            case KeyKind.Section when !key.IsAsked:
                break;
            case KeyKind.Section:
                text.Append(margin).Append("// ").Append(key.Meaning).Append('\n');
                text.Append(margin).Append(Quoted(key.Name)).Append(": {\n");
                WriteSection(text, key.Place, answers);
                text.Append(margin).Append("},\n");
                break;
            case KeyKind.Sections when key.IsRequired:
                text.Append(margin).Append("// ").Append(key.Meaning).Append('\n');
                text.Append(margin).Append(Quoted(key.Name)).Append(": [\n").Append(margin).Append("  {\n");
                WriteSection(text, key.Place + "[]", answers);
                text.Append(margin).Append("  },\n").Append(margin).Append("],\n");
                break;
            default:
                WriteValue(text, margin, key, answers);
                break;
        }
    }

    private static void WriteValue(StringBuilder text, string margin, JobKey key, StarterAnswers answers)
    {
        var answer = Answer(key, answers) is { } words && !(key.IsAssumable && words == Quoted(key.Default)) ? words : null;
        var value = answer ?? DefaultOf(key, answers);
        if (value is null)
        {
            return;
        }

        var standing = key.IsAssumable && answer is null ? $" Default, {key.Standing}." : "";
        text.Append(margin).Append("// ").Append(key.Meaning).Append(standing).Append('\n');
        text.Append(margin).Append(answer is null ? "// " : "").Append(Quoted(key.Name)).Append(": ").Append(value).Append(",\n");
    }

    /// <summary>The answered value as JSON; null for what was not asked.</summary>
    private static string? Answer(JobKey key, StarterAnswers answers) => key.Place switch
    {
        "schemaVersion" => "1",
        "title" => Quoted(answers.Title),
        "date" => Quoted(answers.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
        "frame.frequency" => answers.Frequency.ToString(CultureInfo.InvariantCulture),
        "frame.cut" => answers.Cut.Length is 1 or 2 && answers.Cut.All(char.IsAsciiDigit) && answers.Cut[0] != '0' ? answers.Cut : Quoted(answers.Cut),
        "skirt.drop" => Quoted(answers.Drop),
        "standOff.tubeRadius" => Quoted(answers.TubeRadius),
        "standOff.hubHeight" => Quoted(answers.HubHeight),
        "cloths[].name" => Quoted(answers.ClothName),
        "cloths[].rollWidth" => Quoted(answers.RollWidth),
        "seam.makeUp" => Quoted(WordOf(answers.MakeUp)),
        "confirmed" => "[]",
        _ => key.Place == $"{JobKeys.Size}.{WordOf(answers.Measure)}" ? Quoted(answers.Size) : null,
    };

    private static string? DefaultOf(JobKey key, StarterAnswers answers) => key.Place switch
    {
        "seam.width" => Quoted(MakeUpDefaults.SeamWidth(answers.MakeUp)),
        "marks.hubPatches" => Quoted(MakeUpDefaults.HubPatches(answers.MakeUp is MakeUpForm.Felled or MakeUpForm.FolderFelled)),
        "hem.depth" => Quoted(MakeUpDefaults.HemDepth(answers.MakeUp)),
        "hem.turnUnder" => Quoted(answers.MakeUp is MakeUpForm.Welded or MakeUpForm.SplitWelded ? "0 mm" : "12 mm"),
        "cloths[].mass" => Quoted("610 g/m2"),
        _ when !key.IsAssumable || !key.IsAsked => null,
        _ => key.Kind is KeyKind.Whole or KeyKind.Flag ? key.Default : Quoted(key.Default),
    };

    /// <summary>The word of the job file for a choice: its name with a small first letter.</summary>
    private static string WordOf<T>(T choice)
        where T : struct, Enum
    {
        var name = choice.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }

    private static string Quoted(string words) => $"\"{JsonEncodedText.Encode(words, JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\"";
}
