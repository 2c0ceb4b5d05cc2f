namespace CoverPattern.Cli;

/// <summary>What the program's exit tells a script.</summary>
internal static class ExitCodes
{
    /// <summary>Done, perhaps with notices.</summary>
    internal const int Done = 0;

    /// <summary>The command or the job is wrong.</summary>
    internal const int JobWrong = 1;

    /// <summary>The job is right, yet the work cannot be done; or it was cancelled.</summary>
    internal const int CannotBeDone = 2;

    /// <summary>The program is wrong.</summary>
    internal const int OurFault = 3;
}
