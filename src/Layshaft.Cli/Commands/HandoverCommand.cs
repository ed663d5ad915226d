using System.CommandLine;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Cli.Terminal;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Upload;
using Layshaft.Site.Sending;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft handover JOB BOOK</c>: writes an email draft to the customer, and the single-file report.</summary>
internal static class HandoverCommand
{
    private const string UsualFolder = "handover";
    private const string UsualSite = "reports";

    public static Command Create(TextWriter output, TextWriter errors)
    {
        var job = new Argument<string>("JOB") { Description = "Job number: the name of its folder." };
        var book = BookArgument.Create();
        var folder = new Option<DirectoryInfo>("--out")
        {
            Description = "Folder for the draft, outside the folders that are uploaded.",
            HelpName = "FOLDER",
            DefaultValueFactory = _ => new DirectoryInfo(UsualFolder),
        };
        var site = new Option<DirectoryInfo>("--site")
        {
            Description = "Folder of the published site, to check whether the page is uploaded.",
            HelpName = "FOLDER",
            DefaultValueFactory = _ => new DirectoryInfo(UsualSite),
        };
        var enclose = new Option<bool>("--enclose") { Description = "Attach the report as a single file that opens offline." };
        var fileOnly = new Option<bool>("--file-only") { Description = "Write only the single-file report, without an email." };
        var command = new Command("handover", "Write an email draft to the customer of a job. Example: layshaft handover 0615 demo-data --enclose") { job, book, folder, site, enclose, fileOnly };
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(job), parsed.GetRequiredValue(book), parsed.GetRequiredValue(folder), parsed.GetRequiredValue(site), parsed.GetValue(enclose), parsed.GetValue(fileOnly), output, errors));
        return command;
    }

    private static int Run(string number, DirectoryInfo book, DirectoryInfo folder, DirectoryInfo published, bool enclose, bool fileOnly, TextWriter output, TextWriter errors)
    {
        if (!BookArgument.Exists(book, errors))
        {
            return ExitCode.WrongUse;
        }

        if (UploadTrees.Holds(folder.FullName))
        {
            errors.WriteLine($"'{folder}' is in a folder that is uploaded. Name another folder with --out.");
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
            return Write(new Handover(builder, job), builder.Composition.Shop, folder, published, enclose, fileOnly, output, errors);
        }
        catch (PageException failed)
        {
            errors.WriteLine(failed.Message);
            output.WriteLine($"{failed.Page} could not be generated from its template. Nothing was written.");
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
            errors.WriteLine($"Job {number} is neither finished nor waiting for a go-ahead, so there is nothing to send. Add 'finished: …' or an estimate to its job.yaml first.");
            return null;
        }

        return job;
    }

    private static int Write(Handover handover, Shop shop, DirectoryInfo folder, DirectoryInfo published, bool enclose, bool fileOnly, TextWriter output, TextWriter errors)
    {
        ReadOnlyMemory<byte>? enclosed = null;
        if (enclose || fileOnly)
        {
            var report = handover.Report();
            foreach (var missing in report.Missing)
            {
                errors.WriteLine($"Missing from the single-file report: {missing}");
            }

            if (report.Content is not { } content)
            {
                errors.WriteLine($"The report cannot be made smaller than {report.Size}, but shop.yaml allows {shop.OneFileLimit}. Raise 'one_file_limit', or send only the link. Nothing was written.");
                return ExitCode.Problems;
            }

            output.WriteLine($"Single-file report: {report.Size}{(report.Reduced > 0 ? ", with photos reduced to fit" : string.Empty)}.");
            enclosed = content;
        }

        CreateFolder(folder.FullName);
        if (fileOnly)
        {
            return Save(folder, handover.ReportName, enclosed!.Value, output);
        }

        var draft = handover.Draft(enclosed);
        foreach (var given in handover.Customer.Emails.Where(e => MailDraft.AddressIn(e) is null))
        {
            errors.WriteLine($"'{given}' in customers/{handover.Customer.Id}.yaml is not an email address, so the draft leaves it out.");
        }

        if (draft.To.Count == 0)
        {
            errors.WriteLine($"customers/{handover.Customer.Id}.yaml has no email address. Fill in the address in the draft.");
        }

        errors.WriteLine(shop.SiteAddress is { } site
            ? WordsOnLink(handover, published, site.Text)
            : "shop.yaml has no 'site_address', so the draft has no link. Add it, or insert the link by hand.");
        var saved = Save(folder, handover.DraftName, draft.ToBytes(), output);
        output.WriteLine("Open the draft in your email program, check it and send it.");
        return saved;
    }

    private static string WordsOnLink(Handover handover, DirectoryInfo published, string site) =>
        new Publisher().IsCutOff(published.FullName) ? $"Do not send this yet: the last publish into {published} was cut off, so its pages are partly old. Publish again and upload first"
        : UploadList.Beside(published.FullName) is not { } list ? $"The link works after you publish the site and upload customers/ to {site}"
        : !Directory.Exists(Path.Combine(published.FullName, handover.Folder)) ? $"The link does not work yet: {handover.Folder}/ is not in {published}. Publish and upload, then send this."
        : list.Names(handover.Folder) ? $"The link may not work yet: the upload of {handover.Folder}/ to {site} is not confirmed. Upload it, confirm with 'layshaft uploaded --out {published}', then send this."
        : $"The link's page is confirmed as uploaded to {site}";

    // Drafts hold links and addresses of customers: a new folder can be read by its owner only.
    private static void CreateFolder(string path)
    {
        if (OperatingSystem.IsWindows() || Directory.Exists(path))
        {
            Directory.CreateDirectory(path);
        }
        else
        {
            Directory.CreateDirectory(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    // Written atomically: an email program must not find half a draft.
    private static int Save(DirectoryInfo folder, string name, ReadOnlyMemory<byte> content, TextWriter output)
    {
        var path = Path.Combine(folder.FullName, name);
        var part = $"{path}.part";
        File.Delete(part);
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        using (var stream = new FileStream(part, options))
        {
            stream.Write(content.Span);
        }

        File.Move(part, path, overwrite: true);
        output.WriteLine($"Wrote {Path.Combine(folder.ToString(), name)}");
        return ExitCode.Fine;
    }
}
