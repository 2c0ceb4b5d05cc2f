using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CsCheck;
using Xunit.Abstractions;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Covers over measured frames sew up: no symmetry, facets that bend, bands and gores where they are made.</summary>
public class SurveySewingTests(ITestOutputHelper output)
{
    private static readonly Gen<(Job Job, TrueMesh Frame)> Caps =
        from seed in Gen.Int[1, 1_000_000]
        from count in Gen.Int[8, 30]
        from rest in Orders
        let points = CapPoints(seed, count)
        select Surveyed(points, UpperHull(points), [], rest, seed);

    private static readonly Gen<(Job Job, TrueMesh Frame)> NoisyDomes =
        from frequency in Gen.Int[1, 4]
        from rows in Gen.Int[2, 2 * frequency]
        from noise in Gen.Double[0, 40]
        from bends in Gen.Int[0, 4]
        from seed in Gen.Int[1, 1_000_000]
        from rest in Orders
        let dome = Noisy(frequency, rows, noise, seed)
        let joined = Joined(dome.Points, dome.Faces, bends, seed)
        select Surveyed(dome.Points, joined.Faces, joined.Bends, rest, seed);

    private static Gen<(double StandOff, double Drop, int Form)> Orders =>
        from standOff in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 50])
        from drop in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 200])
        from form in Gen.Int[0, 3]
        select (standOff, drop, form);

    /// <summary>Bands and gores want rows that close round the frame, and flat parts; single facets are never refused for their panels.</summary>
    [Fact]
    public void Finish_SixtySurveys_AreRefusedWithReasonsOnly()
    {
        var (single, refused) = (0, new List<string>());

        Gen.OneOf(Caps, NoisyDomes).Sample(
            one =>
            {
                var faults = SewingJobs.FaultsOf(one.Job);
                Assert.All(faults, fault => Assert.True(fault.Place.Length > 0 && fault.Said.Length > 0 && fault.Allowed.Length > 0));
                lock (refused)
                {
                    single += one.Job.Panels.IsEmpty ? 1 : 0;
                    refused.AddRange(faults.Where(_ => one.Job.Panels.IsEmpty).Take(1).Select(fault => $"{fault.Place}: {fault.Said}"));
                }
            },
            iter: 60,
            print: Told);

        output.WriteLine("Of those cut into single facets " + Refusals.Told(single, refused));
        Assert.True(5 * refused.Count <= single, string.Join("\n", refused));
    }

    [Fact]
    public void Faults_ThirtyCapsOfRandomPoints_None() => Caps.Where(one => SewingJobs.FaultsOf(one.Job).IsEmpty).Sample(Sews, iter: 30, print: Told);

    [Fact]
    public void Faults_ThirtyNoisyDomes_None() => NoisyDomes.Where(one => SewingJobs.FaultsOf(one.Job).IsEmpty).Sample(Sews, iter: 30, print: Told);

    private static void Sews((Job Job, TrueMesh Frame) one)
    {
        var faults = SewingUp.Faults(SewingJobs.PiecesText(one.Job), SewingJobs.OrderOf(one.Job, one.Frame));
        Assert.True(faults.Count == 0, string.Join("\n", faults.Take(5)));
    }

    /// <summary>Points on a sphere, none near another, the whole of the upper half among them.</summary>
    private static SpacePoint[] CapPoints(int seed, int count)
    {
        var random = new Random(seed);
        var points = new List<SpacePoint>();
        for (var trial = 0; trial < 4000 && points.Count < count; trial++)
        {
            var point = 2500 * new SpacePoint(random.NextDouble() - 0.5, random.NextDouble() - 0.5, 0.9 * random.NextDouble()).Unit;
            if (points.TrueForAll(other => point.DistanceTo(other) > 500))
            {
                points.Add(point);
            }
        }

        return [.. points];
    }

    /// <summary>Triangles that no point lies above.</summary>
    private static List<int[]> UpperHull(SpacePoint[] points) =>
    [
        .. from i in Enumerable.Range(0, points.Length)
           from j in Enumerable.Range(i + 1, points.Length - i - 1)
           from k in Enumerable.Range(j + 1, points.Length - j - 1)
           let across = (points[j] - points[i]).Cross(points[k] - points[i])
           let up = across.Z > 0
           let normal = up ? across : -1 * across
           where points.All(point => normal.Dot(point - points[i]) < 1e-3 * normal.Length)
           select up ? new[] { i, j, k } : [i, k, j],
    ];

    private static (SpacePoint[] Points, List<int[]> Faces) Noisy(int frequency, int rows, double noise, int seed)
    {
        var random = new Random(seed);
        var frame = new TrueFrame(frequency, rows);
        double Off() => noise * ((2 * random.NextDouble()) - 1);
        return ([.. frame.Hubs.Select(hub => (2500 * hub) + new SpacePoint(Off(), Off(), Off()))], [.. frame.Facets.Select(facet => facet.Hubs)]);
    }

    /// <summary>Some pairs of neighbours listed as one facet of four hubs, which the shorter diagonal divides again where it bends.</summary>
    private static (List<int[]> Faces, List<(int From, int To)> Bends) Joined(SpacePoint[] points, List<int[]> faces, int count, int seed)
    {
        var random = new Random(seed);
        var (kept, bends) = (faces.ToList(), new List<(int, int)>());
        for (var trial = 0; trial < 50 && bends.Count < count; trial++)
        {
            var one = faces[random.Next(faces.Count)];
            var other = faces.Find(face => face != one && face.Intersect(one).Count() == 2);
            if (other is null || !kept.Contains(one) || !kept.Contains(other))
            {
                continue;
            }

            // From the tip of the one round: its tip, then the shared edge with the other's tip between.
            var tip = Array.FindIndex(one, hub => !other.Contains(hub));
            int[] ring = [one[tip], one[(tip + 1) % 3], other.Single(hub => !one.Contains(hub)), one[(tip + 2) % 3]];
            var (along, across) = (points[ring[1]].DistanceTo(points[ring[3]]), points[ring[0]].DistanceTo(points[ring[2]]));
            if (along > across - 1)
            {
                continue;
            }

            kept.Remove(one);
            kept.Remove(other);
            kept.Add(ring);
            bends.Add((ring[1], ring[3]));
        }

        return (kept, bends);
    }

    /// <summary>The job with the survey in shuffled order, and the truth: bends divided, plan centred on the base.</summary>
    private static (Job Job, TrueMesh Frame) Surveyed(SpacePoint[] points, List<int[]> faces, List<(int From, int To)> bends, (double StandOff, double Drop, int Form) order, int seed)
    {
        var random = new Random(seed);
        var listed = faces.ToArray();
        random.Shuffle(listed);
        var survey = new FrameSurvey(
            "",
            [.. points.Select((point, i) => new SurveyHub("", new Point3(point.X, point.Y, point.Z), FormattableString.Invariant($"corner {i + 1}")))],
            [.. listed.Select((face, i) => new SurveyFacet([.. random.Next(2) == 0 ? face : face.Reverse()], FormattableString.Invariant($"face {i + 1}")))],
            [])
        { WeldMm = 0.1, ClassesMm = 2 };
        var divided = faces.SelectMany(face => face.Length == 3 ? [face] : new[] { new[] { face[0], face[1], face[3] }, [face[1], face[2], face[3]] }).ToArray();
        var middle = MiddleOf(points, new TrueMesh(points, divided, bends).Base);
        var frame = new TrueMesh([.. points.Select(point => point - (middle with { Z = 0 }))], divided, bends);
        var dome = SewingJobs.Dome(new CoverSizes(1, 1, 1000, order.StandOff, order.Drop, 0.003));
        return (dome with
        {
            Frame = new FrameWish(default, 0, 0, "", default, SewingJobs.Mm(1000)) { Survey = survey },
            Seam = SeamWish.Of(MakeUpForm.Plain, SewingJobs.Mm(3)),
            Hem = new HemWish(SewingJobs.Mm(5), SewingJobs.Mm(1)),
            Panels = order.Form switch { 1 => [new PanelWish(PanelForm.Bands)], 2 => [new PanelWish(PanelForm.Gores)], _ => [] },
            Cloths = [dome.Cloths[0] with { RollWidth = SewingJobs.Mm(100_000) }],
        }, frame);
    }

    /// <summary>Middle of the line of base hubs by its length.</summary>
    private static SpacePoint MiddleOf(SpacePoint[] points, IReadOnlyList<int> ground)
    {
        var sides = ground.Select((hub, i) => (From: points[hub], To: points[ground[(i + 1) % ground.Count]])).ToArray();
        var round = sides.Sum(side => side.From.DistanceTo(side.To));
        return sides.Aggregate(default(SpacePoint), (sum, side) => sum + ((side.From.DistanceTo(side.To) / round / 2) * (side.From + side.To)));
    }

    private static string Told((Job Job, TrueMesh Frame) one) => FormattableString.Invariant($"{one.Frame.Facets.Count} facets, bent {one.Frame.Bends.Count}, stand-off {one.Job.StandOff.TubeRadius.Millimetres} drop {one.Job.Skirt.Drop.Millimetres} ") + string.Join(' ', one.Job.Panels.Select(panel => panel.Form));
}
