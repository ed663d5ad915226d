using System.Buffers;
using System.Text;
using Scriban.Runtime;

namespace Layshaft.Site.Templates;

/// <summary>Takes what a template prints as the bytes that go to disk; a page is some hundred thousand of them.</summary>
internal sealed class Utf8Output : IScriptOutput, IDisposable
{
    private byte[] _bytes = ArrayPool<byte>.Shared.Rent(256 * 1024);
    private int _length;

    public void Write(string text, int offset, int count)
    {
        // A UTF-16 unit takes three bytes at most.
        var most = checked(_length + (3 * count));
        if (most > _bytes.Length)
        {
            var larger = ArrayPool<byte>.Shared.Rent(Math.Max(most, 2 * _bytes.Length));
            _bytes.AsSpan(0, _length).CopyTo(larger);
            ArrayPool<byte>.Shared.Return(_bytes);
            _bytes = larger;
        }

        _length += Encoding.UTF8.GetBytes(text.AsSpan(offset, count), _bytes.AsSpan(_length));
    }

    public ValueTask WriteAsync(string text, int offset, int count, CancellationToken cancellationToken)
    {
        Write(text, offset, count);
        return default;
    }

    /// <summary>A copy of everything so far.</summary>
    public byte[] ToArray() => _bytes.AsSpan(0, _length).ToArray();

    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(_bytes);
        _bytes = [];
    }
}
