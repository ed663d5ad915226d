using System.Security.Cryptography;
using System.Text;
using AngleSharp;
using AngleSharp.Dom;
using AngleSharp.Html;
using AngleSharp.Html.Parser;
using Layshaft.Book.Values;

namespace Layshaft.Site.Sending;

/// <summary>
/// A page of the site made to stand alone: stylesheets, fonts and drawings inside, pictures as marks that
/// <see cref="OneFileReport"/> fills, links to other pages absolute or gone, and a policy that lets nothing be loaded.
/// </summary>
internal sealed class OneFilePage
{
    private readonly string path;
    private readonly Func<string, ReadOnlyMemory<byte>?> read;
    private readonly WebAddress? site;
    private readonly IDocument document;
    private readonly List<string> pictures = [];
    private readonly List<string> missing = [];

    private OneFilePage(string path, string html, Func<string, ReadOnlyMemory<byte>?> read, WebAddress? site)
    {
        (this.path, this.read, this.site) = (path, read, site);
        document = new HtmlParser().ParseDocument(html);
        RemoveWhatLoads();
        InlinePictures();
        KeepLinks();
        SetPolicy(InlineSheets());
        Html = document.ToHtml(HtmlMarkupFormatter.Instance);
    }

    /// <summary>The page; picture n stands as <see cref="MarkOf"/> n.</summary>
    public string Html { get; }

    /// <summary>The pictures in the order of their marks, by their paths in the site.</summary>
    public IReadOnlyList<string> Pictures => pictures;

    /// <summary>What could not be put inside.</summary>
    public IReadOnlyList<string> Missing => missing;

    public static OneFilePage Of(string path, string html, Func<string, ReadOnlyMemory<byte>?> read, WebAddress? site) => new(path, html, read, site);

    /// <summary>What stands for a picture.</summary>
    public static string MarkOf(int picture) => FormattableString.Invariant($"layshaft-picture-{picture}-here");

    private void RemoveWhatLoads()
    {
        const string Loading = "script, iframe, object, embed, video, audio, source, base, template, link:not([rel=stylesheet]):not([rel=icon]), meta[property^='og:image'], meta[http-equiv=refresh]";
        foreach (var element in document.QuerySelectorAll(Loading))
        {
            element.Remove();
        }
    }

    private void InlinePictures()
    {
        foreach (var image in document.QuerySelectorAll("img"))
        {
            var address = image.GetAttribute("src") ?? string.Empty;
            image.RemoveAttribute("srcset");
            image.RemoveAttribute("sizes");
            image.RemoveAttribute("loading");
            if (address.StartsWith("data:", StringComparison.OrdinalIgnoreCase))
            {
                continue;
            }

            if (SitePaths.Resolve(path, address) is not { } target)
            {
                missing.Add(address);
                image.Remove();
                continue;
            }

            image.SetAttribute("src", MarkOf(pictures.Count));
            pictures.Add(target);
        }
    }

    private void KeepLinks()
    {
        foreach (var link in document.QuerySelectorAll("a, area, use, image, form"))
        {
            foreach (var name in new[] { "href", "xlink:href", "action", "ping" })
            {
                if (link.GetAttribute(name) is not { } address || address.StartsWith('#'))
                {
                    continue;
                }

                if (SitePaths.IsOutside(address) && link.LocalName is "a" or "area" && name != "ping")
                {
                    continue;
                }

                Redirect(link, name, address);
            }
        }

        foreach (var navigation in document.QuerySelectorAll("nav").Where(n => n.QuerySelector("a[href]") is null))
        {
            navigation.Remove();
        }
    }

    // The full size of a picture is the picture that is here; another page is where the site is.
    private void Redirect(IElement link, string name, string address)
    {
        if (link.LocalName == "a" && !link.ClassList.Contains("picture") && site is not null && SitePaths.Resolve(path, address) is { } target)
        {
            link.SetAttribute(name, site.Of(target) + (address.IndexOf('#', StringComparison.Ordinal) is var at and >= 0 ? address[at..] : string.Empty));
        }
        else
        {
            link.RemoveAttribute(name);
        }
    }

    private List<string> InlineSheets()
    {
        var hashes = new List<string>();
        foreach (var link in document.QuerySelectorAll("link[rel=stylesheet], style").ToArray())
        {
            if (link.LocalName == "style")
            {
                link.TextContent = InlineStyles.Alone(link.TextContent, path, read, missing);
                hashes.Add(HashOf(link));
                continue;
            }

            var style = document.CreateElement("style");
            if (link.GetAttribute("media") is { } media)
            {
                style.SetAttribute("media", media);
            }

            var sheet = SitePaths.Resolve(path, link.GetAttribute("href") ?? string.Empty);
            style.TextContent = sheet is null ? string.Empty : InlineStyles.Of(sheet, read, missing);
            hashes.Add(HashOf(style));
            link.Replace(style);
        }

        return hashes;
    }

    private static string HashOf(IElement style) => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style.TextContent)))}'";

    private void SetPolicy(List<string> hashes)
    {
        var styles = hashes.Count == 0 ? "'none'" : string.Join(' ', hashes);
        var policy = $"default-src 'none'; img-src data:; style-src {styles}; font-src data:; base-uri 'none'; form-action 'none'";
        var meta = document.QuerySelector("meta[http-equiv='Content-Security-Policy']");
        if (meta is null)
        {
            meta = document.CreateElement("meta");
            meta.SetAttribute("http-equiv", "Content-Security-Policy");
            document.Head!.Prepend(meta);
        }

        meta.SetAttribute("content", policy);
    }
}
