using System;

namespace CoverPattern.Files.Exchange;

/// <summary>Something in an exchange file that is not read.</summary>
/// <param name="Block">Name of the block; empty outside of blocks.</param>
/// <param name="Layer">Name of the layer; empty where it does not matter.</param>
/// <param name="Line">Line of the file, from 1.</param>
/// <param name="Message">What was found, what is allowed, and the way out.</param>
public sealed record ExchangeFault(string Block, string Layer, int Line, string Message)
{
    /// <summary>Place and message in one sentence.</summary>
    public override string ToString() => FormattableString.Invariant($"line {Line}{(Block.Length > 0 ? ", block " + Block : string.Empty)}{(Layer.Length > 0 ? ", layer " + Layer : string.Empty)}: {Message}");
}
