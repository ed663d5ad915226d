using Layshaft.Book.Reading;

namespace Layshaft.Cli.Starting;

/// <summary>The files of a book but for some jobs, as if those were not there.</summary>
/// <param name="files">All files.</param>
/// <param name="left">The folders of the jobs that are left out.</param>
internal sealed class BookWithout(IBookFiles files, IReadOnlySet<string> left) : IBookFiles
{
    public IReadOnlyList<BookFile> All => [.. files.All.Where(f => Has(f.Path))];

    public bool Has(string path) => files.Has(path) && !left.Contains(string.Join('/', path.Split('/').Take(3)));

    public long LengthOf(string path) => files.LengthOf(path);

    public byte[] Read(string path) => files.Read(path);

    public Stream Open(string path) => files.Open(path);
}
