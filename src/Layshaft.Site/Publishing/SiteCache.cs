using System.Text;
using Layshaft.Site.Building;
using Layshaft.Site.Building.Slices;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>
/// What a publish knows from the one before, in one file beside the site: the files of the site, the files of the book, its slices. Read in
/// the background, written whole. Losing it costs time and nothing else.
/// </summary>
public sealed class SiteCache
{
    private const string Format = "layshaft cache 1";

    private readonly string _path;
    private readonly Task<Contents> _contents;

    private SiteCache(StateFolder state)
    {
        (Output, _path) = (state.Output, state.Cache);
        _contents = Task.Run(() => Read(_path));
    }

    /// <summary>The site's folder.</summary>
    public string Output { get; }

    /// <summary>What is known of the book's texts and pictures.</summary>
    public FileCache Files => Get().Files;

    /// <summary>What is known of the slices of the book.</summary>
    public SliceCache Slices => Get().Slices;

    /// <summary>The files of the site.</summary>
    internal SiteRegister Register => Get().Register;

    /// <summary>The cache beside a site.</summary>
    /// <param name="output">The site's folder.</param>
    public static SiteCache Beside(string output)
    {
        ArgumentNullException.ThrowIfNull(output);
        return new SiteCache(new StateFolder(OutputFolder.RealPath(output)));
    }

    /// <summary>Writes what is known now, unless the cache that was read says the same.</summary>
    /// <param name="files">Changes the disk.</param>
    /// <param name="register">The files of the site.</param>
    /// <param name="manifest">The hash of the site's manifest.</param>
    /// <param name="always">Whether to write it in any case, so that its time is that of now.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    internal void Save(IFileWork files, SiteRegister register, ContentHash manifest, bool always) => HashedFile.Write(
        files,
        _path,
        stream =>
        {
            // Not disposed: that would close the stream, which is the caller's.
            var buffer = new BufferedStream(stream, 1 << 16);
            using var writer = new BinaryWriter(buffer, Encoding.UTF8, leaveOpen: true);
            writer.Write(Format);
            manifest.WriteTo(writer);
            RegisterBytes.Write(writer, register);
            Files.Write(writer);
            Slices.Write(writer);
            writer.Flush();
            buffer.Flush();
        },
        always ? null : Register.Hash);

    private Contents Get() => _contents.GetAwaiter().GetResult();

    private static Contents Read(string path)
    {
        try
        {
            var noted = File.GetLastWriteTimeUtc(path).Ticks;
            using var reader = new BinaryReader(HashedFile.OpenWhole(path, out var whole), Encoding.UTF8);
            if (reader.ReadString() == Format)
            {
                var manifest = ContentHash.Read(reader.BaseStream);
                return new(RegisterBytes.Read(reader, noted, whole, manifest), FileCache.Read(reader), SliceCache.Read(reader));
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException or OverflowException)
        {
            // Missing, or damaged: a damaged path would be planned as a file of its own, so none of it counts.
        }

        return new(SiteRegister.None, FileCache.Empty(), SliceCache.Empty());
    }

    private sealed record Contents(SiteRegister Register, FileCache Files, SliceCache Slices);
}
