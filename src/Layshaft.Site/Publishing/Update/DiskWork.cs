
namespace Layshaft.Site.Publishing;

/// <summary>The steps of a publish on the real disk.</summary>
/// <param name="waitForDisk">Whether to wait for the disk where a power cut must not lose what was written; tests need not.</param>
internal sealed class DiskWork(bool waitForDisk = true) : IFileWork
{
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    public Stream Create(string path) => new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None);

    public void WriteThrough(string path, Action<Stream> write)
    {
        using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        write(stream);
        stream.Flush(waitForDisk);
    }

    public void CreateFolder(string path) => Directory.CreateDirectory(path);

    public void Restrict(string path)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, OwnerOnly | (Directory.Exists(path) ? UnixFileMode.UserExecute : UnixFileMode.None));
        }
    }

    public void Move(string from, string to)
    {
        // A link to a folder counts as a folder here; it is the link that is renamed.
        if (Directory.Exists(from))
        {
            Directory.Move(from, to);
        }
        else
        {
            File.Move(from, to, overwrite: false);
        }
    }

    public void MoveOver(string from, string to)
    {
        if (Directory.Exists(from))
        {
            Directory.Move(from, to);
        }
        else
        {
            File.Move(from, to, overwrite: true);
        }
    }

    public bool TryExchange(string one, string other) => NativeFiles.TryExchange(one, other);

    public void Replace(string path, Action<Stream> write)
    {
        // What a killed publish left there goes first; a pipe in its place would wait for a reader.
        var draft = $"{path}-new";
        File.Delete(draft);
        using (var stream = new FileStream(draft, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1 << 16))
        {
            write(stream);
        }

        File.Move(draft, path, overwrite: true);
    }

    public void DeleteFile(string path)
    {
        if (Directory.Exists(path))
        {
            // A link to a folder: this removes the link, not what it leads to.
            Directory.Delete(path, recursive: false);
        }
        else
        {
            File.Delete(path);
        }
    }

    public void DeleteFolder(string path) => Directory.Delete(path, recursive: false);
}
