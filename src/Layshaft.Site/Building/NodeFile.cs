using Layshaft.Book.Reading;
using Layshaft.Book.Yaml;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>Where a publish keeps what the book's files were parsed to, for the next one: in the folder beside the site.</summary>
public static class NodeFile
{
    /// <summary>What was kept; an empty memory when there is nothing, or nothing that this program wrote.</summary>
    /// <param name="output">The site's folder.</param>
    public static NodeMemory Read(string output)
    {
        ArgumentNullException.ThrowIfNull(output);
        try
        {
            return NodeMemory.Of(RegularFile.ReadAll(new StateFolder(OutputFolder.RealPath(output)).Nodes), ProgramMark.Value);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return new NodeMemory();
        }
    }

    /// <summary>Keeps what was seen; where it cannot be kept, the next publish parses each file again.</summary>
    /// <param name="memory">What was seen.</param>
    /// <param name="book">The book's folder.</param>
    /// <param name="output">The site's folder; nothing is written beside one that a publish would refuse.</param>
    public static void Keep(NodeMemory memory, string book, string output)
    {
        ArgumentNullException.ThrowIfNull(memory);
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(output);
        try
        {
            if (memory.HasNews && OutputFolder.ProblemWith(output, book) is null)
            {
                var state = new StateFolder(OutputFolder.RealPath(output));
                state.Create();
                new DiskWork().Replace(state.Nodes, memory.ToBytes(ProgramMark.Value));
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            // The next publish parses the files again.
        }
    }
}
