using System.Text;
using Layshaft.Book.Records;
using Layshaft.Site.Building;
using Layshaft.Site.Cards;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Estimates;

namespace Layshaft.Site.Sending;

/// <summary>Makes what goes to the customer about one job: the report as one file, and the mail.</summary>
/// <param name="builder">Knows the site.</param>
/// <param name="job">A job that <see cref="IsDue"/>.</param>
public sealed class Handover(SiteBuilder builder, Job job)
{
    private readonly Composition composition = builder.Composition;
    private readonly OwnerView view = OwnerView.Of(builder.Composition.Book, builder.Composition.Book.Units[job.Unit]).First(v => v.IsOwn(job));

    /// <summary>Whether there is something to hand over: a report, or an estimate to answer.</summary>
    public static bool IsDue(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return job.Finished is not null || EstimateComposer.IsOpen(job);
    }

    /// <summary>The customer.</summary>
    public Customer Customer => composition.Book.Customers[view.Owner.Customer];

    /// <summary>The folder of the job's page in the site, which the link leads to.</summary>
    public string Folder => $"{composition.Addresses.Folder(view)}/{job.Number}";

    /// <summary>The name of the one-file report.</summary>
    public string ReportName => $"{Kind}-{job.Number}.html";

    /// <summary>The name of the draft.</summary>
    public string DraftName => $"{Kind}-{job.Number}.eml";

    /// <summary>The page of the job as one file, within the size that the shop sets.</summary>
    /// <exception cref="PageException">A template has mistakes.</exception>
    public OneFileReport Report()
    {
        var files = builder.FilesOf(view, job).ToDictionary(f => f.Path, StringComparer.Ordinal);
        var page = composition.Addresses.Report(view, job);
        return OneFileReport.Make(
            page,
            Encoding.UTF8.GetString(Made(files[page]).Span),
            path => files.TryGetValue(path, out var file) ? Made(file) : null,
            OneFilePictures.Of(composition, view, job, builder.BookFiles),
            composition.Shop.SiteAddress,
            composition.Shop.OneFileLimit);
    }

    /// <summary>The mail, as a draft.</summary>
    /// <param name="enclosed">The one-file report to go with it; null for none.</param>
    /// <exception cref="PageException">A template has mistakes.</exception>
    public MailDraft Draft(ReadOnlyMemory<byte>? enclosed)
    {
        var letter = HandoverComposer.Compose(composition, view, job, enclosed is null ? null : ReportName, MailDraft.PictureAddress);
        var html = builder.Engine.Render(HandoverLetter.Template, letter);
        var shop = composition.Shop;
        return new MailDraft(
            new MailParty(shop.Name, MailDraft.AddressIn(shop.Email) ?? "bench@layshaft.invalid"),
            [.. Customer.Emails.Select(MailDraft.AddressIn).OfType<string>().Distinct().Select(address => new MailParty(Customer.Name, address))],
            letter.Subject,
            job.Finished ?? OfferWords.Waiting(job)[^1].Sent,
            letter.PlainText(),
            html.Html ?? throw new PageException(HandoverLetter.Template, html.Problems),
            CardPicture.Png(CardComposer.Of(composition, view, job)),
            enclosed is { } content ? new MailFile(ReportName, content) : null);
    }

    // A supplement does not overwrite the estimate that it adds to.
    private string Kind => job.Finished is not null ? "report"
        : OfferWords.Waiting(job)[0].Number is > 0 and var number ? FormattableString.Invariant($"supplement-{number}")
        : "estimate";

    private static ReadOnlyMemory<byte> Made(SiteFile file)
    {
        var made = file.Make();
        return made.Bytes ?? throw new PageException(file.Path, made.Problems);
    }
}
