namespace CoverPattern.Files.Drawings;

/// <summary>Which part of a text stands at its point; in height it is always the middle of the capitals.</summary>
public enum TextAnchor
{
    /// <summary>The text begins at the point.</summary>
    Start,

    /// <summary>The middle of the text stands at the point.</summary>
    Middle,

    /// <summary>The text ends at the point.</summary>
    End,
}
