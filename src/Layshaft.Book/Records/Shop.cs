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
        "what running is counted in", ("hours", UseUnit.Hours), ("kilometres", UseUnit.Kilometres), ("events", UseUnit.Events));

    /// <summary>The words for how dates are written; true stands for ISO 8601.</summary>
    public static Shape<bool> DateWords { get; } = new ChoiceShape<bool>("a way to write dates", ("words", false), ("iso", true));

    /// <summary>How it is written.</summary>
    public static RecordShape<Shop> Shape { get; } = new("the shop", "The shop that keeps this book.", f => new Shop(
        f.Origin,
        f.Required("name", Scalars.Text, "The shop's name, as customers know it."),
        f.Optional("motto", Scalars.Text, "A line under the name."),
        f.List("address", Scalars.Text, "The address, a line each."),
        f.Required("email", Scalars.Text, "Where customers write to."),
        f.Required("telephone", Scalars.Text, "Where customers call."),
        f.Or("language", Scalars.Language, "en", "The language of the pages: the name of a texts file (en, en-US, de, or one of the shop's own in templates/texts)."),
        f.Optional("units", ShownUnits.Shape, "Which units come first on the pages.") ?? ShownUnits.Usual,
        f.Optional("numbers", ShownNumbers.Shape, "How numbers are written on the pages.") ?? ShownNumbers.Usual,
        f.Or("dates", DateWords, false, "How dates are written on the pages: in words as the language has them, or as 2026-03-14."),
        f.Optional("colour", Scalars.Colour, "The one colour of the shop's pages."),
        f.Optional("logo", Scalars.FileName, "A picture file for the head of each page: PNG, JPEG or WebP (or a phone's HEIC or AVIF), not an SVG drawing: save that as PNG, 400 pixels or more on its longer edge."),
        f.Optional("site_address", Scalars.WebAddress, "Where the folder customers/ lies once it is uploaded: for the links and pictures of what is sent."),
        f.Or("one_file_limit", Scalars.FileSize, new FileSize(8_000_000), "The most that a one-file report may weigh; its pictures are reduced until it does."),
        f.Required("currency", Scalars.Currency, "The currency of all prices in the book."),
        f.Optional("tax", Tax.Shape, "The tax that is added to prices."),
        f.Required("labour_rate", Scalars.Money, "Price of an hour at the bench, without tax."),
        f.Or("show_prices", Scalars.YesNo, true, "Whether customers' reports show prices."),
        f.Or("estimate_valid_for", Scalars.Span, new CalendarSpan(0, 28), "How long an estimate holds."),
        f.Or("use_counted_in", UseWords, UseUnit.Hours, "What running is counted in, unless a unit says otherwise."),
        f.Or("season", Scalars.Season, SeasonCalendar.AllYear, "The months in which the shop's cars are raced; running is spread over these, and a season over the turn of the year counts as one."),
        f.Optional("closing_words", Scalars.Text, "The last words of each report (Markdown)."),
        f.Optional("photo_remark", Scalars.Text, "A remark under every set of pictures, such as that they are illustrations."),
        f.List("cautions", Scalars.Text, "Cautions printed on every report."),
        f.List("technicians", Technician.Shape, "Who works at the bench."),
        f.List("instruments", Instrument.Shape, "What is measured with."),
        f.List("advice", Records.Advice.Shape, "The shop's own words on driving, each with the rule that calls for it.")));
}

/// <summary>A tax on prices.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Name">Its name on the pages.</param>
/// <param name="Rate">As a fraction: 0.2 is 20 %.</param>
public sealed record Tax(Origin Origin, string Name, decimal Rate) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Tax> Shape { get; } = new("a tax", "A tax that is added to prices.", f => new Tax(
        f.Origin,
        f.Required("name", Scalars.Text, "Its name on the pages."),
        f.Required("rate", Scalars.TaxRate, "Its rate.")));
}

/// <summary>Somebody who works at the bench.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Id">Short name used in jobs.</param>
/// <param name="Name">Name on the pages.</param>
public sealed record Technician(Origin Origin, string Id, string Name) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Technician> Shape { get; } = new("a technician", "Somebody who works at the bench.", f => new Technician(
        f.Origin,
        f.Required("id", Scalars.Id, "Short name used in jobs."),
        f.Required("name", Scalars.Text, "Name on the pages.")));
}
