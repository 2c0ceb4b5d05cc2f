using System;

return args switch
{
    ["nesting", .. var rest] => Bench.NestingBench.Run(rest),
    ["dome", .. var rest] => Bench.DomeBench.Run(rest),
    ["collisions", .. var rest] => Bench.CollisionBench.Run(rest),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("usage: bench nesting|dome|collisions [options]");
    return 1;
}
