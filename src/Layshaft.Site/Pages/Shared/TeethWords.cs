using Layshaft.Book.Values;

namespace Layshaft.Site.Pages.Shared;

/// <summary>Writes pairs of gears.</summary>
public static class TeethWords
{
    /// <summary>Which gear drives which.</summary>
    public static string Of(Teeth teeth, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return composition.Figures.TeethPair(teeth.Driver, teeth.Driven);
    }
}
