using Layshaft.Book.Records;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Photos;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>The pictures of a report: those that its reader may see and that can be shown.</summary>
internal sealed class ReportPictures(ReportContext report)
{
    private readonly HashSet<string> shown = new(StringComparer.Ordinal);

    public bool Any => shown.Count > 0;

    /// <summary>The pictures of a finding, each followed by its other moment.</summary>
    public IReadOnlyList<PictureView> Of(Finding finding) =>
        [.. finding.Photos.SelectMany(WithPair).Select(View).OfType<PictureView>()];

    /// <summary>Pictures that no finding showed.</summary>
    public IReadOnlyList<PictureView> Others() =>
        [.. report.Job.Photos.Where(p => !shown.Contains(p.File)).SelectMany(p => WithPair(p.File)).Select(View).OfType<PictureView>()];

    /// <summary>Whether the reader of a report may see a picture.</summary>
    public static bool MaySee(Photo photo, bool own) => !photo.Internal && (own || !photo.Private);

    private IEnumerable<Photo> WithPair(string file)
    {
        var photo = report.Job.Photos.First(p => p.File == file);
        var other = report.Job.Photos.FirstOrDefault(p => p.File == photo.PairedWith || (p.PairedWith == photo.File && photo.PairedWith is null));
        Photo[] both = other is null ? [photo] : [photo, other];
        return both.OrderBy(p => p.Moment).Where(p => shown.Add(p.File)).ToArray();
    }

    private PictureView? View(Photo photo)
    {
        if (!MaySee(photo, report.IsOwn)
            || report.Composition.Pictures.Get($"{report.Job.Folder}/photos/{photo.File}") is not { } usable)
        {
            return null;
        }

        var addresses = report.Composition.Addresses;
        return new PictureView(
            Address(usable.Small.Width),
            string.Join(", ", usable.Sizes.Select(s => FormattableString.Invariant($"{Address(s.Width)} {s.Width}w"))),
            Address(usable.Large.Width),
            usable.Large.Width,
            usable.Large.Height,
            "(min-width: 48rem) 27rem, 94vw",
            photo.Caption,
            photo.Moment switch
            {
                PhotoMoment.Before => report.Composition.Say("picture.before"),
                PhotoMoment.After => report.Composition.Say("picture.after"),
                _ => null,
            },
            Callouts(photo, usable));

        string Address(int width) => report.LinkTo(addresses.Picture(report.View, report.Job, photo.File, width));
    }

    private RawHtml? Callouts(Photo photo, UsablePicture usable)
    {
        if (photo.Callouts.Count == 0)
        {
            return null;
        }

        var prefix = "marks-" + string.Concat(photo.File.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));
        return PhotoCallouts.Draw(
            new PhotoCalloutsInput(
                new ChartFrame(prefix, report.Composition.Say("picture.marks"), photo.Caption),
                usable.Large.Width,
                usable.Large.Height,
                [.. photo.Callouts.Select(c => new Charts.Photos.Callout(c.X, c.Y, c.Kind == CalloutKind.Circle ? c.Radius : null, c.Label, c.FromX, c.FromY))]),
            ChartSize.Compact);
    }
}
