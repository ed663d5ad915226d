namespace Layshaft.Book.Places;

/// <summary>Where something stands in the book.</summary>
/// <param name="File">Path from the book's folder, with forward slashes.</param>
/// <param name="Line">Line, counted from 1; 0 when the whole file is meant.</param>
/// <param name="Column">Column in characters, counted from 1; 0 when the whole file is meant.</param>
public readonly record struct Place(string File, int Line, int Column) : IComparable<Place>
{
    /// <summary>The file as a whole.</summary>
    public static Place WholeFile(string file) => new(file, 0, 0);

    /// <summary>Orders by file (ordinal), then line, then column.</summary>
    public int CompareTo(Place other)
    {
        var byFile = string.CompareOrdinal(File, other.File);
        if (byFile != 0)
        {
            return byFile;
        }

        var byLine = Line.CompareTo(other.Line);
        return byLine != 0 ? byLine : Column.CompareTo(other.Column);
    }

    /// <summary><c>file(line,column)</c>, or the file alone when the whole file is meant.</summary>
    public override string ToString() => Line == 0
        ? File
        : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{File}({Line},{Column})");

    /// <summary>Compares two places.</summary>
    public static bool operator <(Place left, Place right) => left.CompareTo(right) < 0;

    /// <summary>Compares two places.</summary>
    public static bool operator >(Place left, Place right) => left.CompareTo(right) > 0;

    /// <summary>Compares two places.</summary>
    public static bool operator <=(Place left, Place right) => left.CompareTo(right) <= 0;

    /// <summary>Compares two places.</summary>
    public static bool operator >=(Place left, Place right) => left.CompareTo(right) >= 0;
}
