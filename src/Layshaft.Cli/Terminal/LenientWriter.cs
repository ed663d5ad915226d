using System.Text;

namespace Layshaft.Cli.Terminal;

/// <summary>
/// Writes to standard output or standard error, which may be closed or on a full disk. That must not stop the work: what cannot be
/// written is dropped, and the reason is kept.
/// </summary>
/// <param name="inner">Where to.</param>
internal sealed class LenientWriter(TextWriter inner) : TextWriter
{
    public override Encoding Encoding => inner.Encoding;

    /// <summary>Why something could not be written; null if all was.</summary>
    public string? Failure { get; private set; }

    public override void Write(char value) => Try(() => inner.Write(value));

    public override void Write(string? value) => Try(() => inner.Write(value));

    public override void Write(char[] buffer, int index, int count) => Try(() => inner.Write(buffer, index, count));

    public override void WriteLine() => Try(inner.WriteLine);

    public override void WriteLine(string? value) => Try(() => inner.WriteLine(value));

    public override void Flush() => Try(inner.Flush);

    private void Try(Action write)
    {
        try
        {
            write();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            // The system refuses a closed one as a lack of rights.
            Failure ??= e is IOException ? e.Message.TrimEnd('.') : "it is closed";
        }
    }
}
