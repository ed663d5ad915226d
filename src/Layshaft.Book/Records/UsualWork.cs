using Layshaft.Book.Places;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Records;

/// <summary>Labour that an estimate for a gearbox usually has.</summary>
/// <param name="Origin">Where it is written.</param>
/// <param name="Work">The work, for the customer.</param>
/// <param name="Hours">Labour hours; null if it has a fixed price.</param>
/// <param name="Price">Fixed price without tax, or the price of an hour; null for the shop's labour rate.</param>
public sealed record UsualWork(Origin Origin, string Work, decimal? Hours, decimal? Price) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<UsualWork> Shape { get; } = new("usual work", "Labour of an estimate whose lines follow from the grades.", f => new UsualWork(
        f.Origin,
        f.Required("work", Scalars.Text, "Labour, or a bought-in item."),
        f.OptionalValue("hours", Scalars.Hours, "Labour hours."),
        f.OptionalValue("price", Scalars.Money, "Fixed price, or the price of an hour, excluding tax. Default: the shop's labour rate.")));
}
