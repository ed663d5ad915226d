using Layshaft.Book.Problems;

namespace Layshaft.Cli.Preview;

/// <summary>What the preview shows just now.</summary>
/// <param name="Version">Another text for every change, so that an open page knows that it is old.</param>
/// <param name="Problems">What is wrong in the book or worth knowing.</param>
/// <param name="Failures">Why no site could be written though the book is sound.</param>
/// <param name="IsStopped">Whether the site could not be made from the book as it is now.</param>
internal sealed record PreviewState(string Version, IReadOnlyList<Problem> Problems, IReadOnlyList<string> Failures, bool IsStopped);
