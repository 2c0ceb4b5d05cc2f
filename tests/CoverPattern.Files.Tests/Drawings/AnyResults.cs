using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Results;
using CoverPattern.Lays;
using CoverPattern.Lays.Estimates;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;
using CsCheck;

namespace CoverPattern.Files.Tests.Drawings;

/// <summary>Results of random job files, made by the real stages one after the other.</summary>
internal static class AnyResults
{
    private static readonly Gen<string> Panels = AnyOf(
        string.Empty,
        "\"panels\": [ { \"as\": \"bands\", \"rows\": \"1\" }, { \"as\": \"facets\", \"rows\": \"rest\" } ],",
        "\"panels\": [ { \"as\": \"bands\" } ],",
        "\"panels\": [ { \"as\": \"gores\" } ],");

    private static readonly Gen<string> Seams = AnyOf(
        "\"makeUp\": \"plain\", \"width\": \"12 mm\"",
        "\"makeUp\": \"lapped\", \"width\": \"25 mm\"",
        "\"makeUp\": \"felled\", \"width\": \"10 mm\", \"stopAtHubs\": true",
        "\"makeUp\": \"lapped\", \"width\": \"20 mm\", \"closing\": {}",
        "\"makeUp\": \"plain\", \"width\": \"8 mm\", \"corners\": \"squared\"");

    private static readonly Gen<string> Skirts = AnyOf(
        "\"drop\": \"60 mm\"",
        "\"drop\": \"150 mm\", \"shape\": \"slope\"",
        "\"drop\": \"120 mm\", \"shape\": \"chords\"",
        "\"drop\": \"110 mm\", \"splash\": { \"cloth\": \"coated\", \"width\": \"260 mm\" }");

    private static readonly Gen<string> Hems = AnyOf(
        string.Empty,
        "\"hem\": { \"kind\": \"turned\", \"fixings\": { \"spacing\": \"400 mm\", \"height\": \"25 mm\" } },",
        "\"hem\": { \"fitting\": \"50 mm\" },");

    private static readonly Gen<string> Windows = AnyOf(
        string.Empty,
        string.Empty,
        "\"windows\": [ { \"facets\": [\"F1.02\"], \"aperture\": \"380 mm\", \"pane\": \"clear\", \"screen\": \"mesh\" } ],");

    private static readonly Gen<string> Openings = AnyOf(
        string.Empty,
        "\"openings\": [ { \"kind\": \"highVent\", \"outline\": \"rectangle\", \"width\": \"220 mm\", \"height\": \"160 mm\", \"facet\": \"F2.02\", \"screen\": \"mesh\" }, { \"kind\": \"slit\", \"outline\": \"line\", \"height\": \"200 mm\", \"facet\": \"F2.04\" } ],",
        "\"openings\": [ { \"kind\": \"window\", \"outline\": \"rounded\", \"width\": \"420 mm\", \"height\": \"180 mm\", \"corner\": \"60 mm\", \"facet\": \"F1.03\", \"sheet\": \"clear\" } ],",
        "\"openings\": [ { \"kind\": \"baseVent\", \"outline\": \"rectangle\", \"width\": \"300 mm\", \"height\": \"500 mm\", \"above\": \"50 mm\", \"towards\": 140, \"flap\": \"canvas\", \"screen\": \"mesh\" } ],");

    private static readonly Gen<string> Marks = AnyOf(
        string.Empty,
        "\"marks\": { \"hubPatches\": \"outside\" },");

    /// <summary>A random job file.</summary>
    public static Gen<string> Jobs { get; } = Gen.Select(
        AnyOf("1, \"cut\": \"2/3\"", "2, \"cut\": \"1/2\"", "3, \"cut\": \"5/8\"", "3, \"cut\": \"3/8\"", "4, \"cut\": \"1/2\""),
        AnyOf("1.6 m", "2.4 m", "3.1 m", "9 ft"),
        Gen.Select(Panels, Seams, Windows, Openings),
        Gen.Select(Skirts, Hems, Marks),
        (frame, radius, pieces, foot) => $$"""
            {
              "schemaVersion": 1, "title": "Any", "date": "2026-03-01",
              "frame": { "frequency": {{frame}}, "size": { "radius": "{{radius}}" } },
              "standOff": { "tubeRadius": "16 mm", "hubHeight": "22 mm" },
              "skirt": { {{foot.Item1}} },
              "seam": { {{pieces.Item2}} },
              {{pieces.Item1}} {{pieces.Item3}} {{pieces.Item4}} {{foot.Item2}} {{foot.Item3}}
              "cloths": [
                { "name": "canvas", "rollWidth": "3.2 m" }, { "name": "coated", "rollWidth": "3.2 m" },
                { "name": "clear", "rollWidth": "1.4 m" }, { "name": "mesh", "rollWidth": "1.4 m" }
              ],
              "lay": { "effort": 1 }
            }
            """);

    private static Gen<string> AnyOf(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);

    /// <summary>What the stages make of a job file; null when the job is refused before anything is cut.</summary>
    /// <param name="text">A job file.</param>
    /// <param name="isLaid">Whether pieces are laid, which takes most of the time.</param>
    public static Result? Make(string text, bool isLaid)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        var reading = JobReader.Read(bytes);
        if (reading.Job is not { } job)
        {
            throw new InvalidOperationException(string.Join("; ", reading.Faults.Select(fault => $"{fault.Place}: {fault.Said}, allowed {fault.Allowed}")) + text);
        }

        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        var panels = PanelPlanner.Plan(job, frame, shell);
        if (!panels.Faults.IsEmpty)
        {
            return null;
        }

        var openings = OpeningLayer.Lay(job, frame, shell);
        var plan = SeamPlanner.Plan(job, shell, panels);
        plan = RoofLine.Find(job, frame, shell)?.ZipIn(plan) ?? plan;
        if (SeamWishCheck.Faults(job, shell, plan).Any() || openings.Faults.Any() || OpeningSeamCheck.Faults(job, shell, plan, openings.Windows).Any() || OpeningSeamCheck.Faults(job, shell, plan, openings.Openings).Any() || OpeningSeamCheck.Faults(plan, openings.Slits).Any()
            || RoofCheck.Faults(job, frame, shell, plan, openings).Any() || SeamZipCheck.Faults(job, shell, plan, openings).Any() || PipeSeamCheck.Faults(job, shell, plan, openings.Pipes).Any() || SplashCheck.Faults(job, shell, openings.Windows).Any())
        {
            return null;
        }

        var cut = HubStops.Shorten(job, shell, SurfaceDrawing.On(Subdivider.Cut(shell, plan, openings.Regions), openings.Lines));
        var flat = PanelFlattener.Flatten(cut);
        ImmutableArray<AddedPiece> added =
        [
            .. WindowPieces.Make(job, openings.Windows),
            .. OpeningPieces.Make(job, openings, cut),
            .. PipePieces.Make(shell, plan, openings.Pipes),
            .. HubPatchPieces.Make(job, shell, cut),
            .. SplashBand.Make(job, shell, cut, flat),
            .. RoofFlap.Make(job, frame, shell, cut),
        ];
        var finishing = PieceFinisher.Finish(job, shell, cut, flat, added);
        if (!finishing.Faults.IsEmpty)
        {
            return null;
        }

        var set = finishing.Set with { Fittings = [.. OpeningFittings.Of(job, openings, added), .. RoofFittings.Of(job, frame, shell, cut, added)] };
        if ((isLaid ? Laid(job, set) : []) is not { } lays)
        {
            return null;
        }

        return new Result(bytes, job, frame, shell, cut, set, lays, Estimator.Count(job, set, lays), []) { Openings = openings.Openings, Pipes = openings.Pipes };
    }

    /// <summary>Null where pieces, such as gores across the roll, are wider than it: a right refusal, as faults are.</summary>
    private static ImmutableArray<Lay>? Laid(Job job, PieceSet set)
    {
        try
        {
            return LayPlanner.Plan(job, set, progress: null, default);
        }
        catch (RollTooNarrowException)
        {
            return null;
        }
    }
}
