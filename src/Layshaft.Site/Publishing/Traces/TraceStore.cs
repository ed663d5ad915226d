using System.Security.Cryptography;
using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Publishing;

/// <summary>
/// What a publish knows of the site from the one before, in one file beside the site; a book's cache goes into the same file. It is read in
/// the background and written whole. Losing it costs time and nothing else.
/// </summary>
/// <remarks>The file begins with the hash of all that follows, so that any damage shows.</remarks>
public class TraceStore
{
    private const string Format = "layshaft cache 2";

    private readonly string _path;
    private readonly Task<SiteTraces> _traces;

    /// <summary>The store beside a site.</summary>
    /// <param name="output">The site's folder.</param>
    public TraceStore(string output)
    {
        ArgumentNullException.ThrowIfNull(output);
        var state = new StateFolder(OutputFolder.RealPath(output));
        (Output, _path) = (state.Output, state.Cache);
        _traces = Task.Run(Read);
    }

    /// <summary>The site's folder.</summary>
    public string Output { get; }

    /// <summary>The files of the site.</summary>
    internal SiteTraces Traces => _traces.GetAwaiter().GetResult();

    /// <summary>Writes what is known now.</summary>
    /// <param name="files">Changes the disk.</param>
    /// <param name="now">The files of the site.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    internal void Save(IFileWork files, SiteTraces now) => files.Replace(_path, stream =>
    {
        using var sha256 = SHA256.Create();
        stream.Position = ContentHash.Bytes;
        using (var hashed = new CryptoStream(stream, sha256, CryptoStreamMode.Write, leaveOpen: true))
        using (var writer = new BinaryWriter(new BufferedStream(hashed, 1 << 16), Encoding.UTF8))
        {
            writer.Write(Format);
            Write(writer, now);
            WriteMore(writer);
        }

        stream.Position = 0;
        stream.Write(sha256.Hash);
    });

    /// <summary>Writes what else is known.</summary>
    /// <param name="writer">Where to.</param>
    private protected virtual void WriteMore(BinaryWriter writer)
    {
    }

    /// <summary>Reads what else was written; null where there was nothing to read.</summary>
    /// <param name="reader">Where from.</param>
    private protected virtual void ReadMore(BinaryReader? reader)
    {
    }

    private SiteTraces Read()
    {
        try
        {
            var noted = File.GetLastWriteTimeUtc(_path).Ticks;
            using var stream = new BufferedStream(RegularFile.Open(_path), 1 << 16);
            using var reader = new BinaryReader(stream, Encoding.UTF8);
            var hash = reader.ReadHash();
            if (ContentHash.Of(SHA256.HashData(stream)) == hash)
            {
                stream.Position = ContentHash.Bytes;
                if (reader.ReadString() == Format)
                {
                    var traces = Read(reader) with { Noted = noted };
                    ReadMore(reader);
                    return traces;
                }
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException or OverflowException)
        {
            // Missing, or damaged: a damaged path would be planned as a file of its own, so none of it counts.
        }

        ReadMore(null);
        return SiteTraces.None;
    }

    // Files next to each other mostly have the same key and group.
    private static void Write(BinaryWriter to, SiteTraces traces)
    {
        to.Write(traces.Manifest!.Value);
        to.WriteAll(traces.Links.Links, link =>
        {
            to.WriteTexts([link.Folder, link.Unit, link.Customer, link.Name]);
            to.Write(link.IsOpen);
        });
        var before = new Trace(string.Empty, 0, default);
        to.WriteAll(traces.Files, file =>
        {
            to.Write(file.Path);
            to.Write(file.Size);
            to.Write(file.Modified);
            to.Write(file.Sha256);
            to.Write(file.Key == before.Key && file.Group == before.Group);
            if (file.Key != before.Key || file.Group != before.Group)
            {
                to.Write(file.Key);
                to.WriteOptional(file.Group);
            }

            before = file;
        });
    }

    private static SiteTraces Read(BinaryReader from)
    {
        var manifest = from.ReadHash();
        var links = from.ReadAll(() => from.ReadTexts() is [var folder, var unit, var customer, var name]
            ? new KnownLink(folder, unit, customer, name, from.ReadBoolean()) : throw new FormatException());
        var (key, group, groups) = (default(ContentHash), (string?)null, new HashSet<string>(StringComparer.Ordinal));
        var files = from.ReadAll(() =>
        {
            var (path, size, modified, sha256) = (from.ReadString(), from.ReadInt64(), from.ReadInt64(), from.ReadHash());
            if (!from.ReadBoolean())
            {
                (key, group) = (from.ReadHash(), from.ReadOptional());
                if (group is not null && !groups.Add(group))
                {
                    groups.TryGetValue(group, out group);
                }
            }

            return new Trace(path, size, sha256) { Key = key, Modified = modified, Group = group };
        });
        return new(new(files), LinkHistory.Of(links)) { Manifest = manifest };
    }
}
