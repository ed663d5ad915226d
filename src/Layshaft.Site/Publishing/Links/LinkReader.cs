using Layshaft.Book.Places;

namespace Layshaft.Site.Publishing.Links;

/// <summary>Whom a link of the site to be opens for.</summary>
/// <param name="Folder">The folder that the link leads to, from the output folder: <c>customers/KEY</c>.</param>
/// <param name="FolderOfPlace">The folder that this owner's pages had under the earlier keys, see <see cref="CustomerKeys.OfPlace"/>; empty for none.</param>
/// <param name="Unit">The unit's id.</param>
/// <param name="Customer">The customer's id.</param>
/// <param name="Name">The customer's name.</param>
/// <param name="Formerly">An earlier name of the same customer; null for none.</param>
/// <param name="Place">Where the book has the name.</param>
public sealed record LinkReader(string Folder, string FolderOfPlace, string Unit, string Customer, string Name, string? Formerly, Place Place)
{
    /// <summary>Reads one back.</summary>
    /// <param name="reader">Where from.</param>
    /// <exception cref="IOException">It is something else.</exception>
    internal static LinkReader Read(BinaryReader reader)
    {
        var texts = new string[5];
        for (var i = 0; i < texts.Length; i++)
        {
            texts[i] = reader.ReadString();
        }

        return new(texts[0], texts[1], texts[2], texts[3], texts[4], reader.ReadBoolean() ? reader.ReadString() : null, new Place(reader.ReadString(), reader.ReadInt32(), reader.ReadInt32()));
    }

    /// <summary>Writes it.</summary>
    /// <param name="writer">Where to.</param>
    internal void Write(BinaryWriter writer)
    {
        foreach (var text in new[] { Folder, FolderOfPlace, Unit, Customer, Name })
        {
            writer.Write(text);
        }

        writer.Write(Formerly is not null);
        if (Formerly is not null)
        {
            writer.Write(Formerly);
        }

        writer.Write(Place.File);
        writer.Write(Place.Line);
        writer.Write(Place.Column);
    }
}
