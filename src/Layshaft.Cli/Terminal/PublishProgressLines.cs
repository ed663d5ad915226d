using System.Globalization;
using Layshaft.Site.Publishing;

namespace Layshaft.Cli.Terminal;

/// <summary>
/// Reports the progress of a publish: one line that is overwritten on a terminal, a line at every quarter elsewhere, so that a
/// log stays short.
/// </summary>
internal sealed class PublishProgressLines : IProgress<PublishProgress>, IDisposable
{
    private readonly TextWriter writer;
    private readonly bool terminal;
    private readonly Lock gate = new();
    private int quarters;
    private bool open;

    public PublishProgressLines(TextWriter writer)
        : this(writer, ReferenceEquals(writer, Console.Error) && !Console.IsErrorRedirected)
    {
    }

    internal PublishProgressLines(TextWriter writer, bool terminal) => (this.writer, this.terminal) = (writer, terminal);

    public void Report(PublishProgress value)
    {
        lock (gate)
        {
            if (terminal)
            {
                writer.Write(string.Create(CultureInfo.InvariantCulture, $"\r{value.Done} of {value.Total} files generated"));
                open = true;
                return;
            }

            var reached = value.Total == 0 ? 4 : 4 * value.Done / value.Total;
            if (reached > quarters)
            {
                quarters = reached;
                writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{value.Done} of {value.Total} files generated"));
            }
        }
    }

    public void Finish()
    {
        lock (gate)
        {
            if (open)
            {
                writer.WriteLine();
                open = false;
            }
        }
    }

    public void Dispose() => Finish();
}
