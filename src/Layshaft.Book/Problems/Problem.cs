using Layshaft.Book.Places;

namespace Layshaft.Book.Problems;

/// <summary>Something in the book that must be fixed, or that should be known.</summary>
/// <param name="Code">A short stable word for this kind of problem, such as <c>unknown-key</c>.</param>
/// <param name="Place">Where it is.</param>
/// <param name="Message">What is wrong, in a sentence for the person at the bench.</param>
/// <param name="Remedy">What to write instead; empty if the message suffices.</param>
/// <param name="Severity">Whether it stops a publish.</param>
public sealed record Problem(
    string Code, Place Place, string Message, string Remedy = "", Severity Severity = Severity.Stops)
{
    /// <summary>One line: <c>file(line,column): message Remedy. [code]</c>.</summary>
    public override string ToString() =>
        $"{Place}: {(Severity == Severity.Notice ? "note: " : "")}{Message}{(Remedy.Length > 0 ? " " + Remedy : "")} [{Code}]";
}
