using System.CommandLine;
using Layshaft.Site.Publishing;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft uploaded --out FOLDER</c>: notes that the host has all that waited for upload.</summary>
internal static class UploadedCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var folder = new Option<DirectoryInfo>("--out") { Description = "Folder of the published site.", Required = true, HelpName = "FOLDER" };
        var command = new Command("uploaded", "Confirm that all listed uploads and deletions were made, and start a new list. Example: layshaft uploaded --out reports") { folder };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(folder), output, errors));
        return command;
    }

    private static int Run(DirectoryInfo folder, TextWriter output, TextWriter errors)
    {
        var (done, problem) = new Publisher().ConfirmUpload(folder.FullName);
        if (done is null)
        {
            errors.WriteLine(problem);
            return ExitCode.Problems;
        }

        output.WriteLine(done.Count == 0 ? "No changes were waiting for upload." : $"Confirmed: {done.Uploads} uploaded, {done.Deletions} deleted at the host. The list is empty.");
        return ExitCode.Fine;
    }
}
