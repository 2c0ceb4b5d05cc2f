using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Files.Drawings;

namespace CoverPattern.Files.Dxf;

/// <summary>Block names as DXF allows them: some signs are forbidden, and capitals do not tell names apart.</summary>
internal static class DxfNames
{
    // Signs with a meaning of their own in names since AC1015 (from memory).
    private const string Forbidden = "<>/\\\":;?*|,=`";

    /// <summary>A name in the file for each name of ours; a number is added where two would be the same.</summary>
    /// <param name="names">All different.</param>
    public static ImmutableSortedDictionary<string, string> Of(IEnumerable<string> names) =>
        Of(names, name => string.Concat(PlainWords.Of(name).Select(letter => Forbidden.Contains(letter) ? '_' : letter)).Trim());

    /// <inheritdoc cref="Of(IEnumerable{string})"/>
    /// <param name="names">All different.</param>
    /// <param name="allow">Makes a name of signs that are allowed.</param>
    public static ImmutableSortedDictionary<string, string> Of(IEnumerable<string> names, Func<string, string> allow)
    {
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var result = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            var allowed = allow(name);
            var free = allowed.Length == 0 ? "_" : allowed;
            for (var i = 2; !taken.Add(free); i++)
            {
                free = $"{allowed}_{i.ToString(CultureInfo.InvariantCulture)}";
            }

            result.Add(name, DxfText.Write(free));
        }

        return result.ToImmutable();
    }
}
