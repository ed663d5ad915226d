namespace Layshaft.Book.Places;

/// <summary>A record that knows where it was read.</summary>
public interface IPlaced
{
    /// <summary>Where the record and its fields stood.</summary>
    Origin Origin { get; }
}
