using System;
using System.Collections.Immutable;
using System.IO;
using System.Linq;
using System.Text;
using System.Threading;
using CoverPattern.Workshop.Folders;

namespace CoverPattern.Workshop.Tests.Folders;

public sealed class ResultFolderTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("coverpattern-test").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Replace_NewFolder_HoldsTheResult()
    {
        ResultFolder.Replace(Out, Files("a.txt"), CancellationToken.None);

        Assert.Equal(["a.txt", "summary.json"], Names());
    }

    [Fact]
    public void Replace_EarlierResult_GoesAndForeignFilesStay()
    {
        ResultFolder.Replace(Out, Files("a.txt", "b.txt"), CancellationToken.None);
        File.WriteAllText(Path.Combine(Out, "notes.txt"), "mine");

        ResultFolder.Replace(Out, Files("b.txt", "c.txt"), CancellationToken.None);

        Assert.Equal(["b.txt", "c.txt", "notes.txt", "summary.json"], Names());
        Assert.Equal("mine", File.ReadAllText(Path.Combine(Out, "notes.txt")));
    }

    [Fact]
    public void Replace_OnlyForeignFiles_IsRefused()
    {
        Directory.CreateDirectory(Out);
        File.WriteAllText(Path.Combine(Out, "notes.txt"), "mine");

        var fault = Assert.Throws<FolderException>(() => ResultFolder.Replace(Out, Files("a.txt"), CancellationToken.None));

        Assert.Contains("no earlier result", fault.Message, StringComparison.Ordinal);
        Assert.Equal(["notes.txt"], Names());
    }

    [Fact]
    public void Replace_ForeignFileOfTheSameName_IsRefused()
    {
        ResultFolder.Replace(Out, Files("a.txt"), CancellationToken.None);
        File.WriteAllText(Path.Combine(Out, "b.txt"), "mine");

        Assert.Throws<FolderException>(() => ResultFolder.Replace(Out, Files("b.txt"), CancellationToken.None));

        Assert.Equal(["a.txt", "b.txt", "summary.json"], Names());
        Assert.Equal("mine", File.ReadAllText(Path.Combine(Out, "b.txt")));
    }

    [Fact]
    public void Replace_AFile_IsRefused()
    {
        File.WriteAllText(Out, "a file");

        Assert.Throws<FolderException>(() => ResultFolder.Replace(Out, Files("a.txt"), CancellationToken.None));
    }

    [Fact]
    public void Replace_FailsHalfWay_StepsBack()
    {
        ResultFolder.Replace(Out, Files("a.txt", "b.txt"), CancellationToken.None);
        var earlier = Content();
        // A folder named like a coming file stops the last of the moves.
        Directory.CreateDirectory(Path.Combine(Out, "z.txt"));
        File.WriteAllText(Path.Combine(Out, "z.txt", "inside"), "mine");

        Assert.Throws<FolderException>(() => ResultFolder.Replace(Out, Files("c.txt", "z.txt"), CancellationToken.None));

        Assert.Equal(earlier, Content());
    }

    [Fact]
    public void Replace_Cancelled_ChangesNothing()
    {
        ResultFolder.Replace(Out, Files("a.txt"), CancellationToken.None);
        var earlier = Content();

        Assert.Throws<OperationCanceledException>(() => ResultFolder.Replace(Out, Files("b.txt"), new CancellationToken(canceled: true)));

        Assert.Equal(earlier, Content());
    }

    [Fact]
    public void Try_ResultLeftAsideByABrokenOffRun_ComesBack()
    {
        ResultFolder.Replace(Out, Files("a.txt", "b.txt"), CancellationToken.None);
        var earlier = Content();
        var aside = Directory.CreateDirectory(Path.Combine(Out, ".leaving")).FullName;
        foreach (var file in Directory.GetFiles(Out))
        {
            File.Move(file, Path.Combine(aside, Path.GetFileName(file)));
        }

        ResultFolder.Try(Out);

        Assert.Equal(earlier, Content());
        Assert.Equal(["a.txt", "b.txt", "summary.json"], Names());
    }

    [Fact]
    public void Try_RunBrokenOffAfterTheNewResultStood_KeepsTheNewOne()
    {
        ResultFolder.Replace(Out, Files("a.txt"), CancellationToken.None);
        var complete = Content();
        var aside = Directory.CreateDirectory(Path.Combine(Out, ".leaving")).FullName;
        File.WriteAllText(Path.Combine(aside, "a.txt"), "old");
        File.WriteAllText(Path.Combine(aside, "summary.json"), "{}");

        ResultFolder.Try(Out);

        Assert.Equal(complete, Content());
        Assert.Equal(["a.txt", "summary.json"], Names());
    }

    [Fact]
    public void Try_NewFolder_LeavesNoTrace()
    {
        ResultFolder.Try(Out);

        Assert.False(Directory.Exists(Out));
    }

    [Fact]
    public void Replace_SummaryWithPaths_TouchesNothingOutside()
    {
        Directory.CreateDirectory(Out);
        var outside = Path.Combine(folder, "outside.txt");
        File.WriteAllText(outside, "mine");
        File.WriteAllText(Path.Combine(Out, "summary.json"), "{ \"files\": [\"../outside.txt\", \"summary.json\"] }");

        ResultFolder.Replace(Out, Files("a.txt"), CancellationToken.None);

        Assert.Equal("mine", File.ReadAllText(outside));
    }

    private string Out => Path.Combine(folder, "out");

    private static ImmutableSortedDictionary<string, byte[]> Files(params string[] names)
    {
        var all = names.Append("summary.json").Order(StringComparer.Ordinal).ToArray();
        var list = string.Join(", ", all.Select(name => $"\"{name}\""));
        return all.ToImmutableSortedDictionary(name => name, name => Encoding.UTF8.GetBytes(name == "summary.json" ? $"{{ \"files\": [{list}] }}" : name), StringComparer.Ordinal);
    }

    private string[] Names() => [.. Directory.EnumerateFileSystemEntries(Out).Select(entry => Path.GetFileName(entry)).Order(StringComparer.Ordinal)];

    private string Content() => string.Join('\n', Directory.EnumerateFiles(Out).Order(StringComparer.Ordinal).Select(file => file + File.ReadAllText(file)));
}
