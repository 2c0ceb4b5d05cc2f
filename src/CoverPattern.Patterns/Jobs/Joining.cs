using System;
using System.Linq;

namespace CoverPattern.Patterns.Jobs;

/// <summary>Which cloths a make-up may join.</summary>
public static class Joining
{
    /// <summary>Finds out why a make-up cannot join two cloths.</summary>
    /// <param name="makeUp">The construction.</param>
    /// <param name="cloth">One cloth.</param>
    /// <param name="other">The other; may be the same.</param>
    /// <returns>What stands in the way and the way out, in words; null when nothing does.</returns>
    /// <remarks>
    /// Cloths weld with equal family only. A weld that no table names, between cloths of which nothing is said, is let pass
    /// here and told of by <see cref="IsUnknown"/>: jobs without a table say nothing of families.
    /// </remarks>
    public static string? Trouble(MakeUp makeUp, Cloth cloth, Cloth other)
    {
        ArgumentNullException.ThrowIfNull(makeUp);
        ArgumentNullException.ThrowIfNull(cloth);
        ArgumentNullException.ThrowIfNull(other);

        Cloth[] both = [cloth, other];
        if (both.FirstOrDefault(one => !MayJoin(makeUp, one)) is { } stranger)
        {
            return $"cloth \"{stranger.Name}\" is not among those that \"{makeUp.Name}\" joins ({string.Join(", ", makeUp.Joins)}); add it there or take another make-up";
        }

        if (!NeedsFamily(makeUp) || IsUnknown(makeUp, cloth, other))
        {
            return null;
        }

        if (both.FirstOrDefault(one => one.Weld is null) is { } plain)
        {
            return $"cloth \"{plain.Name}\" has no weld family; state cloths[].weld or take a sewn make-up";
        }

        return string.Equals(cloth.Weld, other.Weld, StringComparison.Ordinal)
            ? null
            : $"cloth \"{cloth.Name}\" welds with \"{cloth.Weld}\", \"{other.Name}\" with \"{other.Weld}\"; cloths weld with equal family only: take a sewn make-up";
    }

    /// <summary>Whether a weld that no table names joins cloths of which no family is said.</summary>
    public static bool IsUnknown(MakeUp makeUp, Cloth cloth, Cloth other)
    {
        ArgumentNullException.ThrowIfNull(makeUp);
        ArgumentNullException.ThrowIfNull(cloth);
        ArgumentNullException.ThrowIfNull(other);

        return makeUp.IsWelded && makeUp.Joins.IsEmpty && cloth.Weld is null && other.Weld is null;
    }

    private static bool NeedsFamily(MakeUp makeUp) => makeUp.IsWelded || makeUp.Joins.Contains(MakeUp.WeldableCloth, StringComparer.Ordinal);

    /// <summary>The words for "any" and "weldable" let every cloth pass here; families are asked for apart.</summary>
    private static bool MayJoin(MakeUp makeUp, Cloth cloth) => makeUp.Joins.IsEmpty
        || makeUp.Joins.Any(name => name is MakeUp.AnyCloth or MakeUp.WeldableCloth || string.Equals(name, cloth.Name, StringComparison.Ordinal));
}
