namespace Layshaft.Site.Publishing;

/// <summary>Everything that a publish changes on disk, one step a method, so that a test can let any step be the last.</summary>
internal interface IFileWork
{
    /// <summary>Opens a file that does not exist yet.</summary>
    Stream Create(string path);

    /// <summary>Writes a file that does not exist yet, so that it outlives a power cut.</summary>
    void WriteThrough(string path, Action<Stream> write);

    /// <summary>Makes a folder and those above it.</summary>
    void CreateFolder(string path);

    /// <summary>Lets nobody but the owner read a file or look into a folder.</summary>
    void Restrict(string path);

    /// <summary>Renames a file, link or folder; the new name must be free.</summary>
    void Move(string from, string to);

    /// <summary>Renames a file over another, or a folder to a free name.</summary>
    void MoveOver(string from, string to);

    /// <summary>Lets two files or folders change places in one step; false where the system cannot.</summary>
    bool TryExchange(string one, string other);

    /// <summary>Writes a file whole: beside the old one, and then in its place.</summary>
    void Replace(string path, Action<Stream> write);

    /// <summary>Removes a file or symbolic link.</summary>
    void DeleteFile(string path);

    /// <summary>Removes an empty folder.</summary>
    void DeleteFolder(string path);
}
