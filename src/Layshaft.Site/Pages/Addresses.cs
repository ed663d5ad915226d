using Layshaft.Book.Records;

namespace Layshaft.Site.Pages;

/// <summary>
/// Where each page is, as a path from the output folder, and how one page links to another. Links are relative: the site
/// works from any folder and from disk.
/// </summary>
/// <param name="KeyOf">The key of an owner's folder.</param>
public sealed record Addresses(Func<OwnerView, string> KeyOf)
{
    /// <summary>The key that an owner's folder had while keys hung on the place in the list of owners; null where none is asked for.</summary>
    public Func<OwnerView, string>? KeyOfPlace { get; init; }

    /// <summary>Pages for upload.</summary>
    public const string Customers = "customers";

    /// <summary>Pages that are never for upload.</summary>
    public const string Shop = "shop";

    /// <summary>Pages for anyone.</summary>
    public const string Reference = "reference";

    /// <summary>The shop's first page.</summary>
    public const string ShopIndex = Shop + "/index.html";

    /// <summary>The words for damage, for anyone.</summary>
    public const string Terms = Reference + "/terms.html";
    /// <summary>The first of the public pages.</summary>
    public const string ReferenceIndex = Reference + "/index.html";

    /// <summary>The public page of a gearbox or a car.</summary>
    public static string ReferencePage(string id) => $"{Reference}/{id}.html";

    /// <summary>The wall chart of a gearbox or a car on one of its tyres.</summary>
    public static string WallPage(string id, int tyre) =>
        FormattableString.Invariant(tyre == 0 ? $"{Reference}/wall-{id}.html" : (FormattableString)$"{Reference}/wall-{id}-{tyre + 1}.html");

    /// <summary>The shop's logo, as each tree of the site has it.</summary>
    public static string Logo(string tree) => $"{tree}/look/logo.jpg";

    /// <summary>An owner's folder.</summary>
    public string Folder(OwnerView view) => $"{Customers}/{KeyOf(view)}";

    /// <summary>The history of a unit as an owner sees it.</summary>
    public string History(OwnerView view) => $"{Folder(view)}/index.html";

    /// <summary>The report on a job as an owner sees it.</summary>
    public string Report(OwnerView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return Report(view, job.Number);
    }

    /// <summary>The report on the job of a number as an owner sees it.</summary>
    public string Report(OwnerView view, string number) => $"{Folder(view)}/{number}/index.html";

    /// <summary>The lap sheet of a job's next event.</summary>
    public string LapSheet(OwnerView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return $"{Folder(view)}/{job.Number}/lap.html";
    }

    /// <summary>The inspection and build sheet of a job on the bench.</summary>
    public static string BenchSheet(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return $"{Shop}/sheet-{job.Number}.html";
    }

    /// <summary>The preview picture of a job's page.</summary>
    public string Card(OwnerView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return $"{Folder(view)}/{job.Number}/card.png";
    }

    /// <summary>The preview picture of a unit's history.</summary>
    public string Card(OwnerView view) => $"{Folder(view)}/card.png";

    /// <summary>A rendition of a picture of a job.</summary>
    public string Picture(OwnerView view, Job job, string file, int width)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(file);
        var name = string.Concat(Path.ChangeExtension(file, null).ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));
        return FormattableString.Invariant($"{Folder(view)}/{job.Number}/{name}-{width}.jpg");
    }

    /// <summary>The address of a file as a link on a page.</summary>
    /// <param name="page">Path of the page.</param>
    /// <param name="target">Path of the file.</param>
    public static string Link(string page, string target)
    {
        ArgumentNullException.ThrowIfNull(page);
        ArgumentNullException.ThrowIfNull(target);
        var from = page.Split('/');
        var to = target.Split('/');
        var common = 0;
        while (common < from.Length - 1 && common < to.Length - 1 && from[common] == to[common])
        {
            common++;
        }

        return string.Join('/', Enumerable.Repeat("..", from.Length - 1 - common).Concat(to[common..]));
    }
}
