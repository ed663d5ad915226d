using Layshaft.Book.Problems;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Publishing;

/// <summary>How a publish ended.</summary>
public enum PublishOutcome
{
    /// <summary>The new site is in place.</summary>
    Published,

    /// <summary>Nothing had changed; the site was not touched.</summary>
    Unchanged,

    /// <summary>It was not begun; the site is as it was.</summary>
    Refused,

    /// <summary>It was begun and given up; the site is as it was, unless <see cref="PublishResult.IsCutOff"/>.</summary>
    Failed,
}

/// <summary>What a publish did. All lists are in order of path.</summary>
/// <param name="Outcome">How it ended.</param>
/// <param name="Problems">Why it was refused or failed; empty otherwise.</param>
public sealed record PublishResult(PublishOutcome Outcome, IReadOnlyList<PublishProblem> Problems)
{
    /// <summary>Whether it failed while the site was being brought up to date; the next command that opens the site finishes that.</summary>
    public bool IsCutOff { get; init; }

    /// <summary>Files that were not there before.</summary>
    public IReadOnlyList<string> Added { get; init; } = [];

    /// <summary>Files whose bytes are others now.</summary>
    public IReadOnlyList<string> Changed { get; init; } = [];

    /// <summary>Files that are gone.</summary>
    public IReadOnlyList<string> Removed { get; init; } = [];

    /// <summary>Files of the site before that the new one does not have: those that are gone, and those that were changed by hand and left alone.</summary>
    internal IReadOnlyList<string> Left { get; init; } = [];

    /// <summary>Our files that someone had changed or removed by hand, and that are again as we write them.</summary>
    public IReadOnlyList<string> Restored { get; init; } = [];

    /// <summary>Files and folders (with a slash at the end) that are not ours and were left alone.</summary>
    public IReadOnlyList<string> ForeignFiles { get; init; } = [];

    /// <summary>Problems of the book that only the site shows; empty unless it was refused.</summary>
    public IReadOnlyList<Problem> BookProblems { get; init; } = [];

    /// <summary>Links that opened before this publish and open nothing now.</summary>
    public IReadOnlyList<KnownLink> Withdrawn { get; init; } = [];

    /// <summary>The list of all links for a person to read; null where the site never had one.</summary>
    public string? LinkList { get; init; }

    /// <summary>Whether withdrawn links were such as hung on a place in the list of owners; they could have changed their reader.</summary>
    public bool MovesLinks { get; init; }

    /// <summary>What should be known although the publish succeeded.</summary>
    public IReadOnlyList<PublishProblem> Warnings { get; init; } = [];

    /// <summary>How many outputs were made.</summary>
    public int Made { get; init; }

    /// <summary>How many outputs were kept without making them again.</summary>
    public int Kept { get; init; }

    /// <summary>How many files of the site have the bytes that they had before.</summary>
    public int UnchangedFiles => Made + Kept - Added.Count - Changed.Count;

    /// <summary>What a look at the site would see; null where only a look can tell.</summary>
    internal SiteAfterPublish? Site { get; init; }

    internal static PublishResult Refused(params IReadOnlyList<PublishProblem> problems) => new(PublishOutcome.Refused, problems);

    internal static PublishResult Failed(string path, string message) => new(PublishOutcome.Failed, [new(path, message)]);
}

/// <summary>Why a site could not be published, or what should be known about one that was.</summary>
/// <param name="Path">The file or folder that it is about.</param>
/// <param name="Message">What is wrong and what to do.</param>
public sealed record PublishProblem(string Path, string Message)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Path}: {Message}";
}
