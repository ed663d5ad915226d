using Layshaft.Site.Look;

namespace Layshaft.Site.Cards;

/// <summary>
/// What a preview picture shows. Anyone who sees the link may see it, so it names no owner and no price.
/// </summary>
/// <param name="Shop">The shop's name.</param>
/// <param name="Colour">The shop's colour.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Heading">What the page is.</param>
/// <param name="Words">What it says in one sentence.</param>
/// <param name="Grades">How many parts got each grade; empty for none.</param>
public sealed record CardView(string Shop, Rgb Colour, string Unit, string Heading, string Words, IReadOnlyList<CardGrade> Grades);

/// <summary>A grade on the picture.</summary>
/// <param name="Mark">Its shape and letter.</param>
/// <param name="Name">Its name.</param>
/// <param name="Words">How many parts got it.</param>
public sealed record CardGrade(Charts.GradeMark Mark, string Name, string Words);
