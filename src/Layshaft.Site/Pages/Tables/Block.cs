using Layshaft.Site.Html;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Tables;

/// <summary>A piece of a section; whatever is not set is not shown. In this order: heading, lines, list, drawing, table, links.</summary>
public sealed record Block
{
    /// <summary>A heading of its own.</summary>
    public string? Heading { get; init; }

    /// <summary>Paragraphs.</summary>
    public IReadOnlyList<string> Lines { get; init; } = [];

    /// <summary>A list, an item a line.</summary>
    public IReadOnlyList<string> Items { get; init; } = [];

    /// <summary>Whether the list is a caution and is framed as one.</summary>
    public bool IsCaution { get; init; }

    /// <summary>A drawing.</summary>
    public RawHtml? Chart { get; init; }

    /// <summary>A table.</summary>
    public TableView? Table { get; init; }

    /// <summary>Links, a line each.</summary>
    public IReadOnlyList<LinkView> Links { get; init; } = [];

    /// <summary>Words behind which the piece is folded away; null shows it open.</summary>
    public string? Fold { get; init; }

    /// <summary>Paragraphs alone.</summary>
    public static Block Say(params string[] lines) => new() { Lines = lines };
}

/// <summary>A section made of pieces.</summary>
/// <param name="Blocks">The pieces.</param>
public sealed record BlocksView(IReadOnlyList<Block> Blocks)
{
    /// <summary>The template of such a section.</summary>
    public const string Template = "sections/blocks.html";

    /// <summary>A section of pieces; null when there are none.</summary>
    public static SectionView? Section(string id, string heading, params IEnumerable<Block> blocks)
    {
        Block[] all = [.. blocks];
        return all.Length == 0 ? null : new SectionView(id, heading, Template, new BlocksView(all));
    }
}
