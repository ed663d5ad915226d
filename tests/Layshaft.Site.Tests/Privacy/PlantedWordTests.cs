using System.Text;
using System.Text.RegularExpressions;
using Layshaft.Site.Pages;
using SkiaSharp;

namespace Layshaft.Site.Tests.Privacy;

/// <summary>No byte of a tree holds what its readers may not know.</summary>
[Collection(OnePlantedSite.Name)]
public sealed partial class PlantedWordTests(PlantedSite site)
{
    [Fact]
    public void Every_field_of_the_book_has_an_audience()
    {
        string[] unjudged = [.. BookFields.All.Keys.Where(f => !FieldAudiences.All.ContainsKey(f))];
        Assert.True(unjudged.Length == 0, $"Who may read these? Say so in FieldAudiences:\n{string.Join('\n', unjudged)}");
        string[] gone = [.. FieldAudiences.All.Keys.Where(f => !BookFields.All.ContainsKey(Planting.Whole(f)) && !f.EndsWith(".*", StringComparison.Ordinal) && !f.EndsWith(".file", StringComparison.Ordinal) && !f.EndsWith("[text]", StringComparison.Ordinal) && !f.EndsWith(".place", StringComparison.Ordinal))];
        Assert.True(gone.Length == 0, $"No longer fields of the book:\n{string.Join('\n', gone)}");
    }

    [Fact]
    public void The_planted_book_fills_every_field_and_plants_a_word_in_each_that_takes_words()
    {
        string[] empty = [.. BookFields.All.Keys.Where(f => !site.Planting.Fields.Contains(f))];
        Assert.True(empty.Length == 0, $"The planted book leaves out:\n{string.Join('\n', empty)}");

        // What everybody may read, and the glossary's own damage terms, need no word of their own; a total is the sum of other amounts.
        string[] unplanted = [.. BookFields.All.Where(f => BookFields.IsPlantable(f.Value) && FieldAudiences.All[f.Key] != Audience.Anyone
            && f.Key is not ("jobs.findings[].conditions[]" or "jobs.estimate.total") && !site.Planting.PlantedFields.Contains(f.Key)).Select(f => f.Key)];
        Assert.True(unplanted.Length == 0, $"Nothing is planted in:\n{string.Join('\n', unplanted)}");
    }

    [Fact]
    public void Every_planted_word_stays_where_its_readers_are()
    {
        var found = new SortedSet<string>(StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (path, bytes) in site.Files)
        {
            foreach (var word in HiddenText.In(path, bytes).SelectMany(Planting.In).Distinct().Select(n => site.Planting.All.GetValueOrDefault(n)).OfType<Planted>())
            {
                seen.Add(Planting.Whole(word.Path));
                if (!MayStand(word, path))
                {
                    found.Add($"{word.Path} of {word.File} ({word.Text}) in {path}");
                }
            }
        }

        Assert.True(found.Count == 0, string.Join('\n', found));

        // What no page shows proves nothing: these are the fields that a word would betray.
        string[] expected = ["shop.name", "customers.name", "customers.internal_notes", "gearboxes.parts[].cost", "cars.name", "venues.name", "units.serial", "units.internal_notes", "jobs.complaint", "jobs.verdict", "jobs.findings[].sentence", "jobs.photos[].caption", "jobs.photos[].file", "jobs.final[].price", "jobs.estimate.lines[].price", "jobs.estimate.note", "jobs.next_event.name", "jobs.notes[text]", "jobs.renewed[].serial"];
        Assert.Equal([], expected.Where(f => !seen.Contains(f)));
    }

    [Fact]
    public void An_earlier_owners_event_is_not_worked_out_with_the_next_owners_car()
    {
        var (first, second) = (site.Owners.Single(o => o.View is { Index: 0, IsCurrent: false }), site.Owners.Single(o => o.View is { Index: 1 }));
        Assert.True(Under(second.Folder).Any(HasMass), string.Join('\n', site.Review.Problems));
        Assert.DoesNotContain(Under(first.Folder), HasMass);

        static bool HasMass(string text) => Regex.IsMatch(text, "487\\s*kg");
    }

    [Fact]
    public void Every_picture_is_one_that_its_reader_may_see()
    {
        var shown = new HashSet<(string, string)>();
        foreach (var (path, bytes) in site.Files.Where(f => f.Key.EndsWith(".jpg", StringComparison.Ordinal)))
        {
            using var bitmap = SKBitmap.Decode(bytes);
            var picture = site.PictureOf(bitmap.GetPixel(bitmap.Width / 2, bitmap.Height / 2));
            Assert.True(picture is not null, $"{path} shows no picture of the book.");
            var job = site.Book.Jobs.Single(j => j.Number == picture.Value.Job);
            var photo = job.Photos.Single(p => p.File == picture.Value.Picture);
            var reader = site.Owners.Single(o => path.StartsWith(o.Folder, StringComparison.Ordinal)).View;
            Assert.True(reader.Unit.Id == job.Unit && reader.Jobs.Contains(job) && !photo.Internal && (!photo.Private || reader.IsOwn(job)), $"{path} shows {photo.File} of job {job.Number}.");
            shown.Add(picture.Value);
        }

        // Each finished job's open and private picture was seen by somebody, or this test shows nothing.
        Assert.Equal(site.Book.Jobs.Where(j => j.Finished is not null).Sum(j => j.Photos.Count(p => !p.Internal)), shown.Count);
    }

    [Fact]
    public void No_tree_for_upload_holds_the_secret_the_list_of_files_or_another_owners_key()
    {
        foreach (var (path, bytes) in site.Files.Where(f => !f.Key.StartsWith($"{Addresses.Shop}/", StringComparison.Ordinal)))
        {
            var texts = HiddenText.In(path, bytes).ToArray();
            Assert.All(texts, t => Assert.DoesNotContain(site.Secret, t, StringComparison.OrdinalIgnoreCase));
            foreach (var key in site.Owners.Where(o => !path.StartsWith(o.Folder, StringComparison.Ordinal)).Select(o => o.Folder.Split('/')[1]))
            {
                Assert.All(texts, t => Assert.DoesNotContain(key, t, StringComparison.OrdinalIgnoreCase));
            }
        }

        Assert.All(site.Files.Keys, p => Assert.True(p.Split('/')[0] is Addresses.Customers or Addresses.Shop or Addresses.Reference, $"{p} lies in none of the three trees."));
        Assert.DoesNotContain(site.Files.Keys, p => p.EndsWith("changes.txt", StringComparison.Ordinal) || p.EndsWith("robots.txt", StringComparison.Ordinal) || p.Contains("sitemap", StringComparison.OrdinalIgnoreCase));
        Assert.Contains(site.Files, f => f.Key == "shop/layshaft-manifest.json" && Encoding.UTF8.GetString(f.Value).Contains(site.Owners[0].Folder, StringComparison.Ordinal));
    }

    // Unit b gave a part to unit a, which is another customer's.
    [Fact]
    public void No_owner_finds_the_day_of_another_customers_job_on_another_unit()
    {
        foreach (var (view, folder) in site.Owners)
        {
            var texts = Under(folder).ToArray();
            Assert.Contains(texts, t => view.Jobs.Any(j => t.Contains(Day(j.Received), StringComparison.Ordinal)));
            var own = view.Jobs.SelectMany(j => new[] { j.Received, j.Finished, j.Stripped }).OfType<DateOnly>().ToHashSet();
            foreach (var job in site.Book.Jobs.Where(j => j.Unit != view.Unit.Id))
            {
                Assert.DoesNotContain(texts, t => !own.Contains(job.Received) && (t.Contains(Day(job.Received), StringComparison.Ordinal) || t.Contains(job.Received.ToString("o", System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal)));
            }
        }

        string Day(DateOnly day) => site.Builder.Composition.Figures.Date(day);
    }

    private IEnumerable<string> Under(string folder) =>
        site.Files.Where(f => f.Key.StartsWith(folder, StringComparison.Ordinal)).SelectMany(f => HiddenText.In(f.Key, f.Value));

    private bool MayStand(Planted word, string path)
    {
        var audience = FieldAudiences.All[word.Path];
        if (path.StartsWith($"{Addresses.Shop}/", StringComparison.Ordinal))
        {
            return audience != Audience.Nowhere;
        }

        var reader = site.Owners.Where(o => path.StartsWith(o.Folder, StringComparison.Ordinal)).Select(o => o.View).SingleOrDefault();
        return audience switch
        {
            Audience.Anyone => true,
            Audience.Customers => path.StartsWith($"{Addresses.Customers}/", StringComparison.Ordinal),
            Audience.OwnOrPublic when path.StartsWith($"{Addresses.Reference}/", StringComparison.Ordinal) => site.Book.Cars[Id(word)].Public,
            Audience.OwnOrPublic or Audience.Later or Audience.Own => reader is not null && IsHis(word, reader, audience),
            _ => false,
        };
    }

    private bool IsHis(Planted word, OwnerView reader, Audience audience)
    {
        switch (word.File.Split('/')[0])
        {
            case "customers":
                return reader.Owner.Customer == Id(word);
            case "cars":
                return reader.Unit.Car == Id(word) && site.Book.Cars[Id(word)].Customer == reader.Owner.Customer;
            case "venues":
                return reader.Jobs.Any(j => reader.IsOwn(j) && new[] { j.LastEvent?.Venue, j.NextEvent?.Venue }.Contains(Id(word)));
            case "units":
                return reader.Unit.Id == Id(word);
            default:
                var job = site.Book.Jobs.Single(j => word.File.StartsWith(j.Folder, StringComparison.Ordinal));
                return reader.Unit.Id == job.Unit && reader.Jobs.Contains(job) && (audience == Audience.Later || reader.IsOwn(job));
        }
    }

    private string Id(Planted word) => Path.GetFileNameWithoutExtension(site.Planting.NameOf(word.File));
}

[CollectionDefinition(Name)]
public sealed class OnePlantedSite : ICollectionFixture<PlantedSite>
{
    public const string Name = "planted site";
}
