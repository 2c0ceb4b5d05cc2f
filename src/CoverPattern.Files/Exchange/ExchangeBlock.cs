using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Exchange;

/// <summary>Reads one block of an exchange file as a piece.</summary>
internal sealed class ExchangeBlock
{
    // Corners of one line: exact checks compare all pairs of edges. Lines of one block; own choices against hostile files.
    private const int MostCorners = 4_000;
    private const int MostLines = 20_000;

    // An outline whose ends meet nearer than this is closed, millimetres: a step of the file's last decimal either way.
    private const double ClosedWithin = 0.02;

    private readonly string name;
    private readonly ExchangeFaults faults;
    private readonly SortedDictionary<string, int> aside;
    private readonly Dictionary<string, string> texts = new(StringComparer.Ordinal);
    private readonly List<(ExchangeRecord Record, ImmutableArray<Point2> Points)> boundaries = [];
    private readonly Dictionary<string, ImmutableArray<ImmutableArray<Point2>>.Builder> lines = new(StringComparer.Ordinal);
    private readonly ImmutableArray<ExchangeNotch>.Builder notches = ImmutableArray.CreateBuilder<ExchangeNotch>();
    private readonly ImmutableArray<ExchangeDrill>.Builder drills = ImmutableArray.CreateBuilder<ExchangeDrill>();
    private readonly ImmutableArray<ExchangeNote>.Builder notes = ImmutableArray.CreateBuilder<ExchangeNote>();
    private int count;

    private ExchangeBlock(string name, ExchangeFaults faults, SortedDictionary<string, int> aside) => (this.name, this.faults, this.aside) = (name, faults, aside);

    /// <summary>Reads a block; null when a fault was found in it.</summary>
    /// <param name="records">BLOCK and what follows it, without ENDBLK.</param>
    /// <param name="faults">Takes what is wrong.</param>
    /// <param name="aside">Counts what is left aside.</param>
    internal static ExchangePiece? Read(List<ExchangeRecord> records, ExchangeFaults faults, SortedDictionary<string, int> aside)
    {
        var block = new ExchangeBlock(records[0].First(2), faults, aside);
        for (var i = 1; i < records.Count; i++)
        {
            i = block.Take(records, i);
        }

        return block.Piece(records[0]);
    }

    /// <summary>Takes one entity; returns the index of its last record.</summary>
    private int Take(List<ExchangeRecord> records, int at)
    {
        var record = records[at];
        if (++count > MostLines)
        {
            if (count == MostLines + 1)
            {
                faults.Add(name, record, $"the block has more than {MostLines} entities. Draw the piece plainer.");
            }

            return at;
        }

        switch (record.Kind)
        {
            case "POLYLINE":
                return TakePolyline(records, at);
            case "LWPOLYLINE":
                TakeLine(record, Corners(record), Flag(record));
                break;
            case "LINE":
                TakeLine(record, [faults.Point(name, record), faults.Point(name, record, 11)], isClosed: false);
                break;
            case "POINT":
                TakePoint(record);
                break;
            case "TEXT":
                TakeText(record);
                break;
            default:
                Refuse(record);
                break;
        }

        return at;
    }

    private int TakePolyline(List<ExchangeRecord> records, int at)
    {
        var points = new List<Point2>();
        var i = at + 1;
        for (; i < records.Count && records[i].Kind == "VERTEX"; i++)
        {
            RefuseBulge(records[at], records[i]);
            points.Add(faults.Point(name, records[i]));
        }

        if (i >= records.Count || records[i].Kind != "SEQEND")
        {
            faults.Add(name, records[at], "the POLYLINE does not end with SEQEND.");
            i--;
        }

        TakeLine(records[at], points, Flag(records[at]));
        return i;
    }

    private List<Point2> Corners(ExchangeRecord record)
    {
        RefuseBulge(record, record);
        var points = new List<Point2>();
        foreach (var tag in record.Tags.Where(tag => tag.Code is 10 or 20))
        {
            var number = faults.Scale * faults.Number(name, record, tag.Value, tag.Line);
            if (tag.Code == 10)
            {
                points.Add(new Point2(number, 0));
            }
            else if (points.Count > 0)
            {
                points[^1] = new Point2(points[^1].X, number);
            }
        }

        return points;
    }

    private static bool Flag(ExchangeRecord record) => int.TryParse(record.First(70), NumberStyles.Integer, CultureInfo.InvariantCulture, out var flags) && (flags & 1) != 0;

    private void RefuseBulge(ExchangeRecord line, ExchangeRecord corner)
    {
        if (Matters(line.Layer) && faults.Number(name, corner, 42) != 0)
        {
            faults.Add(name, corner, "an arc (group code 42): only straight steps are read. Save curves as points.");
        }
    }

    private void TakeLine(ExchangeRecord record, List<Point2> points, bool isClosed)
    {
        if (!Matters(record.Layer))
        {
            Aside(record);
            return;
        }

        if (points.Count is < 2 or > MostCorners)
        {
            faults.Add(name, record, $"a line of {points.Count} corners: 2 to {MostCorners} are read.");
            return;
        }

        if (record.Layer == ExchangeLayer.Boundary)
        {
            boundaries.Add((record, Boundary(record, points, isClosed)));
            return;
        }

        if (!lines.TryGetValue(record.Layer, out var list))
        {
            lines.Add(record.Layer, list = ImmutableArray.CreateBuilder<ImmutableArray<Point2>>());
        }

        list.Add(isClosed && points[0] != points[^1] ? [.. points, points[0]] : [.. points]);
    }

    private ImmutableArray<Point2> Boundary(ExchangeRecord record, List<Point2> points, bool isClosed)
    {
        var gap = Point2.Distance(points[0], points[^1]);
        if (!isClosed && gap > ClosedWithin)
        {
            faults.Add(name, record, FormattableString.Invariant($"the boundary is open: its ends are {gap:0.00} mm apart. Close it."));
        }

        var ring = Grid.Snap(gap <= ClosedWithin && points.Count > 3 ? points.SkipLast(1) : points);
        if (!ExactPredicates.IsSimple(Rings.ToSteps(ring)))
        {
            faults.Add(name, record, "the boundary meets itself or has a corner twice.");
        }

        return Rings.SignedArea(ring) < 0 ? [.. ring.Reverse()] : ring;
    }

    private void TakePoint(ExchangeRecord record)
    {
        var at = faults.Point(name, record);
        var height = faults.Scale * faults.Number(name, record, 30);
        if (record.Layer == ExchangeLayer.Drills)
        {
            drills.Add(new ExchangeDrill(at, height));
        }
        else if (record.Layer == ExchangeLayer.Notch || ExchangeLayer.OtherNotches.Contains(record.Layer))
        {
            var kind = (ExchangeNotchKind)int.Parse(record.Layer, CultureInfo.InvariantCulture);
            notches.Add(new ExchangeNotch(at, kind, height, faults.Scale * faults.Number(name, record, 39), faults.Number(name, record, 50)));
        }
        else if (record.Layer is not (ExchangeLayer.TurnPoints or ExchangeLayer.CurvePoints))
        {
            Aside(record);
        }
    }

    private void TakeText(ExchangeRecord record)
    {
        if (record.Layer == ExchangeLayer.Notes)
        {
            notes.Add(new ExchangeNote(faults.Point(name, record), record.First(1)));
        }
        else if (ExchangeReader.Text(record.First(1)) is { } said)
        {
            texts.TryAdd(said.Key, said.Value);
        }
        else
        {
            Aside(record);
        }
    }

    /// <summary>What the standard does not have is a fault on a layer whose lines are used, and left aside elsewhere.</summary>
    private void Refuse(ExchangeRecord record)
    {
        if (Matters(record.Layer) && record.Kind is not ("SEQEND" or "VERTEX"))
        {
            faults.Add(name, record, $"{record.Kind}: the standard has POLYLINE, LINE, POINT and TEXT only. Save curves as lines of straight steps.");
        }
        else
        {
            Aside(record);
        }
    }

    private static bool Matters(string layer) =>
        layer is ExchangeLayer.Boundary or ExchangeLayer.Grain or ExchangeLayer.Lines or ExchangeLayer.Cutouts or ExchangeLayer.SewLines;

    private void Aside(ExchangeRecord record)
    {
        var key = $"{record.Kind} on layer {record.Layer}";
        aside[key] = aside.GetValueOrDefault(key) + 1;
    }

    private ExchangePiece? Piece(ExchangeRecord block)
    {
        if (boundaries.Count != 1)
        {
            faults.Add(name, boundaries.Count > 1 ? boundaries[1].Record : block, boundaries.Count == 0
                ? "there is no boundary: a closed POLYLINE on layer 1."
                : $"there are {boundaries.Count} boundaries on layer 1; a piece has one. Put holes on layer 11, sew lines on layer 14.");
            return null;
        }

        var (right, left) = Quantity(block);
        var grain = Of(ExchangeLayer.Grain).FirstOrDefault(ImmutableArray.Create(default(Point2)));
        return new ExchangePiece(
            texts.GetValueOrDefault("PIECE NAME") is { Length: > 0 } said ? said : name,
            right,
            left,
            texts.GetValueOrDefault("MATERIAL", string.Empty),
            boundaries[0].Points,
            Of(ExchangeLayer.SewLines),
            [.. Of(ExchangeLayer.Cutouts).Select(ring => ring.Length > 3 && ring[0] == ring[^1] ? ring[..^1] : ring)],
            Of(ExchangeLayer.Lines),
            notches.ToImmutable(),
            drills.ToImmutable(),
            grain[0],
            grain[^1],
            notes.ToImmutable());
    }

    private ImmutableArray<ImmutableArray<Point2>> Of(string layer) => lines.TryGetValue(layer, out var found) ? found.ToImmutable() : [];

    /// <summary>"right,left"; a single number is of pieces as drawn; one of each way when nothing is said is not assumed: it is one.</summary>
    private (int Right, int Left) Quantity(ExchangeRecord block)
    {
        if (!texts.TryGetValue("QUANTITY", out var said))
        {
            return (1, 0);
        }

        var numbers = said.Split(',').Select(word => int.TryParse(word, NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var number) && number <= 10_000 ? number : -1).ToArray();
        if (numbers.Length is 1 or 2 && numbers.All(number => number >= 0))
        {
            return (numbers[0], numbers.Length == 2 ? numbers[1] : 0);
        }

        faults.Add(name, block, $"quantity \"{said}\": two whole numbers up to 10000 are meant, as drawn and turned over, such as \"1,1\".");
        return (0, 0);
    }
}
