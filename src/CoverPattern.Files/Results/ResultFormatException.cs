using System;

namespace CoverPattern.Files.Results;

/// <summary>A file of a result folder is not what this program writes, so nothing in it can be trusted.</summary>
public sealed class ResultFormatException : Exception
{
    /// <param name="place">Where in the file, such as "patterns[3].runs[0].from".</param>
    /// <param name="message">What was found and what is allowed.</param>
    public ResultFormatException(string place, string message)
        : this(place, message, cause: null)
    {
    }

    /// <param name="place">Where in the file, such as "patterns[3].runs[0].from".</param>
    /// <param name="message">What was found and what is allowed.</param>
    /// <param name="cause">What the reader of JSON said; null when the file is JSON.</param>
    public ResultFormatException(string place, string message, Exception? cause)
        : base($"{place}: {message}", cause) => Place = place;

    /// <summary>Where in the file.</summary>
    public string Place { get; }
}
