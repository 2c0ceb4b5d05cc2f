using System;
using System.Collections.Immutable;
using System.IO;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Workshop;

namespace CoverPattern.Cli;

/// <summary>Prints all that is wrong with a job, one line a fault.</summary>
internal static class FaultList
{
    internal static void Print(string path, ImmutableArray<Fault> faults, TextWriter error)
    {
        if (faults.IsEmpty)
        {
            return;
        }

        error.WriteLine(FormattableString.Invariant($"{path}: {faults.Length} {(faults.Length == 1 ? "fault" : "faults")}; nothing was made."));
        foreach (var fault in faults)
        {
            error.WriteLine($"  {(fault.Place.Length == 0 ? "the file" : fault.Place)}: {(fault.Said.Length == 0 ? "" : $"said {fault.Said}. ")}{fault.Allowed}");
        }

        if (StovePipeCaution.IsDue(faults))
        {
            error.WriteLine($"{NoticeLevel.Caution}: {StovePipeCaution.Text}");
        }
    }
}
