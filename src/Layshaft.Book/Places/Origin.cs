namespace Layshaft.Book.Places;

/// <summary>
/// Where a record and each of its fields stood in its file, so that a check made long after reading can still
/// point at the value. Immutable; kept small because a book has many.
/// </summary>
public sealed class Origin
{
    private readonly (string Key, int Line, int Column)[] fields;

    internal Origin(Place place, (string Key, int Line, int Column)[] fields)
    {
        Place = place;
        this.fields = fields;
    }

    /// <summary>For records that were not read from a file.</summary>
    public static Origin None { get; } = new(new Place(string.Empty, 0, 0), []);

    /// <summary>Where the record begins.</summary>
    public Place Place { get; }

    /// <summary>Where the value of a field stands; the record's own place when the field is not written.</summary>
    /// <param name="key">The field's name as written in the file.</param>
    public Place At(string key)
    {
        foreach (var field in fields)
        {
            if (field.Key == key)
            {
                return new Place(Place.File, field.Line, field.Column);
            }
        }

        return Place;
    }
}
