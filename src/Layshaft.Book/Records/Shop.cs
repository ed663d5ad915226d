using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using SeasonCalendar = Layshaft.Engineering.Life.SeasonCalendar;

namespace Layshaft.Book.Records;

/// <summary>The shop: file <c>shop.yaml</c>.</summary>
public sealed record Shop(
    Origin Origin,
    string Name,
    string? Motto,
    IReadOnlyList<string> Address,
    string Email,
    string Telephone,
    string Language,
    ShownUnits Units,
    ShownNumbers Numbers,
    bool IsoDates,
    string? Colour,
    string? Logo,
    WebAddress? SiteAddress,
    FileSize OneFileLimit,
    string Currency,
    Tax? Tax,
    decimal LabourRate,
    bool ShowPrices,
    CalendarSpan EstimateValidFor,
    UseUnit UseCountedIn,
    SeasonCalendar Season,
    string? ClosingWords,
    string? PhotoRemark,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<Technician> Technicians,
    IReadOnlyList<Instrument> Instruments,
    IReadOnlyList<Advice> Advice) : IPlaced
{
    /// <summary>The words for what running is counted in.</summary>
    public static Shape<UseUnit> UseWords { get; } = new ChoiceShape<UseUnit>(
        "a usage unit", ("hours", UseUnit.Hours), ("kilometres", UseUnit.Kilometres), ("events", UseUnit.Events));

    /// <summary>The words for how dates are written; true stands for ISO 8601.</summary>
    public static Shape<bool> DateWords { get; } = new ChoiceShape<bool>("a date format", ("words", false), ("iso", true));

    /// <summary>How it is written.</summary>
    public static RecordShape<Shop> Shape { get; } = new("the shop", "The shop that keeps this book.", f => new Shop(
        f.Origin,
        f.Required("name", Scalars.Text, "The shop's name, as customers know it."),
        f.Optional("motto", Scalars.Text, "Motto under the name."),
        f.List("address", Scalars.Text, "Address, one item per line."),
        f.Required("email", Scalars.Text, "Email address for customers."),
        f.Required("telephone", Scalars.Text, "Telephone number for customers."),
        f.Or("language", Scalars.Language, "en", "Language of the pages: en, en-US, de, or the name of a file in templates/texts. Default: en."),
        f.Optional("units", ShownUnits.Shape, "Units shown first on the pages.") ?? ShownUnits.Usual,
        f.Optional("numbers", ShownNumbers.Shape, "Number format of the pages.") ?? ShownNumbers.Usual,
        f.Or("dates", DateWords, false, "Date format of the pages: in words of the language, or as 2026-03-14. Default: words."),
        f.Optional("colour", Scalars.Colour, "Main colour of the pages."),
        f.Optional("logo", Scalars.FileName.Like("logo.png"), "Logo at the head of each page: PNG, JPEG, WebP, HEIC or AVIF, at least 400 pixels on the longer edge. Save an SVG drawing as PNG."),
        f.Optional("site_address", Scalars.WebAddress, "Web address of the uploaded customers/ folder, for links and images in emails."),
        f.Or("one_file_limit", Scalars.FileSize, new FileSize(8_000_000), "Maximum size of a single-file report; its photos are reduced to fit. Default: 8 MB."),
        f.Required("currency", Scalars.Currency, "Currency of all prices in the book."),
        f.Optional("tax", Tax.Shape, "Tax added to prices."),
        f.Required("labour_rate", Scalars.Money.Like("58.00"), "Labour rate per hour, excluding tax."),
        f.Or("show_prices", Scalars.YesNo, true, "Whether customer reports show prices. Default: yes."),
        f.Or("estimate_valid_for", Scalars.Span.Like("28 days"), new CalendarSpan(0, 28), "How long an estimate is valid. Default: 28 days."),
        f.Or("use_counted_in", UseWords, UseUnit.Hours, "Usage unit, unless the unit file sets another. Default: hours."),
        f.Or("season", Scalars.Season, SeasonCalendar.AllYear, "Racing season. Usage is spread over these months; a season across the turn of the year counts as one. Default: all year."),
        f.Optional("closing_words", Scalars.Text, "Closing text of each report (Markdown)."),
        f.Optional("photo_remark", Scalars.Text, "Note under every set of photos, such as that they are illustrations."),
        f.List("cautions", Scalars.Text, "Cautions printed on every report."),
        f.List("technicians", Technician.Shape, "Technicians."),
        f.List("instruments", Instrument.Shape, "Measuring instruments."),
        f.List("advice", Records.Advice.Shape, "The shop's own driving advice, each with its condition.")));

    /// <summary>The instrument with this id, or null.</summary>
    public Instrument? InstrumentOf(string? id) => Instruments.FirstOrDefault(i => i.Id == id);
}

/// <summary>A tax on prices.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Name">Its name on the pages.</param>
/// <param name="Rate">As a fraction: 0.2 is 20 %.</param>
public sealed record Tax(Origin Origin, string Name, decimal Rate) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Tax> Shape { get; } = new("a tax", "A tax added to prices.", f => new Tax(
        f.Origin,
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.Required("rate", Scalars.TaxRate.Like("20 %"), "Rate.")));
}

/// <summary>Somebody who works at the bench.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Id">Short name used in jobs.</param>
/// <param name="Name">Name on the pages.</param>
public sealed record Technician(Origin Origin, string Id, string Name) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Technician> Shape { get; } = new("a technician", "A technician of the shop.", f => new Technician(
        f.Origin,
        f.Required("id", Scalars.Id.Like("tomas"), "Short name used in jobs."),
        f.Required("name", Scalars.Text, "Name on the pages.")));
}
