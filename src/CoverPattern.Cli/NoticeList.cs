using System.Collections.Immutable;
using System.IO;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Cli;

/// <summary>Prints what a person should see, loudest first.</summary>
internal static class NoticeList
{
    internal static void Print(ImmutableArray<Notice> notices, TextWriter error)
    {
        foreach (var notice in notices)
        {
            error.WriteLine($"{notice.Level}: {(notice.Place.Length == 0 ? "" : notice.Place + ": ")}{notice.Text}");
        }
    }
}
