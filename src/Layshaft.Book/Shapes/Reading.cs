using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Shapes;

/// <summary>What a shape needs while it reads one file: the file's name and where problems go.</summary>
/// <param name="File">Path from the book's folder.</param>
/// <param name="Problems">Receives what is wrong.</param>
public sealed record Reading(string File, ProblemList Problems)
{
    /// <summary>Where a node stands.</summary>
    public Place At(Node node)
    {
        ArgumentNullException.ThrowIfNull(node);
        return new Place(File, node.Line, node.Column);
    }

    /// <summary>Adds a problem at a node.</summary>
    public void Report(Node node, string code, string message, string remedy = "") =>
        Problems.Add(code, At(node), message, remedy);
}
