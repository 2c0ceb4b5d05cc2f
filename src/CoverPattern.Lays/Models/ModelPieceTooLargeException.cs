using System;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays.Models;

/// <summary>A piece of a paper model does not go on the sheet.</summary>
public sealed class ModelPieceTooLargeException : WorkException
{
    /// <param name="label">Label of the piece.</param>
    /// <param name="scale">The scale that was asked for.</param>
    /// <param name="fits">The least scale, rounded up, at which it goes on the sheet.</param>
    public ModelPieceTooLargeException(string label, double scale, double fits)
        : base(label, FormattableString.Invariant($"{label} is larger than a sheet at 1:{scale:0.##}. Take 1:{fits:0} or smaller, or larger paper."))
    {
    }
}
