using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using Layshaft.Site.Tests.Photos;

namespace Layshaft.Benchmarks.BigBook;

/// <summary>
/// Photos in any number: sixteen pictures, and each file distinct by a comment in it (JPEG's COM segment, ITU-T T.81,
/// clause B.2.4.5), so that none can be told to be another's copy and none has to be drawn anew.
/// </summary>
internal sealed class PhotoStock(int width, int seed)
{
    private const int Pictures = 16;

    private readonly byte[]?[] _pictures = new byte[Pictures][];

    public byte[] Jpeg(int number)
    {
        var picture = _pictures[number % Pictures] ??= SyntheticPhoto.Jpeg(width, width * 3 / 4, seed + (number % Pictures), quality: 85);
        var comment = Encoding.ASCII.GetBytes(number.ToString("0000000000", CultureInfo.InvariantCulture));
        var file = new byte[picture.Length + comment.Length + 4];
        picture.AsSpan(0, 2).CopyTo(file);
        (file[2], file[3]) = (0xFF, 0xFE);
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(4), (ushort)(comment.Length + 2));
        comment.CopyTo(file, 6);
        picture.AsSpan(2).CopyTo(file.AsSpan(6 + comment.Length));
        return file;
    }
}
