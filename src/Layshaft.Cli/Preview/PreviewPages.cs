using System.Globalization;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Cli.Terminal;
using Layshaft.Site.Html;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;

namespace Layshaft.Cli.Preview;

/// <summary>The pages that only the preview has: what there is to see, and what is wrong.</summary>
internal static partial class PreviewPages
{
    /// <summary>So many customers' pages are listed; the shop's own pages link to all.</summary>
    private const int MostListed = 100;

    /// <summary>All that can be opened, with what is worth knowing of the book.</summary>
    public static string Start(PreviewSite site)
    {
        var body = new StringBuilder("<h1>Preview</h1><p>Updated whenever a file of the book is saved. Visible only on this computer.</p>");
        List(body, "Internal pages, not for upload", Existing(site, Addresses.ShopIndex, "Open jobs, service due, shims, links to all customer pages"));
        List(body, "Customer pages, each under its own key", Histories(site));
        List(body, "Public pages", [.. Existing(site, Addresses.ReferenceIndex, "Gearing reference"), .. Existing(site, Addresses.Terms, "Damage terms")]);
        if (site.State.Problems.Count > 0 || site.State.Failures.Count > 0)
        {
            body.Append("<h2>Notes</h2>");
            Problems(body, site);
        }

        return Page("Preview", body);
    }

    /// <summary>What keeps the site from being made.</summary>
    public static string Stopped(PreviewSite site)
    {
        if (site.State.Version.Length == 0)
        {
            return Page("One moment", new StringBuilder("<h1>One moment</h1><p>The site is being generated for the first time.</p>"));
        }

        var stops = site.State.Problems.Count(p => p.Severity == Severity.Stops);
        var body = new StringBuilder("<h1>")
            .Append(stops switch { 0 => "The site cannot be generated", 1 => "1 problem to fix", _ => string.Create(CultureInfo.InvariantCulture, $"{stops} problems to fix") })
            .Append("</h1><p>The site returns when the book is fixed and saved.</p>");
        Problems(body, site);
        return Page("Problems", body);
    }

    /// <summary>There is no such page.</summary>
    public static string Missing() => Page("Not here", new StringBuilder("<h1>There is no such page</h1><p>A change in the book may have removed it. <a href=\"/\">All pages</a></p>"));

    private static void Problems(StringBuilder body, PreviewSite site)
    {
        foreach (var failure in site.State.Failures)
        {
            body.Append("<p class=\"problem\">").Append(HtmlText.Escape(failure)).Append("</p>");
        }

        foreach (var group in ProblemGroup.Of(site.State.Problems))
        {
            var problem = group.First;
            body.Append("<section class=\"problem\"><p class=\"place\">").Append(HtmlText.Escape(problem.Place.ToString()))
                .Append("</p><p>").Append(problem.Severity == Severity.Notice ? "Note: " : "").Append(HtmlText.Escape(problem.Message))
                .Append(problem.Remedy.Length > 0 ? $" <strong>{HtmlText.Escape(problem.Remedy)}</strong>" : "")
                .Append(group.Elsewhere.Count > 0 ? $" {HtmlText.Escape(group.Where)}" : "").Append("</p>");
            if (LineOf(site.Book, problem) is { } line)
            {
                body.Append("<pre>").Append(HtmlText.Escape(line)).Append('\n').Append(' ', Math.Clamp(problem.Place.Column - 1, 0, line.Length)).Append("^</pre>");
            }

            body.Append("</section>");
        }
    }

    private static string? LineOf(string book, Problem problem)
    {
        try
        {
            // Only a file within the book: the place comes from reading it.
            using var text = problem.Place.Line < 1 ? StreamReader.Null : new StreamReader(RegularFile.Open(Path.Combine(book, problem.Place.File)));
            var line = text.ReadLine();
            for (var n = 1; n < problem.Place.Line; n++)
            {
                line = text.ReadLine();
            }

            return line is { Length: <= 400 } ? line : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static void List(StringBuilder body, string heading, IReadOnlyList<(string Address, string Words)> links)
    {
        if (links.Count == 0)
        {
            return;
        }

        body.Append("<h2>").Append(HtmlText.Escape(heading)).Append("</h2><ul>");
        foreach (var (address, words) in links.Take(MostListed))
        {
            body.Append("<li><a href=\"/").Append(HtmlText.Escape(address)).Append("\">").Append(HtmlText.Escape(words)).Append("</a></li>");
        }

        body.Append("</ul>");
    }

    private static IReadOnlyList<(string Address, string Words)> Existing(PreviewSite site, string address, string words) =>
        File.Exists(Path.Combine(site.Folder, address)) ? [(address, words)] : [];

    private static IReadOnlyList<(string Address, string Words)> Histories(PreviewSite site)
    {
        var customers = Path.Combine(site.Folder, Addresses.Customers);
        return !Directory.Exists(customers)
            ? []
            : [.. Directory.EnumerateFiles(customers, "index.html", new EnumerationOptions { RecurseSubdirectories = true, MaxRecursionDepth = 1 })
                .Where(file => Path.GetFileName(Path.GetDirectoryName(file))!.Length == CustomerKeys.Length) // the other folders hold an empty page
                .Select(file => (Path.GetRelativePath(site.Folder, file).Replace('\\', '/'), TitleOf(file)))
                .OrderBy(p => p.Item2, StringComparer.Ordinal)];
    }

    private static string TitleOf(string file)
    {
        var match = Title().Match(Encoding.UTF8.GetString(RegularFile.ReadAll(file)));
        return match.Success ? WebUtility.HtmlDecode(match.Groups[1].Value) : Path.GetFileName(Path.GetDirectoryName(file)!);
    }

    private static string Page(string title, StringBuilder body) =>
        $"<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"><title>{title}</title><link rel=\"stylesheet\" href=\"{PreviewFiles.Sheet}\"><link rel=\"icon\" href=\"data:,\"></head><body><main>{body}</main></body></html>";

    [GeneratedRegex("<title>([^<]*)</title>", RegexOptions.None, 1000)]
    private static partial Regex Title();
}
