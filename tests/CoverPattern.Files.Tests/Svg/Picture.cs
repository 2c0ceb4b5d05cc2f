using System;
using System.Buffers.Binary;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.IO;
using System.IO.Compression;
using System.Linq;
using System.Text;
using CoverPattern.Files.Tests.Drawings;

namespace CoverPattern.Files.Tests.Svg;

/// <summary>An SVG file as rsvg-convert paints it, read from its PNG with as much of that format as it writes.</summary>
internal static class Picture
{
    /// <summary>Paints a file.</summary>
    public static byte[] Render(byte[] svg, double dotsPerInch)
    {
        var dots = dotsPerInch.ToString(CultureInfo.InvariantCulture);
        var encoded = ReaderPrograms.Run(svg, ".svg", "/bin/sh", file => ["-c", "rsvg-convert -d \"$1\" -p \"$1\" \"$2\" | base64", "sh", dots, file]);
        return Convert.FromBase64String(encoded.ReplaceLineEndings(""));
    }

    /// <summary>Width and height in dots, and how many dots are not empty.</summary>
    public static (int Width, int Height, int Ink) Read(byte[] png)
    {
        var (width, height, rows) = Rows(png);
        return (width, height, rows.Sum(row => row.Count(isInked => isInked)));
    }

    /// <summary>The stretches of inked dots in the middle row, first dot to behind the last.</summary>
    public static ImmutableArray<(int Start, int End)> InkAcrossTheMiddle(byte[] png)
    {
        var (width, height, rows) = Rows(png);
        var row = rows[height / 2];
        var starts = Enumerable.Range(0, width).Where(x => row[x] && (x == 0 || !row[x - 1]));
        var ends = Enumerable.Range(1, width).Where(x => row[x - 1] && (x == width || !row[x]));
        return [.. starts.Zip(ends)];
    }

    /// <summary>Which dots are not quite transparent. 8 bits a channel, four channels, no interlace, as the painter writes.</summary>
    private static (int Width, int Height, List<bool[]> Rows) Rows(byte[] png)
    {
        const int Channels = 4;
        var header = Chunks(png).First(chunk => chunk.Kind == "IHDR").Bytes;
        Assert.Equal(new byte[] { 8, 6, 0, 0, 0 }, header[8..13]);
        var (width, height) = (BinaryPrimitives.ReadInt32BigEndian(header), BinaryPrimitives.ReadInt32BigEndian(header.AsSpan(4)));
        using var packed = new MemoryStream([.. Chunks(png).Where(chunk => chunk.Kind == "IDAT").SelectMany(chunk => chunk.Bytes)]);
        using var unpacked = new ZLibStream(packed, CompressionMode.Decompress);
        var rows = new List<bool[]>();
        var above = new byte[width * Channels];
        for (var y = 0; y < height; y++)
        {
            var filter = unpacked.ReadByte();
            var row = new byte[above.Length];
            unpacked.ReadExactly(row);
            Unfilter(filter, row, above, Channels);
            rows.Add([.. Enumerable.Range(0, width).Select(x => row[(x * Channels) + 3] > 16)]);
            above = row;
        }

        return (width, height, rows);
    }

    private static IEnumerable<(string Kind, byte[] Bytes)> Chunks(byte[] png)
    {
        for (var at = 8; at < png.Length;)
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            yield return (Encoding.ASCII.GetString(png, at + 4, 4), png[(at + 8)..(at + 8 + length)]);
            at += length + 12;
        }
    }

    /// <summary>Undoes a row's filter: PNG keeps differences to the dot on the left, above, or both [W3C PNG, chapter 9].</summary>
    private static void Unfilter(int filter, byte[] row, byte[] above, int channels)
    {
        for (var i = 0; i < row.Length; i++)
        {
            var (left, up) = (i < channels ? 0 : row[i - channels], above[i]);
            var corner = i < channels ? 0 : above[i - channels];
            row[i] = (byte)(row[i] + (filter switch
            {
                0 => 0,
                1 => left,
                2 => up,
                3 => (left + up) / 2,
                4 => Nearest(left, up, corner),
                _ => throw new InvalidDataException($"There is no filter {filter}."),
            }));
        }
    }

    private static int Nearest(int left, int up, int corner)
    {
        var guess = left + up - corner;
        var (toLeft, toUp, toCorner) = (Math.Abs(guess - left), Math.Abs(guess - up), Math.Abs(guess - corner));
        return toLeft <= toUp && toLeft <= toCorner ? left : toUp <= toCorner ? up : corner;
    }
}
