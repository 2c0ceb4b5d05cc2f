using System;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Files.Jobs;

/// <summary>A key of the job file: reader, schema and starter job all stand on the same list of these.</summary>
/// <param name="Place">Dotted place with empty brackets for any member of a list, such as "cloths[].rollWidth".</param>
/// <param name="Kind">What stands behind it.</param>
/// <param name="Meaning">One sentence for people.</param>
internal sealed record JobKey(string Place, KeyKind Kind, string Meaning)
{
    /// <summary>Whether a job without it is refused.</summary>
    internal bool IsRequired { get; init; }

    /// <summary>Least value, in the inner unit; for lines the least number of characters.</summary>
    internal double Least { get; init; }

    /// <summary>Greatest value, in the inner unit; for lines the greatest number of characters.</summary>
    internal double Most { get; init; }

    /// <summary>The words allowed, where <see cref="Kind"/> is a word.</summary>
    internal ImmutableArray<string> Words { get; init; } = [];

    /// <summary>What is taken when nobody says; empty where nothing is, or where another key decides.</summary>
    internal string Default { get; init; } = "";

    /// <summary>Where the default comes from; empty when there is none to confirm.</summary>
    internal string Standing { get; init; } = "";

    /// <summary>Whether a starter job shows its default; not where it goes with one choice only.</summary>
    internal bool IsAsked { get; init; } = true;

    /// <summary>Whether the section's mere presence is a wish, so that a starter job leaves it out.</summary>
    internal bool IsWish { get; init; }

    /// <summary>Names of required keys of its section in whose place it stands.</summary>
    internal ImmutableArray<string> InPlaceOf { get; init; } = [];

    /// <summary>Whether it stands in place of other keys, and so not in a starter job.</summary>
    internal bool IsAlternative => !InPlaceOf.IsEmpty;

    /// <summary>Whether leaving it out makes an assumption that somebody should confirm.</summary>
    internal bool IsAssumable => Standing.Length > 0;

    /// <summary>The key alone, without the section it stands in.</summary>
    internal string Name => Place[(Place.LastIndexOf('.') + 1)..];

    /// <summary>The section it stands in; empty at the top.</summary>
    internal string Section => Place.Contains('.', StringComparison.Ordinal) ? Place[..Place.LastIndexOf('.')] : "";

    /// <summary>What is allowed here, for messages.</summary>
    internal string Allowed => Kind switch
    {
        KeyKind.Section => "a section in braces with " + JobKeys.Listing(Place),
        KeyKind.Sections => $"a list of {Least:0} to {Most:0} sections in braces with " + JobKeys.Listing(Place + "[]"),
        KeyKind.Places => "a list of places that have a default, such as [\"ease\", \"skirt.drop\"]",
        KeyKind.Whole => FormattableString.Invariant($"a whole number, {Least:0} to {Most:0}"),
        KeyKind.Length => FormattableString.Invariant($"{LengthParser.Allowed}; {LimitOf(Least)} to {LimitOf(Most)} here"),
        KeyKind.SignedLength => FormattableString.Invariant($"{LengthParser.Allowed}, with or without a sign; {LimitOf(Least)} to {LimitOf(Most)} here"),
        KeyKind.Rows => FormattableString.Invariant($"a row such as \"2\", rows such as \"1-3\", counted from the deck up, at most {Most:0}, or \"rest\""),
        KeyKind.Labels => FormattableString.Invariant($"a list of {Least:0} to {Most:0} labels in quotes, each once"),
        KeyKind.Ratio => FormattableString.Invariant($"{RatioParser.Allowed}; {Least * 100:0.##} % to {Most * 100:0.##} % here"),
        KeyKind.HubLengths => "heights in braces by the labels of the base hubs, such as { \"H0.01\": \"38 mm\", \"H0.02\": \"0 mm\" }",
        KeyKind.Fall => FormattableString.Invariant($"{FallParser.Allowed}; {Least * 100:0.##} % to {Most * 100:0.##} % here"),
        KeyKind.Degrees => FormattableString.Invariant($"a bare number of degrees, {Least:0} to {Most:0}"),
        KeyKind.Mass => FormattableString.Invariant($"{MassParser.Allowed}; {Least:0} to {Most:0} g/m2 here"),
        KeyKind.Line => FormattableString.Invariant($"one line of words in quotes, at most {Most:0} characters"),
        KeyKind.ClothName => FormattableString.Invariant($"a name in quotes of 1 to {Most:0} letters a-z, digits, spaces, dashes and underscores, beginning and ending with a letter or digit"),
        KeyKind.Word => "one of " + string.Join(", ", Words.Select(word => $"\"{word}\"")),
        KeyKind.MakeUpName => "a name of makeUps, or one of " + string.Join(", ", Words.Select(word => $"\"{word}\"")),
        KeyKind.Names => FormattableString.Invariant($"a list of {Least:0} to {Most:0} names in quotes"),
        KeyKind.Seams => string.Join(", ", Words.Select(word => $"\"{word}\"")) + FormattableString.Invariant($", or a list of {Least:0} to {Most:0} struts such as [\"H0.02-H1.01\"]"),
        KeyKind.Amount => FormattableString.Invariant($"a number, {Least:0.###} to {Most:0.###}"),
        KeyKind.Flag => "true or false",
        KeyKind.Day => "a day as \"2026-05-04\" (year, month, day), 2000 to 2099",
        KeyKind.FileName => "the name of a file in the folder of the job, such as \"dome.csv\"; letters a-z, digits, spaces, points, dashes and underscores, ending in .csv, .obj, .ply or .stl",
        KeyKind.LaysFile => "the name of a file in the folder of the job, such as \"lays-march.json\"; letters a-z, digits, spaces, points, dashes and underscores, ending in .json",
        KeyKind.ExchangeFile => "the name of a file in the folder of the job, such as \"bag.dxf\"; letters a-z, digits, spaces, points, dashes and underscores, ending in .dxf",
        KeyKind.Lines => FormattableString.Invariant($"a list of {Least:0} to {Most:0} lines of text in quotes"),
        KeyKind.PieceName => FormattableString.Invariant($"a name in quotes of 1 to {Most:0} letters a-z, digits and dashes, beginning with a letter"),
        KeyKind.Cut => "the name of a cut such as \"5/8\", a number of rows counted from the top, or a list of hubs along the cut such as [\"T5.01\", \"T5.02\"]",
        _ => throw new InvalidOperationException($"Key {Place} has no kind."),
    };

    private static string LimitOf(double millimetres) => Math.Abs(millimetres) >= 1000
        ? FormattableString.Invariant($"{millimetres / 1000:0.###} m")
        : FormattableString.Invariant($"{millimetres:0.###} mm");
}
