namespace Layshaft.Book.Reading;

/// <summary>A book was changed while it was read, so that what was read first no longer goes with what is there now.</summary>
public sealed class BookChangedException() : IOException("The book was changed while its site was made; publish again.");
