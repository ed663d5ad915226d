using Layshaft.Site.Html;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Reference;

/// <summary>The first public page: what there is to look up.</summary>
/// <param name="Head">Head of the page.</param>
/// <param name="Gearboxes">Links to the gearboxes.</param>
/// <param name="Cars">Links to the cars.</param>
/// <param name="Walls">Links to the wall charts.</param>
/// <param name="Terms">Link to the words for damage.</param>
/// <param name="Foot">Foot of the page.</param>
public sealed record ReferenceIndex(
    PageHead Head, IReadOnlyList<LinkView> Gearboxes, IReadOnlyList<LinkView> Cars, IReadOnlyList<LinkView> Walls, LinkView Terms, PageFoot Foot);

/// <summary>A page on which gears, final drive and tyre are chosen and the speeds follow.</summary>
/// <param name="Head">Head of the page.</param>
/// <param name="Heading">Main heading.</param>
/// <param name="Lines">What the page is, and what it rests on.</param>
/// <param name="Groups">What there is to choose.</param>
/// <param name="Combinations">The speeds of every choice.</param>
/// <param name="Walls">Links to the wall charts.</param>
/// <param name="Data">Links to the figures beside the page.</param>
/// <param name="Foot">Foot of the page.</param>
public sealed record ReferencePage(
    PageHead Head,
    string Heading,
    IReadOnlyList<string> Lines,
    IReadOnlyList<ChoiceGroup> Groups,
    IReadOnlyList<Combination> Combinations,
    IReadOnlyList<LinkView> Walls,
    SectionView Data,
    PageFoot Foot);

/// <summary>One thing to choose.</summary>
/// <param name="Id">Short name, unique on the page.</param>
/// <param name="Name">What is chosen.</param>
/// <param name="Options">What there is.</param>
public sealed record ChoiceGroup(string Id, string Name, IReadOnlyList<ChoiceOption> Options);

/// <summary>One option.</summary>
/// <param name="Id">Unique on the page.</param>
/// <param name="Words">What it is.</param>
/// <param name="IsChosen">Whether it is chosen at first.</param>
public sealed record ChoiceOption(string Id, string Words, bool IsChosen);

/// <summary>The speeds of one choice.</summary>
/// <param name="Classes">The classes by which the page's styles hide it until it is chosen.</param>
/// <param name="Heading">The choice in words.</param>
/// <param name="Rests">Its set and tyre, for paper, which leaves out what can be chosen; null where there is one of each.</param>
/// <param name="Chart">Engine speed against road speed; null where no tyre is known.</param>
/// <param name="Rows">One row for each gear.</param>
public sealed record Combination(string Classes, string Heading, string? Rests, RawHtml? Chart, IReadOnlyList<ReferenceRow> Rows);

/// <summary>One gear of a choice.</summary>
/// <param name="Gear">Its name.</param>
/// <param name="Teeth">Its teeth in words, with the ratio.</param>
/// <param name="Overall">Engine turns for one turn of the wheels.</param>
/// <param name="PerThousand">Speed at 1000 rpm; null where no tyre is known.</param>
/// <param name="AtLimit">Speed at the limit; null where no tyre is known.</param>
/// <param name="Past">The limits that the speed at the limit exceeds, in words; null for none.</param>
/// <param name="Lands">Engine speed after an upshift at the limit; null in top gear.</param>
public sealed record ReferenceRow(string Gear, string Teeth, string Overall, string? PerThousand, string? AtLimit, string? Past, string? Lands);

/// <summary>A chart for the wall: the speed at the limit in every gear with every pair and final drive.</summary>
/// <param name="Head">Head of the page.</param>
/// <param name="Heading">Main heading.</param>
/// <param name="Rests">What the speeds rest on.</param>
/// <param name="Finals">The final drives, each over its gears.</param>
/// <param name="Gears">The names of the gears, one for each column.</param>
/// <param name="Rows">One row for each drop pair.</param>
/// <param name="Data">Links to the figures beside the page.</param>
/// <param name="Past">What the mark of a limit means.</param>
/// <param name="Foot">What comes first.</param>
public sealed record WallPage(
    PageHead Head, string Heading, string Rests, IReadOnlyList<WallFinal> Finals, IReadOnlyList<string> Gears, IReadOnlyList<WallRow> Rows, SectionView Data, string Past, string Foot);

/// <summary>A final drive over its columns.</summary>
/// <param name="Words">The final drive.</param>
/// <param name="Columns">How many gears.</param>
public sealed record WallFinal(string Words, int Columns);

/// <summary>A drop pair with its speeds.</summary>
/// <param name="Pair">The pair in words.</param>
/// <param name="Cells">One for each final drive and gear.</param>
public sealed record WallRow(string Pair, IReadOnlyList<WallCell> Cells);

/// <summary>A speed in both units.</summary>
/// <param name="First">In the shop's unit.</param>
/// <param name="Second">In the other one.</param>
/// <param name="Past">The limits that the speed exceeds, in words; null for none.</param>
/// <param name="Begins">Whether a final drive's columns begin here.</param>
public sealed record WallCell(string First, string Second, string? Past, bool Begins);
