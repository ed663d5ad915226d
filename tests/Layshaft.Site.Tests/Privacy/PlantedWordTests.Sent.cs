using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Layshaft.Book.Records;
using Layshaft.Site.Cards;
using Layshaft.Site.Pages;
using Layshaft.Site.Sending;
using MimeKit;
using SkiaSharp;

namespace Layshaft.Site.Tests.Privacy;

/// <summary>What is sent holds no more than its reader may know; nor does a preview picture, which anyone may see.</summary>
public sealed partial class PlantedWordTests
{
    private IEnumerable<Job> Due => site.Book.Jobs.Where(Handover.IsDue);

    [Fact]
    public void What_is_sent_holds_only_what_its_customer_may_know()
    {
        Assert.Contains(Due, j => j.Finished is null);
        foreach (var job in Due)
        {
            var handover = new Handover(site.Builder, job);
            var report = handover.Report();
            var folder = site.Owners.Single(o => o.View.Unit.Id == job.Unit && o.View.IsOwn(job)).Folder;
            var parts = PartsOf(handover.Draft(report.Content).ToBytes()).ToArray();
            Assert.Contains(parts, p => p.Name == handover.ReportName);
            foreach (var (name, bytes) in parts)
            {
                var planted = HiddenText.In(name, bytes).SelectMany(Planting.In).Distinct().Select(n => site.Planting.All.GetValueOrDefault(n)).OfType<Planted>().ToArray();
                Assert.All(planted, w => Assert.True(MayStand(w, $"{folder}{name}"), $"{w.Path} of {w.File} in {name} of job {job.Number}"));
                Assert.DoesNotContain(HiddenText.In(name, bytes), t => t.Contains(site.Secret, StringComparison.OrdinalIgnoreCase));
            }

            var shown = PicturesIn(report.Content!.Value).Select(c => site.PictureOf(c)).ToArray();
            Assert.Equal(job.Finished is null ? 0 : 2, shown.Length);
            Assert.All(shown, p => Assert.True(p is { } picture && picture.Job == job.Number && job.Photos.Single(f => f.File == picture.Picture) is { Internal: false }));
        }
    }

    [Fact]
    public void A_preview_picture_names_no_owner_no_price_and_nothing_said_to_one_customer()
    {
        string[] open = ["shop.name", "units.serial", "gearboxes.name", "jobs.verdict"];
        var cards = site.Owners.SelectMany(o => o.View.Jobs.Where(j => JobPages.Exists(o.View, j)).Select(j => CardComposer.Of(site.Builder.Composition, o.View, j)).Append(CardComposer.Of(site.Builder.Composition, o.View))).ToArray();
        var shown = cards.SelectMany(c => HiddenText.In("card", JsonSerializer.SerializeToUtf8Bytes(c))).SelectMany(Planting.In).Select(n => site.Planting.All[n].Path).ToHashSet();

        Assert.Equal(open.Order(StringComparer.Ordinal), shown.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Each_page_of_a_customer_names_its_own_preview_picture_by_its_whole_address()
    {
        var pages = site.Files.Where(f => f.Key.StartsWith("customers/", StringComparison.Ordinal) && f.Key.EndsWith("index.html", StringComparison.Ordinal) && site.Owners.Any(o => f.Key.StartsWith(o.Folder, StringComparison.Ordinal))).ToArray();
        Assert.NotEmpty(pages);
        foreach (var (path, bytes) in pages)
        {
            var html = Encoding.UTF8.GetString(bytes);
            var picture = $"{path[..path.LastIndexOf('/')]}/card.png";
            Assert.Contains($"<meta property=\"og:image\" content=\"https://reports.shop.example/boxes/{picture}\">", html, StringComparison.Ordinal);
            using var bitmap = SKBitmap.Decode(site.Files[picture]);
            Assert.Equal((CardPicture.Width, CardPicture.Height), (bitmap.Width, bitmap.Height));
        }

        Assert.DoesNotContain(site.Files.Keys, p => p.EndsWith("card.png", StringComparison.Ordinal) && !p.StartsWith("customers/", StringComparison.Ordinal));
    }

    private static IEnumerable<(string Name, byte[] Bytes)> PartsOf(byte[] mail)
    {
        yield return ("mail", mail);
        var message = MimeMessage.Load(new MemoryStream(mail));
        yield return ("headers", Encoding.UTF8.GetBytes(string.Join('\n', message.Headers.Select(h => $"{h.Field}: {h.Value}"))));
        foreach (var part in message.BodyParts.OfType<MimePart>())
        {
            using var bytes = new MemoryStream();
            part.Content!.DecodeTo(bytes);
            yield return (part.FileName ?? part.ContentType.MimeType, bytes.ToArray());
        }
    }

    private static IEnumerable<SKColor> PicturesIn(ReadOnlyMemory<byte> html)
    {
        foreach (Match match in EmbeddedPicture().Matches(Encoding.UTF8.GetString(html.Span)))
        {
            using var bitmap = SKBitmap.Decode(Convert.FromBase64String(match.Groups[1].Value));
            yield return bitmap.GetPixel(bitmap.Width / 2, bitmap.Height / 2);
        }
    }

    [GeneratedRegex("src=\"data:image/jpeg;base64,([^\"]+)\"")]
    private static partial Regex EmbeddedPicture();
}
