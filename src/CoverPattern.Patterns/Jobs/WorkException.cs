using System;

namespace CoverPattern.Patterns.Jobs;

/// <summary>The job is right, yet the work cannot be done; one sealed descendant a cause.</summary>
public abstract class WorkException : Exception
{
    /// <param name="label">Label of the thing that stands in the way.</param>
    /// <param name="message">Sentence with label, number, limit and the way out.</param>
    protected WorkException(string label, string message)
        : base(message) => Label = label;

    /// <summary>Label of the thing that stands in the way.</summary>
    public string Label { get; }
}
