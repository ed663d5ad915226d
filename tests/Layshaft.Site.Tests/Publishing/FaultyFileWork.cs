using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>Real steps on disk, of which one fails, and after it all others if the process is to be dead.</summary>
internal sealed class FaultyFileWork(int failAt = int.MaxValue, bool dead = false, bool exchange = true) : IFileWork
{
    private readonly DiskWork _disk = new(waitForDisk: false);
    private readonly Lock _lock = new();
    private int _steps;

    /// <summary>How many steps were asked for.</summary>
    internal int Steps => _steps;

    /// <summary>Called before each step that is not let fail.</summary>
    internal Action<string>? Before { get; init; }

    /// <summary>The time of every file that is made; null for the disk's own clock.</summary>
    internal Func<DateTime>? Clock { get; init; }

    public Stream Create(string path)
    {
        Step("create");
        return Clock is { } clock ? new TimedFile(path, clock()) : _disk.Create(path);
    }

    public void WriteThrough(string path, Action<Stream> write)
    {
        Step("write through");
        _disk.WriteThrough(path, write);
    }

    public void CreateFolder(string path)
    {
        Step("folder");
        _disk.CreateFolder(path);
    }

    public void Restrict(string path)
    {
        Step("restrict");
        _disk.Restrict(path);
    }

    public void Move(string from, string to)
    {
        Step("move");
        _disk.Move(from, to);
    }

    public void MoveOver(string from, string to)
    {
        Step("move over");
        _disk.MoveOver(from, to);
    }

    public bool TryExchange(string one, string other)
    {
        Step("exchange");
        return exchange && _disk.TryExchange(one, other);
    }

    public void Replace(string path, Action<Stream> write)
    {
        Step("replace");
        _disk.Replace(path, write);
    }

    public void DeleteFile(string path)
    {
        Step("delete");
        _disk.DeleteFile(path);
    }

    public void DeleteFolder(string path)
    {
        Step("delete folder");
        _disk.DeleteFolder(path);
    }

    private sealed class TimedFile(string path, DateTime time) : FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None)
    {
        protected override void Dispose(bool disposing)
        {
            base.Dispose(disposing);
            File.SetLastWriteTimeUtc(Name, time);
        }
    }

    private void Step(string what)
    {
        lock (_lock)
        {
            _steps++;
            if (_steps == failAt || (dead && _steps > failAt))
            {
                throw new IOException($"step {_steps}, {what}, was let fail");
            }
        }

        Before?.Invoke(what);
    }
}
