using System;
using System.Runtime.InteropServices;
using System.Threading;

namespace CoverPattern.Cli;

/// <summary>What Ctrl+C and a wish to end do while a command works.</summary>
internal static class Interrupt
{
    /// <summary>Does work that can be broken off: the first wish to end cancels it, the second ends the program at once.</summary>
    /// <param name="work">The work; it keeps to its token.</param>
    /// <param name="cancel">Cancels the work too.</param>
    internal static int Within(Func<CancellationToken, int> work, CancellationToken cancel)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        using var interrupted = PosixSignalRegistration.Create(PosixSignal.SIGINT, End);
        using var ended = PosixSignalRegistration.Create(PosixSignal.SIGTERM, End);
        return work(stop.Token);

        void End(PosixSignalContext signal)
        {
            signal.Cancel = !stop.IsCancellationRequested;
            stop.Cancel();
        }
    }
}
