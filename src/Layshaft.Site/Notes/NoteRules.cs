using Markdig.Extensions.Tables;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Layshaft.Site.Notes;

/// <summary>What is taken out of a parsed note, or changed in it, before it is written as markup.</summary>
internal static class NoteRules
{
    internal static void Apply(MarkdownDocument note, int headingLevel, ICollection<NoteProblem> problems)
    {
        foreach (var node in note.Descendants().ToList())
        {
            switch (node)
            {
                case HeadingBlock heading:
                    heading.Level = Math.Min(6, heading.Level + headingLevel);
                    break;
                case LinkInline { IsImage: true } image:
                    problems.Add(new(image.Line + 1, "An image in a note is not shown. Add the photo under 'photos' in the job."));
                    ReduceToText(image);
                    break;
                case LinkInline link:
                    ApplyTo(link, link.GetDynamicUrl?.Invoke() ?? link.Url, problems);
                    break;
                case AutolinkInline link:
                    ApplyTo(link, problems);
                    break;
                case Table table:
                    AlignByClass(table);
                    break;
            }
        }
    }

    private static void ApplyTo(LinkInline link, string? address, ICollection<NoteProblem> problems)
    {
        if (!NoteLinks.IsAllowed(address))
        {
            problems.Add(Refused(link.Line, address));
            ReduceToText(link);
        }
        else
        {
            if (NoteLinks.IsOutside(address!))
            {
                KeepPageSecret(link);
            }

            SpellOnPaper(link, address!);
        }
    }

    /// <summary>On paper nobody can follow a link, so its address is printed after its words, unless they are the address.</summary>
    private static void SpellOnPaper(LinkInline link, string address)
    {
        if (NoteLinks.Spelled(address) is { } spelled && !string.Concat(link.Descendants<LiteralInline>().Select(l => l.Content.ToString())).Contains(spelled, StringComparison.OrdinalIgnoreCase))
        {
            link.GetAttributes().AddClass("spell-link");
            link.GetAttributes().AddProperty("data-address", spelled);
        }
    }

    private static void ApplyTo(AutolinkInline link, ICollection<NoteProblem> problems)
    {
        if (!link.IsEmail && !NoteLinks.IsAllowed(link.Url))
        {
            problems.Add(Refused(link.Line, link.Url));
            link.ReplaceBy(new LiteralInline(link.Url));
        }
        else if (!link.IsEmail && NoteLinks.IsOutside(link.Url))
        {
            KeepPageSecret(link);
        }
    }

    /// <summary>A customer's page has a secret address, which a browser would tell the site that a link leads to.</summary>
    private static void KeepPageSecret(Inline link) => link.GetAttributes().AddProperty("rel", "noreferrer");

    private static NoteProblem Refused(int line, string? address) =>
        new(line + 1, $"The link to '{address}' is left out. Write a link to http, https, mailto, tel or a page of this site.");

    /// <summary>Puts a link's own words in its place.</summary>
    private static void ReduceToText(LinkInline link)
    {
        while (link.FirstChild is { } child)
        {
            child.Remove();
            link.InsertBefore(child);
        }

        link.Remove();
    }

    /// <summary>Columns are aligned by a class, so that pages can forbid inline styles.</summary>
    private static void AlignByClass(Table table)
    {
        foreach (var row in table.OfType<TableRow>())
        {
            for (var i = 0; i < row.Count; i++)
            {
                var cell = (TableCell)row[i];
                var column = cell.ColumnIndex >= 0 ? cell.ColumnIndex : i;
                if (column < table.ColumnDefinitions.Count && ClassOf(table.ColumnDefinitions[column].Alignment) is { } name)
                {
                    cell.GetAttributes().AddClass(name);
                }
            }
        }

        foreach (var column in table.ColumnDefinitions)
        {
            column.Alignment = null;
        }
    }

    private static string? ClassOf(TableColumnAlign? alignment) => alignment switch
    {
        TableColumnAlign.Right => "align-end",
        TableColumnAlign.Center => "align-centre",
        _ => null,
    };
}
