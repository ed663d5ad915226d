namespace Layshaft.Book.Places;

/// <summary>
/// Where a record and each of its fields stood in its file, so that a check made long after reading can still
/// point at the value. Small, because a book has many: what records of one layout have in common is held once.
/// </summary>
public readonly record struct Origin
{
    private readonly string? file;
    private readonly FieldPlaces? fields;
    private readonly int line;
    private readonly int column;

    internal Origin(Place place, FieldPlaces? fields) => (file, line, column, this.fields) = (place.File, place.Line, place.Column, fields);

    /// <summary>For records that were not read from a file.</summary>
    public static Origin None => default;

    /// <summary>For a record that follows from a value of the book: the place of that value.</summary>
    internal static Origin Of(Place place) => new(place, null);

    /// <summary>Where the record begins.</summary>
    public Place Place => new(file ?? string.Empty, line, column);

    /// <summary>Whether a field is written.</summary>
    /// <param name="key">The field's name as written in the file.</param>
    public bool Has(string key) => fields?.Of(key) is not null;

    /// <summary>Where the value of a field stands; the record's own place when the field is not written.</summary>
    /// <param name="key">The field's name as written in the file.</param>
    public Place At(string key) => fields?.Of(key) is { } at ? new Place(file!, line + at.Below, at.Column) : Place;
}
