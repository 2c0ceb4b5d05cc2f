using System;

return args switch
{
    ["corridor", .. var rest] => Bench.CorridorBench.Run(rest),
    ["nesting", .. var rest] => Bench.NestingBench.Run(rest),
    ["dome", .. var rest] => Bench.DomeBench.Run(rest),
    ["freeze", .. var rest] => Bench.FrozenSets.Run(rest),
    ["domes", .. var rest] => Bench.FrozenDomeBench.Run(rest),
    ["first", .. var rest] => Bench.FirstLayBench.Run(rest),
    ["large", .. var rest] => Bench.LargeSetBench.Run(rest),
    ["cancel", .. var rest] => Bench.CancelBench.Run(rest),
    ["collisions", .. var rest] => Bench.CollisionBench.Run(rest),
    ["frames", .. var rest] => Bench.FrameBench.Run(rest),
    ["answers", .. var rest] => Bench.AnswerBench.Run(rest),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("usage: bench corridor|nesting|dome|domes|freeze|first|large|cancel|collisions|frames|answers [options]");
    return 1;
}
