using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Figures;
using Layshaft.Site.Look;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Building;

/// <summary>What a site is made with besides the book's jobs: the shop's own hand, its words, and the keys of its customers' folders.</summary>
internal sealed class SiteMeans
{
    private readonly Shop _shop;
    private readonly Texts _texts;
    private readonly CustomerKeys _keys;

    private SiteMeans(Shop shop, SiteOverrides own, Texts texts, CustomerKeys keys)
    {
        (_shop, _texts, _keys) = (shop, texts, keys);
        Styles = PageStyles.Of(shop, LookFiles.Sheets(own.Folders));
        Engine = new TemplateEngine(own.Templates, texts);
        Fingerprint = $"{own.Templates.Fingerprint} {texts.Fingerprint} {Styles.Fingerprint} {keys.Fingerprint}";
    }

    /// <summary>Renders templates.</summary>
    public TemplateEngine Engine { get; }

    /// <summary>Stands for everything that pages are composed from besides the book.</summary>
    public string Fingerprint { get; }

    private PageStyles Styles { get; }

    /// <summary>The means of a shop; null when a problem stops it.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="own">Its own hand.</param>
    /// <param name="bookFolder">The folder of its book, for its secret.</param>
    /// <param name="problems">Receives what is wrong.</param>
    public static SiteMeans? Of(Shop shop, SiteOverrides own, string bookFolder, ProblemList problems)
    {
        var (secret, secretProblem, secretWarning) = ShopSecret.Open(bookFolder);
        if (secretProblem is not null)
        {
            problems.Add("secret", Place.WholeFile(ShopSecret.FileName), secretProblem);
        }

        if (secretWarning is not null)
        {
            problems.Note("secret", Place.WholeFile(ShopSecret.FileName), secretWarning);
        }

        return own.Texts is { } texts && secret is not null ? new SiteMeans(shop, own, texts, new CustomerKeys(secret)) : null;
    }

    /// <summary>What pages are composed from.</summary>
    /// <param name="assessment">The book or a slice of it, worked out.</param>
    /// <param name="pictures">Its pictures.</param>
    /// <param name="notes">Its notes.</param>
    public Composition Compose(BookAssessment assessment, PictureIndex pictures, IReadOnlyDictionary<string, string> notes) => new(
        assessment,
        _texts,
        new FigureWriter(UnitsOf(_shop, _texts), _texts),
        new Addresses(view => _keys.For(view.Unit.Id, view.Owner.Customer, view.Time, view.Unit.LinkRenewed))
        {
            KeyOfPlace = view => _keys.OfPlace(view.Unit.Id, view.Index, view.Unit.LinkRenewed),
        },
        pictures,
        notes)
    { Styles = Styles };

    // The shop's choice of units and separators; by default the language decides.
    internal static UnitChoice UnitsOf(Shop shop, Texts texts) => new()
    {
        Speed = shop.Units.Speed == SpeedUnit.MilesPerHour ? UnitFamily.Imperial : UnitFamily.Metric,
        Length = shop.Units.Length == LengthUnit.Millimetres ? UnitFamily.Metric : UnitFamily.Imperial,
        Thousandths = shop.Units.Length == LengthUnit.Thousandths,
        Torque = shop.Units.Torque == TorqueUnit.PoundForceFeet ? UnitFamily.Imperial : UnitFamily.Metric,
        DecimalComma = shop.Numbers.Decimals is { } mark ? mark == DecimalMark.Comma : texts.DecimalComma,
        Grouping = shop.Numbers.Thousands switch
        {
            ThousandsMark.None => DigitGrouping.None,
            ThousandsMark.Mark => DigitGrouping.Mark,
            _ => DigitGrouping.NarrowSpace,
        },
        IsoDates = shop.IsoDates,
    };
}
