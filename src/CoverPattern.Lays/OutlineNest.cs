using System;
using System.Threading;
using CoverPattern.Lays.Nesting;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays;

/// <summary>Places outlines in the style that a job asks for.</summary>
/// <param name="style">What lays are made for.</param>
/// <param name="progress">Told of every full layout; may be null.</param>
/// <param name="cancel">Stops the search.</param>
internal sealed class OutlineNest(LayStyle style, IProgress<NestingProgress>? progress, CancellationToken cancel)
{
    /// <summary>All outlines of a task on a strip as long as it gets.</summary>
    public NestingLayout Nest(NestingTask task) =>
        style == LayStyle.ByHand ? HandNester.Nest(task, progress, cancel) : Nester.Nest(task, progress, cancel);

    /// <summary>As many outlines of a task as go on a strip of limited length, or all.</summary>
    public NestingLayout NestWithin(NestingTask task, double limit) =>
        SectionNester.Nest(task, limit, Nest, cancel);
}
