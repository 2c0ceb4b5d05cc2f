using System;

namespace CoverPattern.Workshop;

/// <summary>Passes progress on at once, in the thread that reports it.</summary>
internal sealed class Relay<T>(Action<T> pass) : IProgress<T>
{
    public void Report(T value) => pass(value);
}
