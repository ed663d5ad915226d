using System.Text;
using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests.Wording;

/// <summary>The English texts with a mark at each end of every sentence, so that what did not come from them can be told.</summary>
internal static class MarkedTexts
{
    private const char Opens = '\uE000';
    private const char Closes = '\uE001';

    public static Texts Load()
    {
        using var temp = new TempFolder();
        var yaml = new StringBuilder();
        foreach (var (key, sentence) in LanguageFiles.Read("en").Where(s => s.Key != Texts.DecimalMarkKey))
        {
            yaml.Append(key).Append(":\n");
            foreach (var (form, words) in sentence.Forms())
            {
                yaml.Append("  ").Append(form).Append(": ").AppendLine(JsonSerializer.Serialize($"{Opens}{words.Source}{Closes}"));
            }
        }

        temp.Write("texts/en.yaml", yaml.ToString());
        var loaded = TextsLoader.Load(TemplateFolders.BesideProgram(temp.Path));
        Assert.Empty(loaded.Problems);
        return loaded.Texts!;
    }

    /// <summary>Everything on a page that a reader sees or hears and that lies outside the marks, piece by piece.</summary>
    public static IEnumerable<string> Unmarked(string html)
    {
        var document = new HtmlParser().ParseDocument(html);
        var heard = document.All.SelectMany(e => e.Attributes.Where(a => a.Name is "alt" or "aria-label" or "title" || (a.Name == "content" && e.GetAttribute("name") == "description"))).Select(a => a.Value);
        var shown = document.GetNodes<IText>().Where(t => t.ParentElement?.LocalName is not ("style" or "script"));

        // A drawing breaks a long label into lines, so its texts are read as one.
        var drawn = shown.GroupBy(t => (object?)t.ParentElement?.Closest("svg") ?? t).Select(g => string.Concat(g.Select(t => t.Data)));
        return heard.Concat(drawn).SelectMany(Outside).Select(t => t.Trim()).Where(t => t.Length > 0);
    }

    private static IEnumerable<string> Outside(string text)
    {
        var depth = 0;
        var piece = new StringBuilder();
        foreach (var c in text)
        {
            if (c is Opens or Closes)
            {
                yield return piece.ToString();
                piece.Clear();
                depth += c == Opens ? 1 : -1;
            }
            else if (depth == 0)
            {
                piece.Append(c);
            }
        }

        yield return piece.ToString();
    }
}
