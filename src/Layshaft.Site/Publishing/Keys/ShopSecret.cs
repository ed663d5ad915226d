using System.Security.Cryptography;
using System.Text;
using Layshaft.Book.Reading;

namespace Layshaft.Site.Publishing;

/// <summary>The secret that customers' keys are made from. It is never printed and never published.</summary>
/// <remarks>
/// It is the text of <c>LAYSHAFT_SECRET</c>, if that is set, or else of the file <c>.layshaft-secret</c> in the book folder,
/// which is made on first use from the system's cryptographic generator, readable by its owner alone (on Windows it has
/// the rights of its folder). Keep it in every backup of the book: without it all customers' links change.
/// </remarks>
public sealed class ShopSecret
{
    /// <summary>The file's name within the book folder.</summary>
    public const string FileName = ".layshaft-secret";

    /// <summary>The environment variable that goes before the file.</summary>
    public const string VariableName = "LAYSHAFT_SECRET";

    private const int FewestCharacters = 32;

    // Of 32 random hexadecimal digits, one text in 27 million has fewer.
    private const int FewestDifferent = 8;
    private const int MostBytes = 4096;
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    private ShopSecret(string text) => Bytes = Encoding.UTF8.GetBytes(text);

    internal byte[] Bytes { get; }

    /// <inheritdoc/>
    public override string ToString() => "(secret)";

    /// <summary>Reads the secret, or makes one if the book has none yet.</summary>
    /// <param name="bookFolder">The book folder.</param>
    /// <param name="environment">Reads an environment variable; the process's own by default.</param>
    public static ShopSecretResult Open(string bookFolder, Func<string, string?>? environment = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(bookFolder);
        if ((environment ?? Environment.GetEnvironmentVariable)(VariableName) is { } given)
        {
            return FromText(given, VariableName, null);
        }

        var path = Path.Combine(bookFolder, FileName);
        try
        {
            if (new FileInfo(path) is { Exists: false, LinkTarget: null })
            {
                Make(path);
            }

            using var stream = RegularFile.Open(path);
            if (stream.Length > MostBytes)
            {
                return Damaged(path);
            }

            using var text = new StreamReader(stream);
            return FromText(text.ReadToEnd(), path, WarningAbout(stream));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new(null, $"The secret for customer links cannot be read or created at {path}: {e.Message} Correct this, or set the environment variable {VariableName} to the secret.", null);
        }
    }

    private static ShopSecretResult FromText(string text, string origin, string? warning)
    {
        var trimmed = text.Trim();
        return trimmed.Length < FewestCharacters || trimmed.Any(char.IsWhiteSpace) || trimmed.Any(char.IsControl) ? Damaged(origin)
            : IsWeak(trimmed) ? Weak(origin)
            : new(new(trimmed), null, warning);
    }

    // The same few characters, or the same text twice or more: somebody typed it.
    private static bool IsWeak(string text) =>
        text.Distinct().Count() < FewestDifferent || Enumerable.Range(1, text.Length / 2).Any(p => text.AsSpan(p).SequenceEqual(text.AsSpan(0, text.Length - p)));

    private static ShopSecretResult Weak(string origin) => new(
        null,
        $"{origin} contains a secret that can be guessed: too few different characters, or repeated text. Restore the right one from a backup. "
        + "If no link was sent yet, remove it: the next publish creates a secret.",
        null);

    private static ShopSecretResult Damaged(string origin) => new(
        null,
        $"{origin} does not contain a secret (at least {FewestCharacters} characters without spaces). Restore it from a backup; "
        + "a new secret would change every customer's link. If no link was sent yet, remove it: the next publish creates a secret.",
        null);

    /// <summary>Writes a new secret atomically; if two publishes start at once, the first one's secret is kept.</summary>
    private static void Make(string path)
    {
        var draft = $"{path}-{Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(4))}";
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = OwnerOnly;
        }

        try
        {
            using (var stream = new FileStream(draft, options))
            {
                stream.Write(Encoding.ASCII.GetBytes(Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(32)) + "\n"));
                stream.Flush(flushToDisk: true);
            }

            // A second name can be given to one only, and in one step; a renaming looks first, and then renames over whatever came in between.
            if (!NativeFiles.TryHardLink(draft, path) && !File.Exists(path))
            {
                File.Move(draft, path, overwrite: false);
            }
        }
        catch (IOException) when (File.Exists(path))
        {
            // Another publish made one in the meantime; it is read next.
        }
        finally
        {
            File.Delete(draft);
        }
    }

    private static string? WarningAbout(FileStream file) =>
        OperatingSystem.IsWindows() || (File.GetUnixFileMode(file.SafeFileHandle) & ~(OwnerOnly | UnixFileMode.UserExecute)) == 0
            ? null
            : $"{file.Name} can be read by other users of this computer. Remove their access (chmod 600).";
}

/// <summary>The shop's secret, or why there is none.</summary>
/// <param name="Secret">The secret; null exactly when there is a problem.</param>
/// <param name="Problem">What is wrong and what to do.</param>
/// <param name="Warning">What should be put right although the secret can be used.</param>
public sealed record ShopSecretResult(ShopSecret? Secret, string? Problem, string? Warning);
