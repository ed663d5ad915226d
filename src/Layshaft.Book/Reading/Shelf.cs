namespace Layshaft.Book.Reading;

/// <summary>The files of one kind: the names that exist, and those that could be read.</summary>
/// <typeparam name="T">The record of the kind.</typeparam>
/// <param name="Folder">Their folder.</param>
/// <param name="Names">Every name that has a file, readable or not.</param>
/// <param name="Records">Those that could be read.</param>
internal sealed record Shelf<T>(string Folder, IReadOnlyCollection<string> Names, IReadOnlyDictionary<string, T> Records)
    where T : class
{
    public T? Get(string? name) => name is not null && Records.TryGetValue(name, out var record) ? record : null;
}
