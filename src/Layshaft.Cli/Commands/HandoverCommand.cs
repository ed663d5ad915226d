using System.CommandLine;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Cli.Terminal;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Sending;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft handover JOB BOOK</c>: writes the mail to the customer as a draft, and the report as one file.</summary>
internal static class HandoverCommand
{
    private const string UsualFolder = "handover";

    public static Command Create(TextWriter output, TextWriter errors)
    {
        var job = new Argument<string>("JOB") { Description = "The job's number: the name of its folder." };
        var book = BookArgument.Create();
        var folder = new Option<DirectoryInfo>("--out")
        {
            Description = "Where the draft goes: any folder but those that are uploaded; 'handover' where nothing is said.",
            HelpName = "FOLDER",
            DefaultValueFactory = _ => new DirectoryInfo(UsualFolder),
        };
        var enclose = new Option<bool>("--enclose") { Description = "Enclose the report as one file that opens with no network." };
        var fileOnly = new Option<bool>("--file-only") { Description = "Write the one-file report alone, and no mail." };
        var command = new Command("handover", "Write the mail to the customer as a draft. Example: layshaft handover 0615 demo-data --enclose") { job, book, folder, enclose, fileOnly };
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(job), parsed.GetRequiredValue(book), parsed.GetRequiredValue(folder), parsed.GetValue(enclose), parsed.GetValue(fileOnly), output, errors));
        return command;
    }

    private static int Run(string number, DirectoryInfo book, DirectoryInfo folder, bool enclose, bool fileOnly, TextWriter output, TextWriter errors)
    {
        if (!BookArgument.Exists(book, errors))
        {
            return ExitCode.WrongUse;
        }

        if (UploadTrees.Holds(folder.FullName))
        {
            errors.WriteLine($"'{folder}' is uploaded for others to read. Name another folder with --out.");
            return ExitCode.WrongUse;
        }

        var site = SitePreparation.Of(BookReview.OfFolder(book.FullName), book.FullName);
        if (site.Builder is not { } builder)
        {
            ProblemLines.Write(site.Problems, book, errors);
            output.WriteLine($"{ProblemLines.Summary(site.Problems)} Nothing was written.");
            return ExitCode.Problems;
        }

        if (Find(number, builder.Composition.Book, errors) is not { } job)
        {
            return ExitCode.WrongUse;
        }

        try
        {
            return Write(new Handover(builder, job), builder.Composition.Shop, folder, enclose, fileOnly, output, errors);
        }
        catch (PageException failed)
        {
            errors.WriteLine(failed.Message);
            output.WriteLine($"{failed.Page} could not be made from its template. Nothing was written.");
            return ExitCode.Problems;
        }
    }

    private static Job? Find(string number, ShopBook book, TextWriter errors)
    {
        var job = book.Jobs.FirstOrDefault(j => j.Number == number);
        if (job is null)
        {
            errors.WriteLine($"The book has no job '{number}'. {NearestWord.Advice(number, [.. book.Jobs.Select(j => j.Number)])}".TrimEnd());
            return null;
        }

        if (!Handover.IsDue(job))
        {
            errors.WriteLine($"Job {number} is neither finished nor waiting for a go-ahead, so there is nothing to send. Write 'finished' or 'estimate' in its job.yaml first.");
            return null;
        }

        return job;
    }

    private static int Write(Handover handover, Shop shop, DirectoryInfo folder, bool enclose, bool fileOnly, TextWriter output, TextWriter errors)
    {
        ReadOnlyMemory<byte>? enclosed = null;
        if (enclose || fileOnly)
        {
            var report = handover.Report();
            foreach (var missing in report.Missing)
            {
                errors.WriteLine($"Not in the one-file report: {missing}");
            }

            if (report.Content is not { } content)
            {
                errors.WriteLine($"The report cannot be made smaller than {report.Size}, and shop.yaml allows {shop.OneFileLimit}. Raise one_file_limit, or send the link alone. Nothing was written.");
                return ExitCode.Problems;
            }

            output.WriteLine($"The report as one file: {report.Size}{(report.Reduced > 0 ? ", its pictures reduced to fit" : string.Empty)}.");
            enclosed = content;
        }

        Directory.CreateDirectory(folder.FullName);
        if (fileOnly)
        {
            return Save(folder, handover.ReportName, enclosed!.Value, output);
        }

        var draft = handover.Draft(enclosed);
        if (draft.To is null)
        {
            errors.WriteLine(handover.Customer.Email is { } given
                ? $"'{given}' in customers/{handover.Customer.Id}.yaml is no e-mail address; fill in the draft's own."
                : $"customers/{handover.Customer.Id}.yaml names no e-mail address; fill in the draft's own.");
        }

        errors.WriteLine(shop.SiteAddress is { } site
            ? $"The link works once the site is published and customers/ is uploaded to {site.Text}"
            : "shop.yaml names no site_address, so the draft holds no link. Add it, or put the link in by hand.");
        var saved = Save(folder, handover.DraftName, draft.ToBytes(), output);
        output.WriteLine("Open it with your mail program, look it over and send it.");
        return saved;
    }

    // Whole or not at all: a mail program must not find half a draft.
    private static int Save(DirectoryInfo folder, string name, ReadOnlyMemory<byte> content, TextWriter output)
    {
        var path = Path.Combine(folder.FullName, name);
        var part = $"{path}.part";
        using (var stream = new FileStream(part, FileMode.Create, FileAccess.Write, FileShare.None))
        {
            stream.Write(content.Span);
        }

        File.Move(part, path, overwrite: true);
        output.WriteLine($"Wrote {Path.Combine(folder.ToString(), name)}");
        return ExitCode.Fine;
    }
}
