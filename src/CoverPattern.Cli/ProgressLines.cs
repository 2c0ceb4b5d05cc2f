using System;
using System.IO;
using CoverPattern.Workshop;

namespace CoverPattern.Cli;

/// <summary>Shows progress as lines: one a stage, and one whenever a tenth more of a stage is done.</summary>
internal sealed class ProgressLines(TextWriter error) : IProgress<WorkshopStep>
{
    private readonly System.Threading.Lock gate = new();
    private string stage = string.Empty;
    private int tenths;

    public void Report(WorkshopStep value)
    {
        lock (gate)
        {
            var reached = (int)(10 * Math.Clamp(value.Share, 0, 1));
            if (value.Stage == stage && reached <= tenths)
            {
                return;
            }

            (stage, tenths) = (value.Stage, reached);
            error.WriteLine(reached == 0 ? stage : FormattableString.Invariant($"{stage} {10 * reached} % {value.Detail}"));
        }
    }
}
