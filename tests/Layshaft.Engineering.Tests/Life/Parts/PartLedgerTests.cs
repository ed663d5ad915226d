using Layshaft.Engineering.Life;
using static Layshaft.Engineering.Life.FittingKind;

namespace Layshaft.Engineering.Tests.Life.Parts;

public class PartLedgerTests
{
    [Fact]
    public void A_part_fitted_new_gathers_the_hours_of_its_unit_until_it_is_renewed()
    {
        var ledger = new History()
            .Add(FittedNew, "A", 12)
            .Add(StillRunning, "A", 20)
            .Add(Renewed, "A", 31.5, reason: RenewalReason.Condition)
            .Add(StillRunning, "A", 40)
            .Ledger;
        Assert.Empty(ledger.Contradictions);
        Assert.Equal(2, ledger.Lives.Count);
        Assert.Equal((19.5, LifeEnd.Renewed, RenewalReason.Condition), (ledger.Lives[0].Total.Hours, ledger.Lives[0].End, ledger.Lives[0].Reason));
        Assert.Equal((8.5, LifeEnd.Running, LifeStart.New), (ledger.Lives[1].Total.Hours, ledger.Lives[1].End, ledger.Lives[1].Start));
        Assert.Equal([0, 1, 2], ledger.Lives[0].Events);
        Assert.Equal([2, 3], ledger.Lives[1].Events);
    }

    [Fact]
    public void A_part_moved_between_units_keeps_its_hours()
    {
        var ledger = new History()
            .Add(FittedNew, "A", 10, "K-1")
            .Add(Moved, "B", 200, "K-1", from: "A", fromHours: 25)
            .Add(StillRunning, "B", 207, "K-1")
            .Ledger;
        Assert.Empty(ledger.Contradictions);
        var life = Assert.Single(ledger.Lives);
        Assert.Equal(22, life.Total.Hours);
        Assert.Equal(["A", "B"], life.Spans.Select(span => span.Unit));
        Assert.Equal(Use.Hours(20), life.UseAt("B", Use.Hours(205)));
        Assert.Null(life.UseAt("B", Use.Hours(199)));
        Assert.Same(life, ledger.InPlace("B", "third gear dog ring"));
        Assert.Null(ledger.InPlace("A", "third gear dog ring"));
    }

    [Fact]
    public void Time_on_the_shelf_does_not_count()
    {
        var ledger = new History()
            .Add(FittedNew, "A", 0, "K-1").Add(Removed, "A", 8, "K-1")
            .Add(FittedNew, "A", 8, "K-2").Add(Removed, "A", 30, "K-2")
            .Add(FittedUsed, "A", 30, "K-1").Add(StillRunning, "A", 33)
            .Ledger;
        Assert.Empty(ledger.Contradictions);
        Assert.Equal([11.0, 22.0], ledger.Lives.Select(life => life.Total.Hours));
        Assert.Equal([LifeEnd.Running, LifeEnd.OnTheShelf], ledger.Lives.Select(life => life.End));
    }

    [Fact]
    public void A_part_without_serial_that_goes_back_to_its_place_keeps_its_hours()
    {
        var ledger = new History().Add(FittedNew, "A", 0).Add(Removed, "A", 8).Add(FittedUsed, "A", 8).Add(StillRunning, "A", 15).Ledger;
        Assert.Empty(ledger.Contradictions);
        Assert.Equal(15, Assert.Single(ledger.Lives).Total.Hours);
    }

    [Fact]
    public void A_part_stays_in_its_unit_while_other_parts_are_worked_on()
    {
        var ledger = new History().Add(FittedNew, "A", 0).Add(FittedNew, "A", 50, part: "layshaft bearing, front").Ledger;
        Assert.Equal(50, ledger.Lives[0].Total.Hours);
        Assert.Equal(0, ledger.Lives[1].Total.Hours);
    }

    [Fact]
    public void A_part_fitted_used_counts_from_what_it_carries_and_says_so_when_that_is_unknown()
    {
        var ledger = new History()
            .Add(FittedUsed, "A", 100, "K-1", carried: 14).Add(FittedUsed, "B", 100, "K-2")
            .Add(StillRunning, "C", 60).Add(StillRunning, "A", 110).Add(StillRunning, "C", 63)
            .Ledger;
        Assert.Empty(ledger.Contradictions);
        Assert.Equal((24.0, true, LifeStart.UsedKnown), (ledger.Lives[0].Total.Hours, ledger.Lives[0].TotalIsWhole, ledger.Lives[0].Start));
        Assert.Equal((false, LifeStart.UsedUnknown), (ledger.Lives[1].TotalIsWhole, ledger.Lives[1].Start));
        Assert.Equal((3.0, false), (ledger.Lives[2].Total.Hours, ledger.Lives[2].TotalIsWhole));
    }

    [Fact]
    public void A_part_renewed_with_a_used_one_starts_from_what_that_carries()
    {
        var ledger = new History().Add(FittedNew, "A", 0).Add(Renewed, "A", 20, "K-9", carried: 7).Add(StillRunning, "A", 22).Ledger;
        Assert.Empty(ledger.Contradictions);
        Assert.Equal((9.0, LifeStart.UsedKnown), (ledger.Lives[1].Total.Hours, ledger.Lives[1].Start));
    }

    [Fact]
    public void Hours_and_kilometres_are_kept_apart()
    {
        var history = new History().Add(FittedNew, "A", 0, "K-1").Add(Removed, "A", 9, "K-1");
        foreach (var km in new[] { 1000, 1400 })
        {
            history.Add(new FittingEvent
            {
                Part = new PartIdentity("third gear dog ring", "K-1"),
                Unit = "B",
                Date = new DateOnly(2024, 6, 1),
                UnitUse = Use.Kilometres(km),
                Kind = km == 1000 ? FittedUsed : StillRunning,
            });
        }

        var life = Assert.Single(history.Ledger.Lives);
        Assert.Equal((9.0, 400.0, true), (life.Total.Hours, life.Total.Kilometres, life.Total.IsMixed));
    }
}
