using System;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace CoverPattern.Cli.Tests.House;

/// <summary>The rules of the house that DEVELOPERS.md tells, read off the files.</summary>
public partial class RoomRulesTests
{
    private static readonly string[] Line = ["Geometry", "Patterns", "Lays", "Files", "Workshop", "Cli"];

    private static readonly string[] PatternFolders = ["Jobs", "Frames", "Shells", "Openings", "Seams", "Pieces"];

    [Fact]
    public void Rooms_ReferenceOnlyRoomsBeforeThem()
    {
        foreach (var room in Line)
        {
            var project = XDocument.Load(Path.Combine(Repository.Root, "src", "CoverPattern." + room, "CoverPattern." + room + ".csproj"));
            var references = project.Descendants("ProjectReference")
                .Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value).Replace("CoverPattern.", string.Empty, StringComparison.Ordinal));

            Assert.All(references, reference => Assert.True(Array.IndexOf(Line, reference) < Array.IndexOf(Line, room), $"{room} references {reference}."));
        }
    }

    [Fact]
    public void FoldersOfPatterns_UseOnlyFoldersBeforeThem()
    {
        foreach (var file in Repository.Sources("src/CoverPattern.Patterns"))
        {
            var own = Array.IndexOf(PatternFolders, Repository.Parts(file)[2]);
            Assert.True(own >= 0, $"{file} lies in no folder of the room.");
            var used = PatternUsing().Matches(File.ReadAllText(file)).Select(match => Array.IndexOf(PatternFolders, match.Groups[1].Value));

            Assert.All(used, folder => Assert.True(folder <= own, $"{Path.GetFileName(file)} uses {PatternFolders[Math.Max(0, folder)]}."));
        }
    }

    [Fact]
    public void Nesting_KnowsNoTrade() => Assert.All(
        Repository.Sources("src/CoverPattern.Lays/Nesting"),
        file => Assert.DoesNotContain("using CoverPattern.Patterns.Pieces", File.ReadAllText(file), StringComparison.Ordinal));

    [Fact]
    public void Geometry_KnowsNoOtherRoom() => Assert.All(
        Repository.Sources("src/CoverPattern.Geometry"),
        file => Assert.DoesNotMatch(@"using CoverPattern\.(?!Geometry)", File.ReadAllText(file)));

    /// <summary>Rooms that compute know neither files nor the forms of files.</summary>
    [Fact]
    public void PureRooms_TouchNoFilesAndNoJson() => Assert.All(
        new[] { "Geometry", "Patterns", "Lays" }.SelectMany(room => Repository.Sources("src/CoverPattern." + room)),
        file => Assert.DoesNotMatch(@"using System\.(Text\.Json|IO)\b", File.ReadAllText(file)));

    [Fact]
    public void Files_AreShort() => Assert.All(
        Repository.Sources("src").Concat(Repository.Sources("tests")).Concat(Repository.Sources("tools")),
        file => Assert.True(File.ReadLines(file).Count() <= 300, $"{file} is longer than 300 lines: one room, or two?"));

    [Fact]
    public void PublicTypes_StandOneAFile_UnderTheirName() => Assert.All(Repository.Sources("src"), file =>
    {
        var types = PublicType().Matches(File.ReadAllText(file)).Select(match => match.Groups[1].Value).Distinct(StringComparer.Ordinal).ToArray();
        Assert.True(types.Length <= 1, $"{Path.GetFileName(file)} holds {string.Join(", ", types)}.");
    });

    [Fact]
    public void TypeNames_SayWhatTheThingIs() => Assert.All(Repository.Sources("src"), file =>
        Assert.DoesNotMatch(@"\b(class|record|struct|enum|interface) \w*(Manager|Helper|Utils|Util|Info|Impl|Base)\b", File.ReadAllText(file)));

    [Fact]
    public void Tests_MirrorTheSources()
    {
        foreach (var room in Line)
        {
            var tests = Path.Combine(Repository.Root, "tests", "CoverPattern." + room + ".Tests");
            Assert.True(Directory.EnumerateFiles(tests, "*Tests.cs", SearchOption.AllDirectories).Any(), $"{room} has no tests.");
        }
    }

    [GeneratedRegex(@"using CoverPattern\.Patterns\.(\w+);")]
    private static partial Regex PatternUsing();

    [GeneratedRegex(@"^public (?:static |sealed |abstract |readonly |partial )*(?:record struct|record|class|enum|struct|interface) (\w+)", RegexOptions.Multiline)]
    private static partial Regex PublicType();
}
