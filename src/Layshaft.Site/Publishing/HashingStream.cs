using System.Security.Cryptography;

namespace Layshaft.Site.Publishing;

/// <summary>Passes bytes on to a file, and counts and hashes them on the way.</summary>
internal sealed class HashingStream(Stream file, bool leaveOpen = false) : Stream
{
    private readonly IncrementalHash _hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private long _written;

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => _written;

    public override long Position
    {
        get => _written;
        set => throw new NotSupportedException();
    }

    /// <summary>The hash of what was written so far.</summary>
    internal ContentHash Hash() => ContentHash.Of(_hash.GetCurrentHash());

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        file.Write(buffer);
        _hash.AppendData(buffer);
        _written += buffer.Length;
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Flush() => file.Flush();

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _hash.Dispose();
            if (!leaveOpen)
            {
                file.Dispose();
            }
        }

        base.Dispose(disposing);
    }
}
