namespace Layshaft.Book.Places;

/// <summary>
/// Where a record and each of its fields stood in its file, so that a check made long after reading can still
/// point at the value. Immutable; kept small because a book has many.
/// </summary>
public sealed class Origin
{
    private readonly string[] keys;
    private readonly (int Line, int Column)[] places;

    internal Origin(Place place, string[] keys, (int Line, int Column)[] places)
    {
        Place = place;
        this.keys = keys;
        this.places = places;
    }

    /// <summary>For records that were not read from a file.</summary>
    public static Origin None { get; } = new(new Place(string.Empty, 0, 0), [], []);

    /// <summary>Where the record begins.</summary>
    public Place Place { get; }

    /// <summary>Where the value of a field stands; the record's own place when the field is not written.</summary>
    /// <param name="key">The field's name as written in the file.</param>
    public Place At(string key)
    {
        var at = Array.IndexOf(keys, key);
        return at >= 0 ? new Place(Place.File, places[at].Line, places[at].Column) : Place;
    }
}
