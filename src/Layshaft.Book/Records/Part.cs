using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using Layshaft.Engineering.Measurement;
using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>What kind of part it is: decides its place in the drawing and its words.</summary>
public enum PartKind
{
    /// <summary>A gear on the mainshafts.</summary>
    Gear,

    /// <summary>A dog ring.</summary>
    DogRing,

    /// <summary>The hub that a dog ring slides on.</summary>
    Hub,

    /// <summary>A selector fork, rail, drum or detent.</summary>
    Selector,

    /// <summary>A bearing.</summary>
    Bearing,

    /// <summary>A shaft.</summary>
    Shaft,

    /// <summary>A drop gear.</summary>
    DropGear,

    /// <summary>Crown wheel and pinion.</summary>
    FinalDrive,

    /// <summary>Case, cover or fixings.</summary>
    Case,

    /// <summary>A seal.</summary>
    Seal,

    /// <summary>A friction plate of a differential.</summary>
    FrictionPlate,

    /// <summary>A pressure ring with its ramps.</summary>
    RampRing,

    /// <summary>A bevel gear or cross-pin of a differential.</summary>
    DifferentialGear,

    /// <summary>A preload or detent spring.</summary>
    Spring,

    /// <summary>A synchroniser (baulk) ring.</summary>
    SynchroRing,

    /// <summary>A selector drum or barrel.</summary>
    Drum,

    /// <summary>The ratchet that turns the drum.</summary>
    Ratchet,

    /// <summary>What keeps two gears from engaging at once.</summary>
    Interlock,

    /// <summary>An oil pump.</summary>
    Pump,

    /// <summary>A chain.</summary>
    Chain,

    /// <summary>A clutch.</summary>
    Clutch,

    /// <summary>A sensor or its trigger.</summary>
    Sensor,

    /// <summary>An idler, such as that of reverse.</summary>
    Idler,
}

/// <summary>Which shaft a part sits on.</summary>
public enum ShaftPosition
{
    /// <summary>The input shaft.</summary>
    Input,

    /// <summary>The layshaft (countershaft).</summary>
    Lay,

    /// <summary>The mainshaft.</summary>
    Main,

    /// <summary>The output shaft.</summary>
    Output,
}

/// <summary>A part of a gearbox that is looked at, with what is measured on it.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Id">Short name used in jobs.</param>
/// <param name="Name">Name on the pages.</param>
/// <param name="Kind">What kind of part it is.</param>
/// <param name="Gear">The gear that it serves (1 is first, 0 is reverse), or null.</param>
/// <param name="Shaft">Where it sits in the drawing; null keeps it out of the drawing.</param>
/// <param name="Along">Its middle along the shaft, from the input end.</param>
/// <param name="Width">Its width along the shaft.</param>
/// <param name="Teeth">Its teeth, for a gear that no ratio set tells.</param>
/// <param name="Measures">What is measured on it.</param>
/// <param name="Grading">When it is watched and when it is renewed.</param>
/// <param name="Price">Price to the customer without tax.</param>
/// <param name="Cost">What the shop pays; never on a customer's page.</param>
/// <param name="Stock">How many the shop has.</param>
/// <param name="ServiceLife">The maker's or the shop's life for it.</param>
public sealed record Part(
    Origin Origin,
    string Id,
    string Name,
    PartKind Kind,
    int? Gear,
    ShaftPosition? Shaft,
    Length? Along,
    Length? Width,
    int? Teeth,
    IReadOnlyList<Measure> Measures,
    Grading Grading,
    decimal? Price,
    decimal? Cost,
    int? Stock,
    Use? ServiceLife) : IPlaced
{
    private static ChoiceShape<PartKind> KindWords { get; } = new(
        "a kind of part",
        ("gear", PartKind.Gear),
        ("dog ring", PartKind.DogRing),
        ("hub", PartKind.Hub),
        ("selector", PartKind.Selector),
        ("bearing", PartKind.Bearing),
        ("shaft", PartKind.Shaft),
        ("drop gear", PartKind.DropGear),
        ("final drive", PartKind.FinalDrive),
        ("case", PartKind.Case),
        ("seal", PartKind.Seal),
        ("friction plate", PartKind.FrictionPlate),
        ("ramp ring", PartKind.RampRing),
        ("differential gear", PartKind.DifferentialGear),
        ("spring", PartKind.Spring),
        ("synchro ring", PartKind.SynchroRing),
        ("selector drum", PartKind.Drum),
        ("ratchet", PartKind.Ratchet),
        ("interlock", PartKind.Interlock),
        ("oil pump", PartKind.Pump),
        ("chain", PartKind.Chain),
        ("clutch", PartKind.Clutch),
        ("sensor", PartKind.Sensor),
        ("idler gear", PartKind.Idler));

    /// <summary>A kind of part as the book writes it.</summary>
    public static string WordOf(PartKind kind) => KindWords.WordOf(kind);

    private static ChoiceShape<ShaftPosition> ShaftWords { get; } = new(
        "a shaft", ("input", ShaftPosition.Input), ("lay", ShaftPosition.Lay), ("main", ShaftPosition.Main), ("output", ShaftPosition.Output));

    /// <summary>How it is written.</summary>
    public static RecordShape<Part> Shape { get; } = new("a part", "An inspected part, with its measures.", f => new Part(
        f.Origin,
        f.Required("id", Scalars.Id, "Short name used in jobs."),
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.Required("kind", KindWords, "Kind of part."),
        f.OptionalValue("gear", Scalars.CountOrNone.Like("3"), "Gear it belongs to: 1 is first, 0 is reverse."),
        f.OptionalValue("shaft", ShaftWords, "Shaft on which it is drawn."),
        f.OptionalValue("along", Quantities.LengthOrNone.Like("145 mm"), "Position of its middle along the shaft, from the input end."),
        f.OptionalValue("width", Quantities.Length.Like("18 mm"), "Width along the shaft."),
        f.OptionalValue("teeth", Scalars.ToothCount, "Tooth count, if it is in no ratio set."),
        f.List("measures", Measure.Shape, "Measures of the part."),
        f.Optional("grading", Grading.Shape, "Grading policy. Default: watch from 60 %, renew from 100 %.") ?? Grading.Usual,
        f.OptionalValue("price", Scalars.Money, "Price to the customer excluding tax."),
        f.OptionalValue("cost", Scalars.Money.Like("98.00"), "Cost to the shop; never on a customer's page."),
        f.OptionalValue("stock", Scalars.CountOrNone, "Number in stock."),
        f.OptionalValue("service_life", Scalars.Use.Like("60 h"), "Service life set by the maker or the shop.")));

    /// <summary>The worst grade that the readings of a finding give; null if none of them can be judged.</summary>
    /// <param name="finding">A finding on this part.</param>
    /// <param name="shop">The shop, for its instruments.</param>
    public Grade? GradeByReadings(Finding finding, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(shop);
        return finding.Measurements.Max(m => MeasureOf(m.Measure)?.Judge(m.Readings, shop.InstrumentOf(m.Instrument), Grading)?.Grade.Standing);
    }

    /// <summary>The measure with this id, or null.</summary>
    public Measure? MeasureOf(string id) => Measures.FirstOrDefault(m => m.Id == id);
}

/// <summary>What wear does to a measured size.</summary>
public enum WearSense
{
    /// <summary>Wear makes it larger, as the radius on a dog's corner.</summary>
    Larger,

    /// <summary>Wear makes it smaller, as the thickness of a fork's pad.</summary>
    Smaller,
}

/// <summary>Something that is measured on a part.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Id">Short name used in jobs.</param>
/// <param name="Name">Name on the pages.</param>
/// <param name="New">Size when new.</param>
/// <param name="Limit">The wear limit, from the maker's manual or the shop's practice.</param>
/// <param name="Wear">Whether wear makes it larger or smaller; null to take it from new and limit.</param>
/// <param name="Span">Over how many teeth the span is taken, where this is a span; null otherwise.</param>
/// <param name="Pin">Pin diameter, where this is a size over pins; null otherwise.</param>
/// <param name="Gear">The gear whose dogs it is taken on (1 is first, 0 is reverse); null if it is not taken on dogs.</param>
/// <param name="Side">The side it is always taken on; null for the side of the finding.</param>
/// <param name="Instrument">What it is taken with if the readings have no unit and name no other.</param>
public sealed record Measure(
    Origin Origin, string Id, string Name, IQuantity New, IQuantity Limit, WearSense? Wear, int? Span, Length? Pin, int? Gear, Flank? Side, string? Instrument) : IPlaced
{
    /// <summary>Judges readings of this measure; null if what is written of it, of the readings or of the instrument contradicts itself.</summary>
    /// <param name="readings">The readings.</param>
    /// <param name="instrument">What they were taken with, if known.</param>
    /// <param name="grading">The part's grading policy.</param>
    public (PartWear Wear, PartGrade Grade)? Judge(IReadOnlyList<IQuantity> readings, Instrument? instrument, Grading grading)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(grading);
        if (readings.Count == 0 || New is Temperature || grading.WatchFrom >= grading.RenewFrom || !Limit.IsLike(New) || Limit.InSi() == New.InSi() || !readings.All(r => r.IsLike(New)) || instrument?.Measures(New) == false)
        {
            return null;
        }

        var wear = PartWear.Of(MeasuredQuantity.From(readings, instrument?.Figures ?? Engineering.Measurement.Instrument.Unknown), New, New, Limit);
        return (wear, new GradePolicy(grading.WatchFrom, grading.RenewFrom, CloseCall.MeasureAgain).Grade(wear));
    }

    /// <summary>How it is written.</summary>
    public static RecordShape<Measure> Shape { get; } = new("a measure", "A size that is measured on a part.", f => new Measure(
        f.Origin,
        f.Required("id", Scalars.Id, "Short name used in jobs."),
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.Required("new", Quantities.Measured.Like("4.10 mm"), "New size."),
        f.Required("limit", Quantities.Measured.Like("3.70 mm"), "Wear limit: below the new size if wear makes it smaller, above if larger."),
        f.OptionalValue("wear_makes_it", new ChoiceShape<WearSense>("an effect of wear", ("larger", WearSense.Larger), ("smaller", WearSense.Smaller)), "Whether wear makes it larger or smaller; checked against new and limit."),
        f.OptionalValue("span", Scalars.Count.Like("3"), "For a span (base tangent) measure: number of teeth spanned."),
        f.OptionalValue("pin", Quantities.Length.Like("5 mm"), "For a size over two pins: pin diameter."),
        f.OptionalValue("gear", Scalars.CountOrNone.Like("2"), "For a measure of dogs: the gear they engage; 1 is first, 0 is reverse. Driving advice needs it."),
        f.OptionalValue("side", Finding.SideShape, "Side it is always taken on. Default: the side of the finding."),
        f.Optional("instrument", Scalars.Id.Like("mic-25"), "Instrument for readings without a unit: its id in shop.yaml.")));
}

/// <summary>When a part is watched and when it is renewed, as shares of its wear allowance.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="WatchFrom">From this share of the allowance the grade is watch.</param>
/// <param name="RenewFrom">From this share of the allowance the grade is renew.</param>
public sealed record Grading(Origin Origin, double WatchFrom, double RenewFrom) : IPlaced
{
    /// <summary>Watch from 60 %, renew from 100 % (common practice, no source).</summary>
    public static Grading Usual { get; } = new(Origin.None, 0.6, 1.0);

    /// <summary>How it is written.</summary>
    public static RecordShape<Grading> Shape { get; } = new("a grading policy", "Shares of the wear allowance at which a part is graded.", f => new Grading(
        f.Origin,
        f.Required("watch_from", Scalars.Part.Like("60 %"), "From this share of the wear allowance, the grade is watch."),
        f.Required("renew_from", Scalars.Part.Like("100 %"), "From this share of the wear allowance, the grade is renew.")));
}
