namespace Layshaft.Site.Publishing.Upload;

/// <summary>What has to be done with a file at the host.</summary>
/// <param name="Sign"><c>-</c> delete it; <c>+</c> (new), <c>*</c> (changed) and <c>=</c> (put back as it was) upload it.</param>
/// <param name="Path">Its path in the site.</param>
internal readonly record struct UploadChange(char Sign, string Path)
{
    internal const char Added = '+';
    internal const char Changed = '*';
    internal const char Restored = '=';
    internal const char Removed = '-';

    /// <summary>Reads a line of a list; null for anything else.</summary>
    internal static UploadChange? Parse(string line) =>
        line is [Added or Changed or Restored or Removed, ' ', ..] && OutputPath.ProblemWith(line[2..]) is null ? new(line[0], line[2..]) : null;

    /// <summary>
    /// What is to be done after another change came before the upload was confirmed. The host may be as it was at any moment since the
    /// last confirmed upload: for all we know, some of this was done already.
    /// </summary>
    /// <param name="before">What waits already.</param>
    /// <param name="now">What came.</param>
    internal static char Merge(char before, char now) => (before, now) switch
    {
        (Added, not Removed) => Added,
        (Removed, not Removed) => Changed,
        (Changed, not Removed) => Changed,
        _ => now,
    };

    /// <inheritdoc/>
    public override string ToString() => $"{Sign} {Path}";
}
