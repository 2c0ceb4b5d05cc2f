using System;
using System.Threading.Tasks;
using CsCheck;

#pragma warning disable RS0030 // The one place that may call it.

namespace CoverPattern;

/// <summary>
/// Property tests over the same cases for everybody: a check of a change that draws cases by chance goes red for changes that did nothing.
/// With COVERPATTERN_CASES=new, as in the long run, CsCheck draws new ones and shrinks what fails; so it does where CsCheck_Seed names one.
/// A file in the tests' own namespace: there these methods are found before CsCheck's of the same name.
/// </summary>
internal static class Cases
{
    private static readonly bool Drawn = Environment.GetEnvironmentVariable("COVERPATTERN_CASES") == "new" || Environment.GetEnvironmentVariable("CsCheck_Seed") is not null;

    public static void Sample<T>(this Gen<T> gen, Func<T, bool> holds, string? seed = null, int iter = 100, int threads = -1, Func<T, string>? print = null)
    {
        if (seed is not null || Drawn)
        {
            Check.Sample(gen, holds, seed: seed, iter: iter, threads: threads, print: print);
        }
        else
        {
            Parallel.For(0, iter, new ParallelOptions { MaxDegreeOfParallelism = threads }, number =>
                Check.Sample(gen, holds, seed: Seed(number), iter: 1, threads: 1, print: print));
        }
    }

    public static void Sample<T>(this Gen<T> gen, Action<T> check, string? seed = null, int iter = 100, int threads = -1, Func<T, string>? print = null) => gen.Sample(
        value =>
        {
            check(value);
            return true;
        },
        seed, iter, threads, print);

    public static void Sample<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> check, int iter = 100, int threads = -1) =>
        gen.Sample(one => check(one.Item1, one.Item2), iter: iter, threads: threads);

    public static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> check, int iter = 100, int threads = -1) =>
        gen.Sample(one => check(one.Item1, one.Item2, one.Item3), iter: iter, threads: threads);

    public static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> holds, int iter = 100, int threads = -1) =>
        gen.Sample(one => holds(one.Item1, one.Item2, one.Item3), iter: iter, threads: threads);

    public static void Sample<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4> check, int iter = 100, int threads = -1) =>
        gen.Sample(one => check(one.Item1, one.Item2, one.Item3, one.Item4), iter: iter, threads: threads);

    public static void Sample<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Func<T1, T2, T3, T4, bool> holds, int iter = 100, int threads = -1) =>
        gen.Sample(one => holds(one.Item1, one.Item2, one.Item3, one.Item4), iter: iter, threads: threads);

    public static void Sample<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> gen, Action<T1, T2, T3, T4, T5> check, int iter = 100, int threads = -1) =>
        gen.Sample(one => check(one.Item1, one.Item2, one.Item3, one.Item4, one.Item5), iter: iter, threads: threads);

    public static void Sample<T1, T2, T3, T4, T5, T6>(this Gen<(T1, T2, T3, T4, T5, T6)> gen, Action<T1, T2, T3, T4, T5, T6> check, int iter = 100, int threads = -1) =>
        gen.Sample(one => check(one.Item1, one.Item2, one.Item3, one.Item4, one.Item5, one.Item6), iter: iter, threads: threads);

    public static void Sample<T1, T2, T3, T4, T5, T6, T7>(this Gen<(T1, T2, T3, T4, T5, T6, T7)> gen, Action<T1, T2, T3, T4, T5, T6, T7> check, int iter = 100, int threads = -1) =>
        gen.Sample(one => check(one.Item1, one.Item2, one.Item3, one.Item4, one.Item5, one.Item6, one.Item7), iter: iter, threads: threads);

    public static void Sample<T1, T2, T3, T4, T5, T6, T7, T8>(this Gen<(T1, T2, T3, T4, T5, T6, T7, T8)> gen, Action<T1, T2, T3, T4, T5, T6, T7, T8> check, int iter = 100, int threads = -1) =>
        gen.Sample(one => check(one.Item1, one.Item2, one.Item3, one.Item4, one.Item5, one.Item6, one.Item7, one.Item8), iter: iter, threads: threads);

    private static string Seed(int number) => new PCG((uint)number + 1, 20_260_101).ToString();
}
