using System;
using System.IO;
using System.Linq;
using System.Text;
using System.Threading;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Results;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>
/// The sample with everything in: each kind of opening, pipe, roof and liner is sewn up by itself in its own tests; here all
/// of them together, by what their pieces say of each other.
/// </summary>
public class LodgeTests
{
    internal const string Name = "lodge-2v";

    private static readonly Lazy<SewnFile> File = new(() =>
    {
        var text = System.IO.File.ReadAllBytes(Path.Combine(SampleFolder.Path, Name + ".json"));
        var outcome = Corridor.Run(JobReader.Read(text).Job!, text, progress: null, CancellationToken.None);
        return SewnFile.Read(Encoding.UTF8.GetString(PiecesFile.Write(outcome.Result!.Pieces)));
    });

    [Fact]
    public void Pieces_OfEachKind_AreAsManyAsTheJobAsks()
    {
        // By hand from the job file: a door with flap, screen, drip flap, threshold and three zips' strips; two vents with flap,
        // screen, drip flap and two strips each; a high vent with flap, hood and screen; a window over three facets; four round
        // windows with pane, ring and screen; one pipe; a bag of three; a roof of five facets with a screen of its own.
        var count = File.Value.Pieces.CountBy(piece => File.Value.Patterns.First(pattern => pattern.Id == piece.Pattern).Kind).ToDictionary(StringComparer.Ordinal);

        Assert.Equal((4, 5, 4), (count["windowRing"], count["pane"], count["flap"]));
        Assert.Equal((1, 1, 1, 2), (count["hood"], count["pipePatch"], count["pipeSleeve"], count["pipeFlap"]));
        Assert.Equal((5, 3), (count["roofFlap"], count["bag"]));
        Assert.Equal(5 + 3 + 3, count["coverStrip"]);
        Assert.Equal(4 + 1 + 2 + 1, count["screen"]);

        // 40 facets, 14 of which hold an opening or the pipe's clear distance.
        Assert.Equal(40 - 14, count["pad"]);
    }

    [Fact]
    public void Pieces_PartnerEdges_AreEquallyLongAndNameEachOther()
    {
        var patterns = File.Value.Patterns.ToDictionary(pattern => pattern.Id);
        var pieces = File.Value.Pieces.ToDictionary(piece => piece.Label);
        var joined = 0;
        foreach (var piece in File.Value.Pieces)
        {
            foreach (var (run, i) in piece.Runs.Select((run, i) => (run, i)).Where(entry => entry.run.Partner is not null))
            {
                var other = pieces[run.Partner!];

                Assert.Equal((piece.Label, i, run.Arc), (other.Runs[run.PartnerRun].Partner, other.Runs[run.PartnerRun].PartnerRun, other.Runs[run.PartnerRun].Arc));
                Assert.Equal(LengthOf(patterns[piece.Pattern], i), LengthOf(patterns[other.Pattern], run.PartnerRun), 0.01);
                joined++;
            }
        }

        Assert.True(joined > 300, $"only {joined} edges have a partner");
    }

    [Fact]
    public void Pieces_InnerShell_IsJoinedToItselfAlone()
    {
        foreach (var piece in File.Value.Pieces)
        {
            Assert.All(piece.Runs.Where(run => run.Partner is not null), run => Assert.Equal(piece.Label[0] == 'I', run.Partner![0] == 'I'));
        }
    }

    /// <summary>Along the drawn line, not as the file says.</summary>
    private static double LengthOf(SewnPattern pattern, int run)
    {
        var path = pattern.PathOf(run);
        return path.Skip(1).Select((point, i) => path[i].DistanceTo(point)).Sum();
    }
}
