using Layshaft.Cli.Commands;
using Layshaft.Cli.Terminal;

using var output = new LenientWriter(Console.Out);
using var errors = new LenientWriter(Console.Error);
Console.SetOut(output);
Console.SetError(errors);
var exit = Entry.Run(args, Console.Out, Console.Error);
if (output.Failure is { } failure)
{
    Console.Error.WriteLine($"Standard output could not be written ({failure}), so some lines are missing. Everything else was done.");
    exit = exit == ExitCode.Fine ? ExitCode.Problems : exit;
}

return exit;
