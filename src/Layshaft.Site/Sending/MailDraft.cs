using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Layshaft.Book.Values;
using Layshaft.Site.Publishing;
using MimeKit;

namespace Layshaft.Site.Sending;

/// <summary>Someone that a mail is from or for.</summary>
/// <param name="Name">The name.</param>
/// <param name="Address">The address, such as <c>a@b.example</c>.</param>
public sealed record MailParty(string Name, string Address);

/// <summary>A file in a mail.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Content">Its bytes.</param>
public sealed record MailFile(string Name, ReadOnlyMemory<byte> Content);

/// <summary>An e-mail that opens as a draft: RFC 5322, with the letter as plain text and as a page, and its picture inside.</summary>
/// <param name="From">The shop.</param>
/// <param name="To">The customer, once for each address; empty when none is known.</param>
/// <param name="Subject">The subject.</param>
/// <param name="Day">The day of the job, which stands for the date: the clock has no say.</param>
/// <param name="Text">The letter as plain text.</param>
/// <param name="Html">The letter as a page; it shows the picture by <see cref="PictureAddress"/>.</param>
/// <param name="Picture">The preview picture, a PNG.</param>
/// <param name="Enclosure">A file to go with it; null for none.</param>
public sealed record MailDraft(MailParty From, IReadOnlyList<MailParty> To, string Subject, DateOnly Day, string Text, string Html, ReadOnlyMemory<byte> Picture, MailFile? Enclosure)
{
    /// <summary>The picture's address within the mail (RFC 2392).</summary>
    public const string PictureAddress = $"cid:{PictureId}";

    private const string PictureId = "card@layshaft.invalid";
    private const string NoDomain = "layshaft.invalid";

    /// <summary>Reads an address as a customer's file holds it; null when it is none that a mail can go to.</summary>
    /// <param name="address">What is written.</param>
    public static string? AddressIn(string? address)
    {
        var given = address?.Trim() ?? string.Empty;
        return EmailAddress.IsUsable(given) && MailboxAddress.TryParse(given, out var box) && box.Domain.Length > 0 && box.LocalPart.Length > 0
            ? given
            : null;
    }

    /// <summary>The file. The same draft always gives the same bytes.</summary>
    public byte[] ToBytes()
    {
        var id = Id();
        var message = new MimeMessage();
        message.Headers.Clear();
        message.From.Add(Box(From));
        message.To.AddRange(To.Select(Box));

        message.Subject = OneLine(Subject);
        message.Date = new DateTimeOffset(Day.ToDateTime(new TimeOnly(12, 0)), TimeSpan.Zero);
        message.MessageId = $"{id}@{DomainOf(From.Address)}";
        message.MimeVersion = new Version(1, 0);

        // Not in any standard, but what mail programs look for to open a file as a draft.
        message.Headers.Add("X-Unsent", "1");
        message.Body = Enclosure is null ? Letter(id) : new Multipart("mixed") { Letter(id), Attached(Enclosure) };
        if (message.Body is Multipart { ContentType.MimeType: "multipart/mixed" } outer)
        {
            outer.Boundary = $"outer-{id}";
        }

        var options = FormatOptions.Default.Clone();
        options.NewLineFormat = NewLineFormat.Dos;
        options.International = false;
        options.AllowMixedHeaderCharsets = false;
        message.Prepare(EncodingConstraint.SevenBit);
        using var bytes = new MemoryStream();
        message.WriteTo(options, bytes);
        return bytes.ToArray();
    }

    private MultipartAlternative Letter(string id)
    {
        var picture = new MimePart("image", "png")
        {
            Content = new MimeContent(new MemoryStream(Picture.ToArray())),
            ContentId = PictureId,
            ContentDisposition = new ContentDisposition(ContentDisposition.Inline) { FileName = "card.png" },
            ContentTransferEncoding = ContentEncoding.Base64,
        };
        var page = new MultipartRelated { Words("html", Html), picture };
        page.Boundary = $"page-{id}";
        page.ContentType.Parameters["type"] = "text/html";
        return new MultipartAlternative(Words("plain", Text), page) { Boundary = $"letter-{id}" };
    }

    private static TextPart Words(string kind, string text)
    {
        var part = new TextPart(kind) { ContentTransferEncoding = ContentEncoding.QuotedPrintable };
        part.SetText(Encoding.UTF8, text.ReplaceLineEndings("\r\n"));
        return part;
    }

    private static MimePart Attached(MailFile file) => new("text", "html")
    {
        Content = new MimeContent(new MemoryStream(file.Content.ToArray())),
        ContentDisposition = new ContentDisposition(ContentDisposition.Attachment) { FileName = OneLine(file.Name) },
        ContentTransferEncoding = ContentEncoding.Base64,
    };

    private static MailboxAddress Box(MailParty party) => new(Encoding.UTF8, OneLine(party.Name), party.Address);

    private static string DomainOf(string address) =>
        address[(address.LastIndexOf('@') + 1)..] is { Length: > 0 } domain && domain.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-') ? domain : NoDomain;

    // Whatever a name holds, a header stays one header, and what looks like an encoded word (RFC 2047) is not decoded.
    private static string OneLine(string text) =>
        string.Join(' ', new string([.. text.Select(c => char.IsControl(c) || c is '\u2028' or '\u2029' ? ' ' : c)]).Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .Replace("=?", "= ?", StringComparison.Ordinal);

    private string Id()
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        string[] words = [From.Name, From.Address, .. To.SelectMany(t => new[] { t.Name, t.Address }), Subject, Day.ToString("O", CultureInfo.InvariantCulture), Text, Html, Enclosure?.Name ?? string.Empty];
        foreach (var word in words)
        {
            hash.AppendData(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{word.Length}:{word}")));
        }

        hash.AppendData(Picture.Span);
        hash.AppendData(Enclosure is null ? [] : Enclosure.Content.Span);
        return Base32.Encode(hash.GetHashAndReset().AsSpan(0, 16));
    }
}
