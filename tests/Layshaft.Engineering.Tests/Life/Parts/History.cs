using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Parts;

/// <summary>Writes a part history in few words: one entry a day.</summary>
internal sealed class History
{
    private readonly List<FittingEvent> events = [];

    public PartLedger Ledger => PartLedger.Of(events);

    public History Add(
        FittingKind kind, string unit, double hours, string? serial = null, double? carried = null, string? from = null,
        double? fromHours = null, RenewalReason reason = RenewalReason.NotRecorded, string part = "third gear dog ring")
    {
        return Add(new FittingEvent
        {
            Part = new PartIdentity(part, serial),
            Unit = unit,
            Date = new DateOnly(2024, 1, 1).AddDays(events.Count),
            UnitUse = Use.Hours(hours),
            Kind = kind,
            CarriedUse = carried is { } c ? Use.Hours(c) : null,
            FromUnit = from,
            FromUnitUse = fromHours is { } f ? Use.Hours(f) : null,
            Reason = reason,
        });
    }

    public History Add(FittingEvent entry)
    {
        events.Add(entry);
        return this;
    }
}
