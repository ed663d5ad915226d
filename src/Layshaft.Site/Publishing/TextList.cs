namespace Layshaft.Site.Publishing;

/// <summary>How a list of texts is kept: their number, then one after the other.</summary>
internal static class TextList
{
    /// <summary>Reads texts back.</summary>
    /// <param name="reader">Where from.</param>
    /// <exception cref="IOException">They are something else.</exception>
    internal static string[] Read(BinaryReader reader)
    {
        var texts = reader.ReadInt32() is var count and not 0 ? new string[count] : [];
        for (var i = 0; i < texts.Length; i++)
        {
            texts[i] = reader.ReadString();
        }

        return texts;
    }

    /// <summary>Writes texts.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="texts">The texts.</param>
    internal static void Write(BinaryWriter writer, IReadOnlyList<string> texts)
    {
        writer.Write(texts.Count);
        foreach (var text in texts)
        {
            writer.Write(text);
        }
    }
}
