using System;
using System.Linq;
using System.Text;
using CoverPattern.Files.Plots;

namespace CoverPattern.Files.Tests.Plots;

public class MachineFileTests
{
    [Fact]
    public void Read_WhatWasWritten_IsTheSame()
    {
        var wish = new PlotWish(new PlotMachine(MarkedSide.Table, 4, 5, 6, PlotOrigin.Centre, PenMoves.Relative, IsSixteenBit: true), 2500.5);

        Assert.Equal((wish, 0), (MachineFile.Read(MachineFile.Write(wish)).Wish, MachineFile.Read(MachineFile.Write(wish)).Faults.Length));
        Assert.Equal(wish with { LongestMm = null }, MachineFile.Read(MachineFile.Write(wish with { LongestMm = null })).Wish);
    }

    [Fact]
    public void Read_OnlyTheSide_TakesTheUsual()
    {
        Assert.Equal(new PlotWish(new PlotMachine(MarkedSide.Table), 5000), MachineFile.Read("""{ "marks": "table", "section": "5 m" }"""u8).Wish);
    }

    [Fact]
    public void Read_SeveralFaults_SaysAll()
    {
        const string text = """{ "origin": "middle", "moves": 3, "sixteenBit": "yes", "section": "1 mm", "drawPen": 9, "knife": 1, "notchPen": 1.5, "notchPen": 2 }""";

        var (wish, faults) = MachineFile.Read(Encoding.UTF8.GetBytes(text));

        Assert.Null(wish);
        Assert.Equal(["drawPen", "knife", "marks", "moves", "notchPen", "origin", "section", "sixteenBit"], faults.Select(fault => fault.Place).Distinct().Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{ \"marks\": ")]
    [InlineData("\"up\"")]
    public void Read_NoSection_SaysSo(string text)
    {
        var (wish, faults) = MachineFile.Read(Encoding.UTF8.GetBytes(text));

        Assert.Null(wish);
        Assert.Single(faults);
    }
}
