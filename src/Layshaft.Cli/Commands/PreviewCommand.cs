using System.CommandLine;
using Layshaft.Cli.Preview;
using Layshaft.Cli.Terminal;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft preview BOOK</c>: shows the site on this machine and keeps it up with the book.</summary>
internal static class PreviewCommand
{
    private const int UsualPort = 8421;

    // Nothing here touches the web server's types, so that other commands do not load them.
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var book = BookArgument.Create();
        var port = new Option<int?>("--port") { HelpName = "PORT", Description = $"The port on this machine; {UsualPort}, or any that is free, where nothing is said." };
        var folder = new Option<DirectoryInfo?>("--out") { HelpName = "FOLDER", Description = "Where the site is put; a temporary folder where nothing is said." };
        var poll = new Option<bool>("--poll") { Description = "Look for changes every second, for folders whose system does not tell of them (network drives)." };
        var command = new Command("preview", "Show the site on this machine, made again whenever a file is saved. Example: layshaft preview demo-data") { book, port, folder, poll };
        command.SetAction((parsed, cancellation) => Run(parsed.GetRequiredValue(book), parsed.GetValue(folder), parsed.GetValue(port), parsed.GetValue(poll), output, errors, cancellation));
        return command;
    }

    private static async Task<int> Run(DirectoryInfo book, DirectoryInfo? folder, int? port, bool poll, TextWriter output, TextWriter errors, CancellationToken cancellation)
    {
        if (!BookArgument.Exists(book, errors))
        {
            return ExitCode.WrongUse;
        }

        if (port is < 1 or > 65535)
        {
            errors.WriteLine("A port is a number from 1 to 65535.");
            return ExitCode.WrongUse;
        }

        if (folder is not null && !Path.GetRelativePath(book.FullName, folder.FullName).StartsWith("..", StringComparison.Ordinal) && !Path.IsPathRooted(Path.GetRelativePath(book.FullName, folder.FullName)))
        {
            errors.WriteLine($"'{folder}' is in the book. Give a folder outside it.");
            return ExitCode.WrongUse;
        }

        var temporary = folder is null ? Directory.CreateTempSubdirectory("layshaft-preview-") : null;
        try
        {
            var site = new PreviewSite(book.FullName, folder?.FullName ?? Path.Combine(temporary!.FullName, "site"), keepsReaders: folder is not null);
            using var watch = new BookWatch(book.FullName, poll);
            await using var server = await Start(site, port, errors).ConfigureAwait(false);
            site.Changed += state =>
            {
                ProblemLines.Write(state.Problems, book, errors);
                foreach (var failure in state.Failures)
                {
                    errors.WriteLine(failure);
                }

                output.WriteLine(state.IsStopped ? "The page shows what to mend." : "The site is up to date.");
            };
            output.WriteLine($"Open {server.Address} (Ctrl-C ends).");
            if (watch.IsPolling && !poll)
            {
                output.WriteLine("The system does not tell of changes here, so the book is looked at every second.");
            }

            await site.KeepUp(watch, cancellation).ConfigureAwait(false);
            return ExitCode.Fine;
        }
        finally
        {
            temporary?.Delete(recursive: true);
        }
    }

    private static async Task<PreviewServer> Start(PreviewSite site, int? port, TextWriter errors)
    {
        try
        {
            return await PreviewServer.Start(site, port ?? UsualPort).ConfigureAwait(false);
        }
        catch (IOException) when (port is null)
        {
            errors.WriteLine($"Port {UsualPort} is taken; another is used.");
            return await PreviewServer.Start(site, 0).ConfigureAwait(false);
        }
    }
}
