using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What was ordered to be cut as one piece; facets that nothing names are pieces of their own.</summary>
/// <param name="Bands">Rows cut into parts, with the number of parts; 0 where the order leaves it open.</param>
/// <param name="Gores">Sets of rows that are cut into five sectors each.</param>
/// <param name="Groups">Facets of each group by its name.</param>
/// <param name="Turned">Pairs of faces, "F1.01 F2.03" in order of their labels, at whose seam the other side lies over.</param>
internal sealed record SewnPlan(
    IReadOnlyDictionary<int, int> Bands, IReadOnlyList<int[]> Gores, IReadOnlyDictionary<string, string[]> Groups, IReadOnlySet<string> Turned)
{
    internal static readonly SewnPlan Single = new(
        new Dictionary<int, int>(), [], new Dictionary<string, string[]>(StringComparer.Ordinal), new HashSet<string>(StringComparer.Ordinal));

    /// <summary>Turns that bring the frame to itself; an icosahedron with a corner up has five.</summary>
    internal int Sectors { get; init; } = 5;

    /// <summary>Facets that bend over a line without a strut and so are one piece.</summary>
    internal IReadOnlyList<string[]> Bent { get; init; } = [];

    /// <summary>Facets that come off as a roof.</summary>
    internal IReadOnlySet<string> Roof { get; init; } = new HashSet<string>(StringComparer.Ordinal);

    /// <summary>Whether roof and wall part between two faces.</summary>
    internal bool IsRoofEdge(string face, string? other) => other is not null && Roof.Contains(face) != Roof.Contains(other);

    /// <summary>Row of a facet, from the deck up; 0 for a skirt face.</summary>
    internal static int RowOf(string face) => face.EndsWith('k') ? 0 : int.Parse(face[1..face.IndexOf('.', StringComparison.Ordinal)], CultureInfo.InvariantCulture);

    /// <summary>Two faces, the smaller label first.</summary>
    internal static string Pair(string face, string other) => string.CompareOrdinal(face, other) < 0 ? $"{face} {other}" : $"{other} {face}";

    /// <summary>Whether a piece is one facet, or one that bends, with its skirt.</summary>
    internal bool IsSingle(SewnPiece piece)
    {
        string[] facets = [.. piece.Facets.Where(face => !face.EndsWith('k'))];
        return piece.Label == piece.Cover + "P" + piece.Facets[0][1..]
            && (Bent.FirstOrDefault(set => set.Contains(facets[0]))?.ToHashSet().SetEquals(facets) ?? facets.Length == 1);
    }

    /// <summary>Whether two faces of one piece may be slit from each other: in gores and groups, and where something closes round the cover.</summary>
    internal bool MaySlit(string face, string other)
    {
        var (row, otherRow) = (RowOf(face), RowOf(other));
        return (row == 0 && otherRow == 0)
            || (row == otherRow && Bands.GetValueOrDefault(row, -1) == 1)
            || Gores.Any(rows => rows.Contains(row) && rows.Contains(otherRow))
            || Groups.Values.Any(facets => facets.Contains(face) && facets.Contains(other));
    }

    /// <summary>What is wrong with who is cut with whom, on one cover.</summary>
    internal IEnumerable<string> Faults(IReadOnlyCollection<SewnPiece> pieces)
    {
        var rows = pieces.SelectMany(piece => piece.Facets).Where(face => !face.EndsWith('k')).CountBy(RowOf).ToDictionary();
        var owner = pieces.SelectMany(piece => piece.Facets.Select(face => (face, piece))).GroupBy(entry => entry.face).ToDictionary(group => group.Key, group => group.First().piece);
        return pieces.Select(piece => NameFault(piece, rows, owner)).OfType<string>().Concat(CountFaults(pieces));
    }

    private IEnumerable<string> CountFaults(IReadOnlyCollection<SewnPiece> pieces)
    {
        int Named(string start) => pieces.Count(piece => piece.Label[piece.Cover.Length..].StartsWith(start, StringComparison.Ordinal) && !piece.Label.Contains('k', StringComparison.Ordinal));
        foreach (var (row, parts) in Bands.Where(band => band.Value > 0))
        {
            var found = pieces.Count(piece => BandRow(piece.Label[piece.Cover.Length..]) == row);
            if (found != parts)
            {
                yield return $"Row {row} is cut into {found} parts, not {parts}.";
            }
        }

        if (Gores.Count > 0 && Named("G") != Gores.Count * Sectors)
        {
            yield return $"There are {Named("G")} gores, not {Gores.Count * Sectors}.";
        }
    }

    /// <summary>Row of a band's name such as "B1.3"; -1 for other names.</summary>
    private static int BandRow(string name) =>
        name.Length > 3 && name[0] == 'B' && !name.Contains('k', StringComparison.Ordinal) && int.TryParse(name[1..].Split('.')[0], NumberStyles.None, CultureInfo.InvariantCulture, out var row) ? row : -1;

    private string? NameFault(SewnPiece piece, Dictionary<int, int> rows, Dictionary<string, SewnPiece> owner)
    {
        var name = piece.Label[piece.Cover.Length..];
        string[] facets = [.. piece.Facets.Where(face => !face.EndsWith('k'))];
        if (facets.Length == 0)
        {
            return piece.Facets.All(skirt => owner.TryGetValue(skirt[..^1].Split('-')[0], out var above) && piece.Label.StartsWith(above.Label + "k", StringComparison.Ordinal))
                ? null
                : $"Strip {piece.Label} hangs below pieces it is not named for.";
        }

        if (Groups.TryGetValue(name, out var group))
        {
            return facets.ToHashSet().SetEquals(group) ? null : $"Group {name} covers {string.Join(", ", facets)}.";
        }

        if (BandRow(name) is var row && row > 0)
        {
            var parts = Bands.GetValueOrDefault(row, -1);
            return Array.TrueForAll(facets, facet => RowOf(facet) == row) && AreSideBySide(facets, rows) && parts >= 0 && (parts == 0 || Math.Abs(facets.Length - ((double)rows[row] / parts)) < 1)
                ? null
                : $"Band {name} covers {string.Join(", ", facets)}.";
        }

        if (name[0] == 'G')
        {
            return Gores.Any(set => set.All(one => facets.Count(facet => RowOf(facet) == one) * Sectors == rows[one]) && facets.Length * Sectors == set.Sum(one => rows[one])) && AreSideBySide(facets, rows)
                ? null
                : $"Gore {name} covers {string.Join(", ", facets)}.";
        }

        return IsSingle(piece) && !Bands.ContainsKey(RowOf(facets[0])) && !Gores.Any(set => set.Contains(RowOf(facets[0])))
            ? null
            : $"Piece {piece.Label} covers {piece.Facets[0]} and should be named for it.";
    }

    /// <summary>Whether the facets of each row stand side by side, with one gap at most round the frame.</summary>
    private static bool AreSideBySide(string[] facets, Dictionary<int, int> rows) => facets.GroupBy(RowOf).All(row =>
    {
        var at = row.Select(facet => int.Parse(facet[(facet.IndexOf('.', StringComparison.Ordinal) + 1)..], CultureInfo.InvariantCulture) - 1).ToHashSet();
        return at.Count == rows[row.Key] || at.Count(position => !at.Contains((position + 1) % rows[row.Key])) == 1;
    });
}
