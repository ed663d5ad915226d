using Layshaft.Cli.Commands;

return Entry.Run(args, Console.Out, Console.Error);
