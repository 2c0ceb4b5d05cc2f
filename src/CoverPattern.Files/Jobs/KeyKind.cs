namespace CoverPattern.Files.Jobs;

/// <summary>What stands behind a key of the job file.</summary>
internal enum KeyKind
{
    /// <summary>Further keys in braces.</summary>
    Section,

    /// <summary>Sections in brackets.</summary>
    Sections,

    /// <summary>Places in brackets, such as "ease".</summary>
    Places,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>A length with its unit, or a number of millimetres.</summary>
    Length,

    /// <summary>A length that may have a sign.</summary>
    SignedLength,

    /// <summary>Rows of facets: "2", "1-3" or "rest".</summary>
    Rows,

    /// <summary>Labels in brackets, such as "F1.07" or "H0.02-H1.01".</summary>
    Labels,

    /// <summary>A ratio with a per cent sign, or a number.</summary>
    Ratio,

    /// <summary>Lengths by the label of a base hub, in braces.</summary>
    HubLengths,

    /// <summary>How much a plane falls: a ratio with a per cent sign, a length per length, or a number.</summary>
    Fall,

    /// <summary>A direction in degrees.</summary>
    Degrees,

    /// <summary>A mass per area with its unit, or a number of grams per square metre.</summary>
    Mass,

    /// <summary>One line of words.</summary>
    Line,

    /// <summary>The name of a cloth, safe in file names.</summary>
    ClothName,

    /// <summary>One word of a few.</summary>
    Word,

    /// <summary>True or false.</summary>
    Flag,

    /// <summary>A name of the table of make-ups, or one word of a few.</summary>
    MakeUpName,

    /// <summary>Names in brackets.</summary>
    Names,

    /// <summary>One word of a few, or struts in brackets.</summary>
    Seams,

    /// <summary>A bare number, with or without a fraction.</summary>
    Amount,

    /// <summary>A day, such as "2026-05-04".</summary>
    Day,

    /// <summary>The name of a cut, or a number of rows.</summary>
    Cut,

    /// <summary>The name of a piece, safe in labels.</summary>
    PieceName,

    /// <summary>The name of a file beside the job.</summary>
    FileName,

    /// <summary>The name of a file of lays beside the job.</summary>
    LaysFile,

    /// <summary>The name of a pattern exchange file beside the job.</summary>
    ExchangeFile,

    /// <summary>Lines of text in brackets.</summary>
    Lines,
}
