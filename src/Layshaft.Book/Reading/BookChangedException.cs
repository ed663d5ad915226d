namespace Layshaft.Book.Reading;

/// <summary>The book changed while it was read, so its first files no longer match the rest.</summary>
public sealed class BookChangedException() : IOException("The book changed during the publish. Publish again.");
