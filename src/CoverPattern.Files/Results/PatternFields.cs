using System.Text.Json.Nodes;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Files.Results;

/// <summary>The fields of one pattern in pieces.json.</summary>
internal static class PatternFields
{
    public static JsonNode Write(Pattern pattern) => new JsonObject
    {
        ["id"] = pattern.Id,
        ["cloth"] = pattern.Cloth,
        ["kind"] = JsonWords.Of(pattern.Kind),
        ["quantity"] = pattern.Quantity,
        ["sewLine"] = JsonWords.Of(pattern.SewLine),
        ["cutLine"] = JsonWords.Of(pattern.CutLine),
        ["runs"] = JsonWords.List(pattern.Runs, Write),
        ["folds"] = JsonWords.List(pattern.Folds, fold => Segment(fold.From, fold.To)),
        ["notches"] = JsonWords.List(pattern.Notches, Write),
        ["drills"] = JsonWords.List(pattern.Drills, Write),
        ["lines"] = JsonWords.List(pattern.Lines, Write),
        ["cutouts"] = JsonWords.List(pattern.Cutouts, Write),
        ["grain"] = Segment(pattern.Grain.From, pattern.Grain.To),
        ["facets"] = JsonWords.List(pattern.Facets, ring => JsonWords.Of(ring)),
        ["labelSpot"] = JsonWords.Of(pattern.LabelSpot),
        ["labelRadiusMm"] = JsonWords.Of(pattern.LabelRadius),
    };

    public static Pattern Read(JsonPlace place)
    {
        place.AllowOnly(
            "id", "cloth", "kind", "quantity", "sewLine", "cutLine", "runs", "folds", "notches", "drills", "lines", "cutouts", "grain", "facets",
            "labelSpot", "labelRadiusMm");
        var sewLine = place.Field("sewLine").Ring();
        var runs = place.Field("runs").Items(run => ReadRun(run, sewLine.Length));
        var cutouts = place.Field("cutouts").Items(ReadCutout);
        return new Pattern(
            place.Field("id").Name(),
            place.Field("cloth").Name(),
            place.Field("kind").Word<PieceKind>(),
            place.Field("quantity").Whole(0, int.MaxValue),
            sewLine,
            place.Field("cutLine").Ring(),
            runs,
            place.Field("folds").Items(ReadFold),
            place.Field("notches").Items(notch => ReadNotch(notch, runs.Length + cutouts.Length)),
            place.Field("drills").Items(ReadDrill),
            place.Field("lines").Items(ReadLine),
            cutouts,
            ReadGrain(place.Field("grain")),
            place.Field("facets").Items(ring => ring.Ring()),
            place.Field("labelSpot").Point(),
            place.Field("labelRadiusMm").Length());
    }

    private static JsonObject Segment(Point2 from, Point2 to) => new()
    {
        ["from"] = JsonWords.Of(from),
        ["to"] = JsonWords.Of(to),
    };

    private static JsonNode Write(EdgeRun run) => new JsonObject
    {
        ["role"] = JsonWords.Of(run.Role),
        ["arcClass"] = run.ArcClass,
        ["makeUp"] = run.MakeUp,
        ["side"] = JsonWords.Of(run.Side),
        ["from"] = run.From,
        ["to"] = run.To,
        ["lengthMm"] = JsonWords.Of(run.LengthMm),
        ["allowanceMm"] = JsonWords.Of(run.AllowanceMm),
    };

    private static JsonNode Write(Notch notch) => new JsonObject
    {
        ["run"] = notch.Run,
        ["atMm"] = JsonWords.Of(notch.AtMm),
        ["form"] = JsonWords.Of(notch.Form),
        ["onSewLine"] = JsonWords.Of(notch.OnSewLine),
        ["outer"] = JsonWords.Of(notch.Outer),
        ["inner"] = JsonWords.Of(notch.Inner),
    };

    private static JsonNode Write(DrillMark drill) => new JsonObject
    {
        ["at"] = JsonWords.Of(drill.At),
        ["purpose"] = drill.Purpose,
        ["pierced"] = drill.IsPierced,
    };

    private static JsonNode Write(MarkLine line) => new JsonObject
    {
        ["path"] = JsonWords.Of(line.Path),
        ["purpose"] = line.Purpose,
    };

    private static JsonNode Write(Cutout cutout) => new JsonObject
    {
        ["purpose"] = cutout.Purpose,
        ["rim"] = JsonWords.Of(cutout.Rim),
        ["cutLine"] = JsonWords.Of(cutout.CutLine),
        ["run"] = Write(cutout.Run),
    };

    private static EdgeRun ReadRun(JsonPlace place, int corners)
    {
        place.AllowOnly("role", "arcClass", "makeUp", "side", "from", "to", "lengthMm", "allowanceMm");
        return new EdgeRun(
            place.Field("from").Whole(0, corners),
            place.Field("to").Whole(0, corners),
            place.Field("role").Word<EdgeRole>(),
            place.Field("arcClass").Text(),
            place.Field("makeUp").Text(),
            place.Field("side").Word<EdgeSide>(),
            place.Field("lengthMm").Length(),
            place.Field("allowanceMm").Number());
    }

    private static Notch ReadNotch(JsonPlace place, int runs)
    {
        place.AllowOnly("run", "atMm", "form", "onSewLine", "outer", "inner");
        return new Notch(
            place.Field("run").Whole(0, runs),
            place.Field("atMm").Length(),
            place.Field("form").Word<NotchForm>(),
            place.Field("onSewLine").Point(),
            place.Field("outer").Point(),
            place.Field("inner").Point());
    }

    private static MarkLine ReadLine(JsonPlace place)
    {
        place.AllowOnly("path", "purpose");
        return new MarkLine(place.Field("path").Items(point => point.Point()), place.Field("purpose").Text());
    }

    private static Cutout ReadCutout(JsonPlace place)
    {
        place.AllowOnly("purpose", "rim", "cutLine", "run");
        var rim = place.Field("rim").Ring();
        var run = ReadRun(place.Field("run"), rim.Length);
        return run.IsClosed
            ? new Cutout(place.Field("purpose").Text(), rim, place.Field("cutLine").Ring(), run)
            : throw place.Field("run").Fault($"the rim of a hole must end where it begins, at corner {run.From}, not {run.To}.");
    }

    private static FoldLine ReadFold(JsonPlace place)
    {
        place.AllowOnly("from", "to");
        return new FoldLine(place.Field("from").Point(), place.Field("to").Point());
    }

    private static GrainLine ReadGrain(JsonPlace place)
    {
        place.AllowOnly("from", "to");
        return new GrainLine(place.Field("from").Point(), place.Field("to").Point());
    }

    private static DrillMark ReadDrill(JsonPlace place)
    {
        place.AllowOnly("at", "purpose", "pierced");
        return new DrillMark(place.Field("at").Point(), place.Field("purpose").Text(), place.Field("pierced").Flag());
    }
}
