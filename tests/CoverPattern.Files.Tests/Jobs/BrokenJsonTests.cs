using System;
using System.Linq;
using System.Text;
using CoverPattern.Files.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

public sealed class BrokenJsonTests
{
    // Lines and columns counted by hand, both from 1, columns in characters.
    [Theory]
    [InlineData("", 1, 1)]
    [InlineData("{\n  \"ease\": 0,\n  oops\n}", 3, 3)]
    [InlineData("{ \"ü\": oops }", 1, 8)]
    [InlineData("{ \"😀\": oops }", 1, 8)]
    [InlineData("{\r\n\"ease\": 0", 2, 10)]
    [InlineData("{} {}", 1, 4)]
    [InlineData("/* a\n b */ {\n\"ease\" 0}", 3, 8)]
    [InlineData("{ \"covers\": 01 }", 1, 14)]
    public void Read_BrokenText_IsOneFaultWithLineAndColumn(string json, int line, int column)
    {
        var reading = JobReader.Read(json);

        var fault = Assert.Single(reading.Faults);
        Assert.Equal("", fault.Place);
        Assert.StartsWith(FormattableString.Invariant($"broken JSON at line {line}, column {column}: "), fault.Said, StringComparison.Ordinal);
        Assert.DoesNotContain("BytePosition", fault.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_BytesThatAreNotText_AreOneFaultWithLineAndColumn()
    {
        byte[] bytes = [.. "{\n\"title\": \"caf"u8, 0xE9, .. "\" }"u8];

        var fault = Assert.Single(JobReader.Read(bytes).Faults);

        Assert.Equal("broken JSON at line 2, column 14: this byte is not UTF-8", fault.Said);
    }

    [Fact]
    public void Read_HalfACharacter_IsAFaultAtItsPlace()
    {
        var fault = Assert.Single(JobReader.Read("""{ "lay": { "turns": "\ud800" } }""").Faults);

        Assert.Equal("lay.turns", fault.Place);
    }

    [Fact]
    public void Read_HalfACharacterInAKey_IsAFault() =>
        Assert.Equal("lay", Assert.Single(JobReader.Read("""{ "lay": { "\udc00": 1 } }""").Faults).Place);

    [Fact]
    public void Read_HalfACharacterInText_IsReadAsTheReplacementMark()
    {
        var reading = JobReader.Read("{ \"ti\uD800tle\": 1 }");

        Assert.Contains(reading.Faults, fault => fault.Place == "[\"ti\\uFFFDtle\"]");
    }

    [Fact]
    public void Read_HundredThousandBrackets_IsOneFault()
    {
        var reading = JobReader.Read(new string('[', 100_000));

        Assert.Contains("depth", Assert.Single(reading.Faults).Said, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_MoreThanFourMegabytes_IsRefusedUnread()
    {
        var bytes = Encoding.UTF8.GetBytes("{}" + new string(' ', 4 * 1024 * 1024));

        Assert.Equal("a job file has at most 4 MB", Assert.Single(JobReader.Read(bytes).Faults).Allowed);
    }

    [Fact]
    public void Read_HugeKeysAndWords_AreCutShort()
    {
        var reading = JobReader.Read("{ \"" + new string('k', 1_000_000) + "\": 1, \"title\": \"" + new string('w', 1_000_000) + "\" }");

        Assert.All(reading.Faults, fault => Assert.InRange(fault.Place.Length + fault.Said.Length, 1, 200));
        Assert.Contains(reading.Faults, fault => fault.Place == "title");
    }

    [Fact]
    public void Read_ControlCharactersInWords_DoNotReachTheMessage()
    {
        // U+009B begins terminal commands and is allowed raw in JSON.
        var reading = JobReader.Read("{ \"lay\": { \"turns\": \"\u009b2J\", \"\u009bx\": 1 } }");

        Assert.DoesNotContain(reading.Faults.SelectMany(fault => fault.Place + fault.Said + fault.Allowed), char.IsControl);
    }

    [Fact]
    public void Read_HundredThousandUnknownKeys_StopsAfterAThousandFaults()
    {
        var reading = JobReader.Read("{" + string.Join(",", Enumerable.Range(0, 100_000).Select(i => $"\"k{i}\":0")) + "}");

        Assert.Equal(1001, reading.Faults.Length);
        Assert.Equal("more than 1000 faults", reading.Faults[^1].Said);
    }

    [Theory]
    [InlineData("[]", "an empty list")]
    [InlineData("null", "null")]
    [InlineData("5", "5")]
    public void Read_NoSectionAtTheTop_IsOneFault(string json, string said)
    {
        var fault = Assert.Single(JobReader.Read(json).Faults);

        Assert.Equal(("", said), (fault.Place, fault.Said));
    }
}
