using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Exchange;

/// <summary>Faults while a file is read, and numbers that can be faulty.</summary>
internal sealed class ExchangeFaults
{
    private const int Most = 50;

    private readonly List<ExchangeFault> faults = [];

    /// <summary>Millimetres in one unit of the file.</summary>
    internal double Scale { get; set; } = 1;

    internal bool IsEmpty => faults.Count == 0;

    internal ImmutableArray<ExchangeFault> All => [.. faults];

    internal void Add(ExchangeFault fault)
    {
        if (faults.Count < Most)
        {
            faults.Add(fault);
        }
    }

    internal void Add(string block, ExchangeRecord record, string message) => Add(new ExchangeFault(block, record.Layer, record.Line, message));

    /// <summary>A number of the file; 0 when it is none, which is a fault, or not there.</summary>
    internal double Number(string block, ExchangeRecord record, int code)
    {
        var found = record.Tags.Find(tag => tag.Code == code);
        return found.Value is null ? 0 : Number(block, record, found.Value, found.Line);
    }

    /// <summary>A place of the file in millimetres.</summary>
    internal Point2 Point(string block, ExchangeRecord record, int code = 10) =>
        new(Scale * Number(block, record, code), Scale * Number(block, record, code + 10));

    /// <inheritdoc cref="Number(string, ExchangeRecord, int)"/>
    internal double Number(string block, ExchangeRecord record, string text, int line)
    {
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && Math.Abs(number * Scale) <= Grid.LargestMillimetres)
        {
            return number;
        }

        Add(new ExchangeFault(block, record.Layer, line, $"\"{(text.Length > 40 ? text[..40] : text)}\" is no number, or farther than {Grid.LargestMillimetres / 1000:0} m from the origin."));
        return 0;
    }
}
