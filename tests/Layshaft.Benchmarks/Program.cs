using System.Globalization;
using BenchmarkDotNet.Running;
using Layshaft.Benchmarks.Photos;

if (args is ["photos", ..])
{
    PhotoComparison.Run(count: args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 24);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
