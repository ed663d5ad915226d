using Layshaft.Book.Places;
using Layshaft.Book.Problems;

namespace Layshaft.Site.Building.Slices;

/// <summary>
/// How the problems are written that a publish keeps for the next. As plain bytes: a reader of JSON is compiled anew at each start, which takes
/// longer than reading.
/// </summary>
internal static class ProblemBytes
{
    /// <summary>Reads problems back.</summary>
    /// <param name="reader">Where from.</param>
    /// <exception cref="IOException">They are something else.</exception>
    public static Problem[] Read(BinaryReader reader)
    {
        var problems = reader.ReadInt32() is var count and not 0 ? new Problem[count] : [];
        for (var i = 0; i < problems.Length; i++)
        {
            problems[i] = new Problem(
                reader.ReadString(),
                new Place(reader.ReadString(), reader.ReadInt32(), reader.ReadInt32()),
                reader.ReadString(),
                reader.ReadString(),
                (Severity)reader.ReadInt32());
        }

        return problems;
    }

    /// <summary>Writes problems.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="problems">The problems.</param>
    public static void Write(BinaryWriter writer, IReadOnlyList<Problem> problems)
    {
        writer.Write(problems.Count);
        foreach (var problem in problems)
        {
            writer.Write(problem.Code);
            writer.Write(problem.Place.File);
            writer.Write(problem.Place.Line);
            writer.Write(problem.Place.Column);
            writer.Write(problem.Message);
            writer.Write(problem.Remedy);
            writer.Write((int)problem.Severity);
        }
    }
}
