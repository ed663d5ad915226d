using System.Globalization;
using BenchmarkDotNet.Running;
using Layshaft.Benchmarks;
using Layshaft.Benchmarks.BigBook;
using Layshaft.Benchmarks.Coverage;
using Layshaft.Benchmarks.FirstView;
using Layshaft.Benchmarks.Photos;
using Layshaft.Benchmarks.Traces;

if (args is ["photos", ..])
{
    PhotoComparison.Run(count: args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 24);
    return;
}

if (args is ["book", ..])
{
    if (BigBookOptions.Of(args[1..]) is not { } options || Path.Exists(options.Folder))
    {
        Console.Error.WriteLine($"Usage: {BigBookOptions.Usage}. FOLDER must not exist.");
        return;
    }

    BigBookWriter.Write(options);
    return;
}

if (args is ["shelf"])
{
    ShelfSearchBenchmark.Run();
    return;
}

if (args is ["coverage", ..])
{
    var samples = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 4000;
    LifeCoverage.Run(samples);
    WearCoverage.Run(samples);
    PooledCoverage.Run(samples);
    return;
}

if (args is ["first-view", var site, ..])
{
    await SlowPhone.Run(site, times: args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 5).ConfigureAwait(false);
    return;
}

if (args is ["stages", var book, ..])
{
    StageTimes.Run(book, filesOfEachKind: args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 40);
    return;
}

if (args is ["pages", var pages, ..])
{
    PageFloor.Run(pages, count: args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 40);
    return;
}

if (args is ["trace", var traced, var unit, var venue, var csv, ..])
{
    double Number(int index, double otherwise) => args.Length > index ? double.Parse(args[index], CultureInfo.InvariantCulture) : otherwise;
    TraceWriter.Write(traced, unit, venue, csv, (int)Number(5, 4), Number(6, 40), (long)Number(7, 0));
    return;
}

if (args is ["trace-speed", var read, var readUnit, var trace])
{
    TraceSpeed.Run(read, readUnit, trace);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
