namespace Layshaft.Book.Values;

/// <summary>A target with a lower end, an upper end or both.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Low">Lower end; null when there is none.</param>
/// <param name="High">Upper end; null when there is none.</param>
public sealed record Band<T>(T? Low, T? High);
