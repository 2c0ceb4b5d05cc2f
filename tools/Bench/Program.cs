using System;

return args switch
{
    ["nesting", .. var rest] => Bench.NestingBench.Run(rest),
    ["collisions", .. var rest] => Bench.CollisionBench.Run(rest),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("usage: bench nesting|collisions [options]");
    return 1;
}
