using System.Text.Json;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads the value behind a key.</summary>
/// <param name="key">Says what is allowed.</param>
/// <param name="element">What the job states.</param>
/// <param name="value">The value; a stand-in when it is refused.</param>
/// <param name="hint">Why it is refused, in a few words; may be empty.</param>
/// <returns>Whether it is allowed.</returns>
internal delegate bool ValueReader<T>(JobKey key, JsonElement element, out T? value, out string hint);
