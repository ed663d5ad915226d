namespace Layshaft.Site.Figures;

/// <summary>A quantity as a page shows it.</summary>
/// <param name="Number">The number alone, for a table whose heading names the unit.</param>
/// <param name="Unit">The unit's symbol; empty for a pure number.</param>
/// <param name="Both">The figure followed by the other customary unit in parentheses; the same as <see cref="Text"/> when there is none.</param>
public sealed record Figure(string Number, string Unit, string Both)
{
    /// <summary>The number and its unit, kept together by a narrow space that does not break: <c>0.12 mm</c>.</summary>
    public string Text => Join(Number, Unit);

    /// <inheritdoc/>
    public override string ToString() => Text;

    internal static string Join(string number, string unit) => unit is "" or "°" ? number + unit : $"{number}{NumberText.NarrowSpace}{unit}";
}
