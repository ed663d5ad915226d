using System.Security.Cryptography;
using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>Tells whether anything that files of the site are made from has changed.</summary>
internal static class Fingerprints
{
    private static readonly string[] Texts = [".yaml", ".md", ".csv"];

    /// <summary>Hash over everything of the book that pages may quote, pictures left out.</summary>
    public static PlanInput OfBook(IBookFiles files)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var file in files.All.Where(f => Texts.Contains(Path.GetExtension(f.Path))))
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"{file.Path}\0{file.Length}\0"));
            hash.AppendData(files.Read(file.Path));
        }

        return new PlanInput("book", Convert.ToHexStringLower(hash.GetHashAndReset()));
    }

    /// <summary>Hash of one file.</summary>
    public static PlanInput OfFile(IBookFiles files, string path)
    {
        using var stream = files.Open(path);
        return new PlanInput(path, Convert.ToHexStringLower(SHA256.HashData(stream)));
    }

    /// <summary>Which pictures can be shown, and how large.</summary>
    public static PlanInput OfPictures(PictureIndex pictures) => OfText(
        "pictures",
        string.Join('\n', pictures.Usable.Values.OrderBy(p => p.Path, StringComparer.Ordinal).Select(p => FormattableString.Invariant($"{p.Path} {p.Large} {p.Small}"))));

    /// <summary>Hash of a text.</summary>
    public static PlanInput OfText(string name, string text) =>
        new(name, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text))));
}
