using System;
using System.Collections.Immutable;
using System.Globalization;

namespace Bench;

/// <summary>What the command line of the nesting bench asks for.</summary>
internal sealed record BenchWishes
{
    /// <summary>Folder of set files.</summary>
    public string Sets { get; init; } = "";

    /// <summary>Time limit of a run; 0 when effort decides.</summary>
    public double Seconds { get; init; }

    /// <summary>Work units of a run; used without a time limit.</summary>
    public int Effort { get; init; } = int.MaxValue;

    /// <summary>Seeds 1 to this.</summary>
    public int Seeds { get; init; } = 1;

    /// <summary>Threads of a run, 1 or 2.</summary>
    public int Threads { get; init; } = 2;

    /// <summary>Names of the sets to run; empty means all.</summary>
    public ImmutableArray<string> Only { get; init; } = [];

    /// <summary>Folder for drawings; empty for none.</summary>
    public string Out { get; init; } = "";

    /// <summary>Settings to change, name=number; to compare settings at equal effort.</summary>
    public ImmutableArray<string> Settings { get; init; } = [];

    public static BenchWishes Parse(ReadOnlySpan<string> words)
    {
        var wishes = new BenchWishes();
        for (var i = 0; i + 1 < words.Length; i += 2)
        {
            var value = words[i + 1];
            wishes = words[i] switch
            {
                "--sets" => wishes with { Sets = value },
                "--seconds" => wishes with { Seconds = double.Parse(value, CultureInfo.InvariantCulture) },
                "--effort" => wishes with { Effort = int.Parse(value, CultureInfo.InvariantCulture) },
                "--seeds" => wishes with { Seeds = int.Parse(value, CultureInfo.InvariantCulture) },
                "--threads" => wishes with { Threads = int.Parse(value, CultureInfo.InvariantCulture) },
                "--only" => wishes with { Only = [.. value.Split(',')] },
                "--out" => wishes with { Out = value },
                "--set" => wishes with { Settings = [.. value.Split(',')] },
                var other => throw new ArgumentException($"{other} is not an option of this bench.", nameof(words)),
            };
        }

        return wishes;
    }
}
