using System.Text;
using CsCheck;
using Layshaft.Site.Sending;
using MimeKit;

namespace Layshaft.Site.Tests.Sending;

/// <summary>The draft is a mail as RFC 5322 has it, whatever the names in it hold.</summary>
public class MailDraftTests
{
    private static readonly byte[] Picture = [0x89, 0x50, 0x4E, 0x47, 1, 2, 3];

    private static MailDraft Draft(string subject = "Gearbox A-1: report", string name = "Jo Ward", string? to = "jo@car.example", MailFile? file = null) => new(
        new MailParty("Fell Bench", "bench@fell.example"),
        to is null ? [] : [.. to.Split(' ').Select(address => new MailParty(name, address))],
        subject,
        new DateOnly(2026, 6, 19),
        "Hello Jo,\n\nall is well – µm.\n",
        $"<html><body><p>Hello Jo</p><img src=\"{MailDraft.PictureAddress}\"></body></html>",
        Picture,
        file);

    private static MimeMessage Read(MailDraft draft) => MimeMessage.Load(new MemoryStream(draft.ToBytes()));

    [Fact]
    public void It_opens_as_a_draft_from_the_shop_to_the_customer_on_the_jobs_day()
    {
        var read = Read(Draft());

        Assert.Equal("1", read.Headers["X-Unsent"]);
        Assert.Equal("Gearbox A-1: report", read.Subject);
        Assert.Equal(new DateTimeOffset(2026, 6, 19, 12, 0, 0, TimeSpan.Zero), read.Date);
        var from = Assert.IsType<MailboxAddress>(Assert.Single(read.From));
        var to = Assert.IsType<MailboxAddress>(Assert.Single(read.To));
        Assert.Equal(("Fell Bench", "bench@fell.example", "Jo Ward", "jo@car.example"), (from.Name, from.Address, to.Name, to.Address));
        Assert.Matches("^[a-z2-7]{26}@fell[.]example$", read.MessageId);
        Assert.Equal(new Version(1, 0), read.MimeVersion);
    }

    [Fact]
    public void It_holds_the_letter_as_text_and_as_a_page_with_its_picture_inside()
    {
        var read = Read(Draft());

        Assert.Equal("Hello Jo,\r\n\r\nall is well – µm.\r\n", read.TextBody!.ReplaceLineEndings("\r\n"));
        Assert.Contains("<p>Hello Jo</p>", read.HtmlBody, StringComparison.Ordinal);
        var picture = Assert.IsType<MimePart>(Assert.Single(read.BodyParts, p => p.ContentType.MimeType == "image/png"));
        Assert.Contains($"src=\"cid:{picture.ContentId}\"", read.HtmlBody, StringComparison.Ordinal);
        Assert.Equal(Picture, Content(picture));
        Assert.Equal("inline", picture.ContentDisposition!.Disposition);
        Assert.Empty(read.Attachments);
    }

    [Fact]
    public void An_enclosed_report_comes_out_as_it_went_in()
    {
        var report = Encoding.UTF8.GetBytes("<!doctype html>\n<p>Größe</p>\r\n" + new string('x', 5000));

        var read = Read(Draft(file: new MailFile("report-Jörg.html", report)));

        var enclosed = Assert.IsType<MimePart>(Assert.Single(read.Attachments), exactMatch: false);
        Assert.Equal(("report-Jörg.html", "text/html"), (enclosed.FileName, enclosed.ContentType.MimeType));
        Assert.Equal(report, Content(enclosed));
        Assert.NotNull(read.HtmlBody);
    }

    [Fact]
    public void A_customer_with_two_addresses_is_written_to_at_both()
    {
        var to = Read(Draft(to: "jo@car.example office@car.example")).To;

        Assert.Equal([("Jo Ward", "jo@car.example"), ("Jo Ward", "office@car.example")], to.Cast<MailboxAddress>().Select(b => (b.Name, b.Address)));
        Assert.NotEqual(Read(Draft()).MessageId, Read(Draft(to: "jo@car.example office@car.example")).MessageId);
    }

    [Fact]
    public void Whatever_counts_as_an_address_is_one_to_the_mail_library() =>
        Gen.Select(Gen.String[Gen.Char["ab1.-_+'@ é!"], 1, 8], Gen.String[Gen.Char["ab1.-@é"], 1, 8]).Sample(parts =>
        {
            var address = $"{parts.Item1}@{parts.Item2}";
            return !Layshaft.Book.Values.EmailAddress.IsUsable(address) || (MailboxAddress.TryParse(address, out var box) && box.Domain.Length > 0);
        }, iter: 5000);

    [Fact]
    public void Nobody_is_addressed_when_no_address_is_known() => Assert.Empty(Read(Draft(to: null)).To);

    [Fact]
    public void The_same_draft_gives_the_same_bytes_and_another_one_another_id()
    {
        Assert.Equal(Draft().ToBytes(), Draft().ToBytes());
        Assert.NotEqual(Read(Draft()).MessageId, Read(Draft(subject: "Other")).MessageId);
        Assert.NotEqual(Read(Draft()).MessageId, Read(Draft(file: new MailFile("a.html", new byte[1]))).MessageId);
    }

    [Theory]
    [InlineData("Jörg Müller-Łukasz")]
    [InlineData("Team \"Dog & Ring\", <the fast ones>")]
    [InlineData("名前 ギア")]
    [InlineData("A name that goes on and on and on, because some teams put every sponsor they have ever had into it, and then the car's number 44")]
    public void Names_and_subjects_come_back_as_they_were_and_only_ascii_goes_out(string name)
    {
        var bytes = Draft(subject: $"Gearbox {name}", name: name).ToBytes();

        Assert.All(bytes, b => Assert.True(b < 128));
        var read = MimeMessage.Load(new MemoryStream(bytes));
        Assert.Equal(name, Assert.Single(read.To).Name);
        Assert.Equal($"Gearbox {name}", read.Subject);
    }

    [Fact]
    public void Text_that_looks_encoded_is_not_decoded()
    {
        var read = Read(Draft(subject: "=?utf-8?B?SGVsbG8=?=", name: "=?utf-8?B?SGVsbG8=?="));

        Assert.DoesNotContain("Hello", read.Subject, StringComparison.Ordinal);
        Assert.DoesNotContain("Hello", Assert.Single(read.To).Name, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Jo\r\nBcc: all@else.example")]
    [InlineData("Jo\nBcc: all@else.example\n\nBody")]
    [InlineData("Jo\r Bcc: all@else.example")]
    [InlineData("Jo\u2028Bcc: all@else.example")]
    [InlineData("Jo\u0000\u000BBcc: x")]
    public void A_name_or_subject_with_a_line_end_makes_no_header(string text)
    {
        var draft = Draft(subject: text, name: text, file: new MailFile($"{text}.html", new byte[1]));
        var read = Read(draft);

        Assert.Empty(read.Bcc);
        Assert.Equal(["Date", "From", "MIME-Version", "Message-Id", "Subject", "To", "X-Unsent"], read.Headers.Select(h => h.Field).Where(f => !f.StartsWith("Content-", StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal));
        Assert.Contains("Bcc:", read.Subject, StringComparison.Ordinal);
        Assert.DoesNotContain("\nBcc", Encoding.UTF8.GetString(draft.ToBytes()), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Whatever_text_stands_in_it_lines_stay_short_and_headers_stay_ours() =>
        Gen.Select(Gen.String, Gen.String, Gen.String[0, 3000]).Sample(t =>
        {
            var (name, subject, body) = t;
            var draft = Draft(subject: subject, name: name) with { Text = body, Html = body };
            var bytes = draft.ToBytes();
            var lines = Encoding.Latin1.GetString(bytes).Split("\r\n");
            var read = MimeMessage.Load(new MemoryStream(bytes));
            return lines.All(l => l.Length <= 998 && !l.Contains('\n', StringComparison.Ordinal) && !l.Contains('\r', StringComparison.Ordinal))
                && !read.Headers.Any(h => h.Field is "Bcc" or "Cc") && read.Headers.Count(h => h.Field == "X-Unsent") == 1 && read.To.Count == 1;
        });

    [Theory]
    [InlineData("jo@car.example", "jo@car.example")]
    [InlineData(" jo@car.example ", "jo@car.example")]
    [InlineData("jo@car.example, all@else.example", null)]
    [InlineData("jo@car.example\r\nBcc: all@else.example", null)]
    [InlineData("Jo <jo@car.example>", null)]
    [InlineData("ask at the gate", null)]
    [InlineData("@car.example", null)]
    [InlineData("jo@", null)]
    [InlineData("", null)]
    [InlineData(null, null)]
    public void Only_one_plain_address_is_taken(string? written, string? taken) => Assert.Equal(taken, MailDraft.AddressIn(written));

    private static byte[] Content(MimePart part)
    {
        using var bytes = new MemoryStream();
        part.Content!.DecodeTo(bytes);
        return bytes.ToArray();
    }
}
