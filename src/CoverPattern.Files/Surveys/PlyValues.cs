using System;
using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace CoverPattern.Files.Surveys;

/// <summary>Takes one number after the other from the body of a PLY file.</summary>
internal ref struct PlyValues
{
    private readonly ReadOnlySpan<byte> bytes;
    private readonly string format;
    private int at;

    /// <param name="bytes">What follows the head.</param>
    /// <param name="format">"ascii", "binary_little_endian" or "binary_big_endian".</param>
    internal PlyValues(ReadOnlySpan<byte> bytes, string format)
    {
        this.bytes = bytes;
        this.format = format;
    }

    /// <summary>The next number; NaN when there is none.</summary>
    /// <param name="type">Its type as the head names it.</param>
    internal double Take(string type) => format == "ascii" ? TakeWord() : TakeBytes(type);

    private double TakeWord()
    {
        while (at < bytes.Length && bytes[at] <= (byte)' ')
        {
            at++;
        }

        var start = at;
        while (at < bytes.Length && bytes[at] > (byte)' ')
        {
            at++;
        }

        return double.TryParse(Encoding.UTF8.GetString(bytes[start..at]), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : double.NaN;
    }

    private double TakeBytes(string type)
    {
        var size = type switch
        {
            "char" or "int8" or "uchar" or "uint8" => 1,
            "short" or "int16" or "ushort" or "uint16" => 2,
            "double" or "float64" => 8,
            _ => 4,
        };
        if (at + size > bytes.Length)
        {
            return double.NaN;
        }

        Span<byte> little = stackalloc byte[8];
        bytes.Slice(at, size).CopyTo(little);
        at += size;
        if (format == "binary_big_endian")
        {
            little[..size].Reverse();
        }

        return type switch
        {
            "char" or "int8" => (sbyte)little[0],
            "uchar" or "uint8" => little[0],
            "short" or "int16" => BinaryPrimitives.ReadInt16LittleEndian(little),
            "ushort" or "uint16" => BinaryPrimitives.ReadUInt16LittleEndian(little),
            "int" or "int32" => BinaryPrimitives.ReadInt32LittleEndian(little),
            "uint" or "uint32" => BinaryPrimitives.ReadUInt32LittleEndian(little),
            "double" or "float64" => BinaryPrimitives.ReadDoubleLittleEndian(little),
            _ => BinaryPrimitives.ReadSingleLittleEndian(little),
        };
    }
}
