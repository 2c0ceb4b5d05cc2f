using System;
using CoverPattern.Cli;

return await CommandLine.RunAsync(args, Console.Out, Console.Error, Console.IsInputRedirected ? null : Console.In);
