using System.CommandLine;
using Layshaft.Cli.Preview;
using Layshaft.Cli.Terminal;
using Layshaft.Site.Publishing;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft preview BOOK</c>: shows the site on this computer and updates it with the book.</summary>
internal static class PreviewCommand
{
    private const int UsualPort = 8421;

    // Nothing here touches the web server's types, so that other commands do not load them.
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var book = BookArgument.Create();
        var port = new Option<int?>("--port") { HelpName = "PORT", Description = $"Port on this computer. Default: {UsualPort}, or any free port." };
        var folder = new Option<DirectoryInfo?>("--out") { HelpName = "FOLDER", Description = "Folder for the site. Default: a temporary folder." };
        var poll = new Option<bool>("--poll") { Description = "Check for changes every second, for folders without change notification, such as network drives." };
        var command = new Command("preview", "Show the site on this computer and update it whenever a file is saved. Example: layshaft preview demo-data") { book, port, folder, poll };
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
            errors.WriteLine($"'{port}' is not a port. Write a number from 1 to 65535.");
            return ExitCode.WrongUse;
        }

        if (folder is not null && !Path.GetRelativePath(book.FullName, folder.FullName).StartsWith("..", StringComparison.Ordinal) && !Path.IsPathRooted(Path.GetRelativePath(book.FullName, folder.FullName)))
        {
            errors.WriteLine($"'{folder}' is inside the book. Name a folder outside it.");
            return ExitCode.WrongUse;
        }

        if (folder is not null && OutputFolder.ProblemWith(folder.FullName, book.FullName) is { } refused)
        {
            errors.WriteLine(refused);
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

                output.WriteLine(state.IsStopped ? "The page shows what to fix." : "The site is up to date.");
            };
            output.WriteLine($"Open {server.Address} (press Ctrl-C to stop).");
            if (watch.IsPolling && !poll)
            {
                output.WriteLine("This folder has no change notification, so the book is checked every second.");
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
            errors.WriteLine($"Port {UsualPort} is in use; another port is used.");
            return await PreviewServer.Start(site, 0).ConfigureAwait(false);
        }
    }
}
