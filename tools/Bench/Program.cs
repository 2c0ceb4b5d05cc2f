using System;

Console.WriteLine("usage: bench <measurement>");
return 1;
