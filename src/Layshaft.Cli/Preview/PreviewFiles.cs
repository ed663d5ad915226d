using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Layshaft.Site.Html;

namespace Layshaft.Cli.Preview;

/// <summary>A file of the site as the preview sends it, and the two files that only the preview has.</summary>
internal static partial class PreviewFiles
{
    /// <summary>The address of the script that refreshes an open page.</summary>
    public const string Script = "/layshaft-preview.js";

    /// <summary>The address of the stylesheet of the preview's own pages.</summary>
    public const string Sheet = "/layshaft-preview.css";

    /// <summary>The address that tells of changes (server-sent events, HTML Living Standard 9.2).</summary>
    public const string Events = "/layshaft-preview-events";

    /// <summary>What the preview's own pages may load.</summary>
    public const string Policy = "default-src 'none'; img-src data:; style-src 'self'; script-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    public const string ScriptText =
        """
        "use strict";
        // The page's version is in this script's address; the preview sends the version of the site.
        const mine = new URL(document.currentScript.src).searchParams.get("version");
        new EventSource("/layshaft-preview-events").onmessage = sent => {
          if (sent.data !== mine) {
            location.reload();
          }
        };

        """;

    public const string SheetText =
        """
        :root { color-scheme: light dark; font: 16px/1.5 system-ui, sans-serif; }
        main { max-width: 60rem; margin: 2rem auto; padding: 0 1rem; }
        h2 { margin-top: 2rem; font-size: 1.1rem; }
        a { color: LinkText; }
        .problem { border-left: 4px solid #b3261e; padding: .1rem 0 .1rem 1rem; margin: 1rem 0; }
        .place { font-family: ui-monospace, monospace; font-weight: 600; margin: 0; overflow-wrap: anywhere; }
        .problem p { margin: .2rem 0; }
        pre { overflow-x: auto; margin: .4rem 0; }

        """;

    /// <summary>A page with the script in it that refreshes it, and the policy that its header must carry.</summary>
    /// <param name="html">The page as published.</param>
    /// <param name="version">The version of the site that it is from.</param>
    public static (string Html, string Policy) WithScript(string html, string version)
    {
        // The page's own policy goes into the header, for a policy in the page could only take the script away again.
        var own = OwnPolicy().Match(html);
        var policy = own.Success ? Allowing(WebUtility.HtmlDecode(own.Groups[1].Value)) : Policy;
        var head = html.IndexOf("</head>", StringComparison.OrdinalIgnoreCase);
        var script = $"<script src=\"{Script}?version={HtmlText.Escape(version)}\" defer></script>";
        var with = head < 0 ? html : new StringBuilder(html).Insert(head, script).ToString();
        return (own.Success ? with.Replace(own.Value, string.Empty, StringComparison.Ordinal) : with, policy);
    }

    /// <summary>The content type of a file by its ending, of those that a site holds.</summary>
    public static string TypeOf(string path) => Path.GetExtension(path).ToLowerInvariant() switch
    {
        ".html" => "text/html; charset=utf-8",
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".json" => "application/json",
        ".csv" => "text/csv; charset=utf-8",
        ".txt" => "text/plain; charset=utf-8",
        ".svg" => "image/svg+xml",
        ".jpg" or ".jpeg" => "image/jpeg",
        ".png" => "image/png",
        ".woff2" => "font/woff2",
        ".eml" => "message/rfc822",
        _ => "application/octet-stream",
    };

    /// <summary>The file of a site that an address names; null when it names none or tries to lead outside.</summary>
    /// <param name="site">The site's folder.</param>
    /// <param name="address">The path of the address, decoded, with its first slash.</param>
    public static string? Locate(string site, string address)
    {
        var path = address.EndsWith('/') ? address + "index.html" : address;
        var parts = path.Split('/')[1..];
        var harmless = parts.Length > 0 && parts.All(p => p.Length > 0 && !p.StartsWith('.') && p.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_'));
        var file = harmless ? Path.Combine([site, .. parts]) : null;
        return file is not null && File.Exists(file) && !HasLink(site, parts) ? file : null;
    }

    // A link in the site may lead out of it, into the book or anywhere.
    private static bool HasLink(string site, string[] parts)
    {
        var place = site;
        foreach (var part in parts)
        {
            place = Path.Combine(place, part);
            if ((File.GetAttributes(place) & FileAttributes.ReparsePoint) != 0)
            {
                return true;
            }
        }

        return false;
    }

    private static string Allowing(string policy)
    {
        var parts = policy.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).ToList();
        foreach (var kind in (string[])["script-src", "connect-src"])
        {
            var at = parts.FindIndex(p => p.StartsWith(kind + " ", StringComparison.Ordinal));
            if (at < 0)
            {
                parts.Add($"{kind} 'self'");
            }
            else
            {
                parts[at] = parts[at].Replace(" 'none'", string.Empty, StringComparison.Ordinal) + " 'self'";
            }
        }

        return string.Join("; ", [.. parts, "frame-ancestors 'none'"]);
    }

    [GeneratedRegex("<meta http-equiv=\"Content-Security-Policy\" content=\"([^\"]*)\">\\n?", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex OwnPolicy();
}
