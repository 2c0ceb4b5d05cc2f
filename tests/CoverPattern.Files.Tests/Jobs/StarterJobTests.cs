using System;
using System.Linq;
using CoverPattern.Files.Jobs;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CsCheck;

namespace CoverPattern.Files.Tests.Jobs;

public sealed class StarterJobTests
{
    private static readonly DateOnly Day = new(2026, 5, 4);

    [Fact]
    public void Write_DefaultAnswers_ReadBackWithTheDefaultsStillAssumed()
    {
        var reading = JobReader.Read(StarterJob.Write(new StarterAnswers(Day)));

        Assert.Empty(reading.Faults);
        Assert.Equal(Day, reading.Job!.Date);
        Assert.Equal(new FrameWish(FrameFamily.Icosahedron, 3, 5, "5/8", FrameMeasure.Diameter, new Measure(5000, "5 m")), reading.Job.Frame);
        // 32 defaults of the least job (JobReaderTests), and two of fixings, which a starter job asks for; nothing was answered but what has none.
        Assert.Equal(36, reading.Job.Assumed.Length);
        Assert.True(JobSchemaTests.Accepts(StarterJob.Write(new StarterAnswers(Day))));
        // A line to fill in, though nobody gave a title.
        Assert.Contains("\n  \"title\": \"\",\n", StarterJob.Write(new StarterAnswers(Day)), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_SixAnswers_ReadBackAsGiven()
    {
        var answers = new StarterAnswers(Day)
        {
            Title = "The \"Long\" \\ field",
            Measure = FrameMeasure.FloorDiameter,
            Size = "16' 4 3/8\"",
            Frequency = 4,
            Cut = "7",
            Drop = "0 mm",
            TubeRadius = "1/2 in",
            HubHeight = "3/4 in",
            ClothName = "duck",
            RollWidth = "72 in",
            MakeUp = MakeUpForm.Welded,
        };

        var job = JobReader.Read(StarterJob.Write(answers)).Job!;

        Assert.Equal("The \"Long\" \\ field", job.Title);
        Assert.Equal((FrameMeasure.FloorDiameter, "16' 4 3/8\"", 4, 7), (job.Frame.Measure, job.Frame.Size.Typed, job.Frame.Frequency, job.Frame.Rows));
        // By hand: 3/4 in.
        Assert.Equal((0, 19.05), (job.Skirt.Drop.Millimetres, job.StandOff.Millimetres));
        Assert.Equal(("duck", "72 in"), (job.Cloths.Single().Name, job.Cloths.Single().RollWidth.Typed));
        Assert.Equal((MakeUpForm.Welded, 40, 60), (job.Seam.MakeUp.Form, job.Seam.MakeUp.Width.Millimetres, job.Hem.Allowance));
        Assert.DoesNotContain(job.Assumed, assumption => assumption.Place is "seam.makeUp" or "skirt.drop" or "standOff.tubeRadius");
    }

    [Fact]
    public void Write_EveryCommentedDefault_CanBeTakenIn()
    {
        // Taking the "// " away before a key must give a job that assumes nothing.
        var text = StarterJob.Write(new StarterAnswers(Day) { MakeUp = MakeUpForm.Felled });
        var taken = string.Join('\n', text.Split('\n').Select(line => line.TrimStart().StartsWith("// \"", StringComparison.Ordinal) ? line.Replace("// ", "", StringComparison.Ordinal) : line));

        var reading = JobReader.Read(taken);

        Assert.Empty(reading.Faults);
        Assert.Empty(reading.Job!.Assumed);
    }

    [Theory]
    [InlineData("five metres", "frame.size.diameter")]
    [InlineData("5000", "frame.size.diameter")]
    [InlineData("\" }, \"x\": {", "frame.size.diameter")]
    public void Write_WrongAnswer_IsAFaultAtItsPlace(string size, string place) =>
        Assert.Equal(place, Assert.Single(JobReader.Read(StarterJob.Write(new StarterAnswers(Day) { Size = size })).Faults).Place);

    [Fact]
    public void Write_AnyWords_StayInTheirQuotes() =>
        Gen.Select(Gen.String, Gen.String).Sample((title, name) =>
        {
            var reading = JobReader.Read(StarterJob.Write(new StarterAnswers(Day) { Title = title, ClothName = name }));

            Assert.All(reading.Faults, fault => Assert.Contains(fault.Place, new[] { "title", "cloths[0].name" }));
        });

    [Fact]
    public void Write_AnyFrame_ReadsBack() =>
        Gen.Select(Gen.Int[1, 8], Gen.Int[1, 23], Gen.Bool, Gen.Enum<MakeUpForm>()).Where((frequency, rows, _, _) => rows <= CutNames.MostRows(frequency)).Sample((frequency, rows, named, makeUp) =>
        {
            var cut = named ? CutNames.Of(frequency, rows).Name : FormattableString.Invariant($"{rows}");

            var reading = JobReader.Read(StarterJob.Write(new StarterAnswers(Day) { Frequency = frequency, Cut = cut, MakeUp = makeUp }));

            Assert.Empty(reading.Faults);
            Assert.Equal((frequency, rows, makeUp), (reading.Job!.Frame.Frequency, reading.Job.Frame.Rows, reading.Job.Seam.MakeUp.Form));
        });
}
