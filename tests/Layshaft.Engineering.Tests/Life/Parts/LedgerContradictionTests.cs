using Layshaft.Engineering.Life;
using static Layshaft.Engineering.Life.FittingKind;
using Kind = Layshaft.Engineering.Life.LedgerContradictionKind;

namespace Layshaft.Engineering.Tests.Life.Parts;

public class LedgerContradictionTests
{
    [Fact]
    public void Use_going_back_is_named_with_both_entries_and_counts_nothing_negative()
    {
        var ledger = new History().Add(FittedNew, "A", 50).Add(StillRunning, "A", 40).Ledger;
        Only(ledger, Kind.UseWentBack, 0, 1);
        Assert.Equal(
            "Unit A had 50 h before and has 40 h now. Correct the wrong value (after a counter change, write the sum of both counters).",
            ledger.Contradictions[0].Words);
        Assert.Equal(0, ledger.Lives[0].Total.Hours);
        Assert.True(ledger.Lives[0].IsDoubtful);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    [InlineData(double.PositiveInfinity)]
    public void A_use_that_is_no_count_is_named(double hours)
    {
        Only(new History().Add(FittedNew, "A", 0).Add(StillRunning, "A", hours).Ledger, Kind.UseUnusable, 1);
    }

    [Theory]
    [InlineData(FittedNew)]
    [InlineData(FittedUsed)]
    [InlineData(StillRunning)]
    public void A_part_in_two_units_at_once_is_named_and_its_hours_are_not_counted_twice(FittingKind second)
    {
        var ledger = new History()
            .Add(FittedNew, "A", 0, "K-1").Add(StillRunning, "A", 10, "K-1").Add(second, "B", 100, "K-1")
            .Add(StillRunning, "A", 30, part: "input shaft").Ledger;
        Only(ledger, Kind.InTwoUnitsAtOnce, 1, 2);
        Assert.Equal(10, ledger.Lives[0].Total.Hours);
    }

    [Fact]
    public void A_part_renewed_that_was_never_fitted_is_named_and_the_new_one_counts()
    {
        var ledger = new History().Add(Renewed, "A", 10).Add(StillRunning, "A", 12).Ledger;
        Only(ledger, Kind.RenewedButNeverFitted, 0);
        var life = Assert.Single(ledger.Lives);
        Assert.Equal(2, life.Total.Hours);
        Assert.False(life.IsDoubtful);
    }

    [Fact]
    public void A_part_removed_that_was_never_fitted_is_named()
    {
        Only(new History().Add(Removed, "A", 10).Ledger, Kind.RemovedButNeverFitted, 0);
    }

    [Fact]
    public void A_part_moved_that_was_never_fitted_is_named()
    {
        Only(new History().Add(Moved, "A", 10, "K-1", from: "B").Ledger, Kind.MovedButNeverFitted, 0);
    }

    [Fact]
    public void A_move_without_the_old_units_use_leaves_a_gap()
    {
        var ledger = new History()
            .Add(FittedNew, "A", 0, "K-1").Add(StillRunning, "A", 10).Add(Moved, "B", 5, "K-1", from: "A").Add(StillRunning, "B", 8).Ledger;
        Only(ledger, Kind.Gap, 1, 2);
        Assert.Equal(13, Assert.Single(ledger.Lives).Total.Hours);
    }

    [Fact]
    public void A_part_that_brings_more_than_the_entries_add_up_to_leaves_a_gap_and_the_larger_counts()
    {
        var ledger = new History().Add(FittedNew, "A", 0, "K-1").Add(Removed, "A", 10, "K-1").Add(FittedUsed, "B", 0, "K-1", carried: 15).Ledger;
        Only(ledger, Kind.Gap, 1, 2);
        Assert.Equal(15, Assert.Single(ledger.Lives).Total.Hours);
    }

    [Fact]
    public void A_part_that_brings_less_than_it_ran_is_named_and_keeps_its_hours()
    {
        var ledger = new History().Add(FittedNew, "A", 0, "K-1").Add(Removed, "A", 10, "K-1").Add(FittedUsed, "B", 0, "K-1", carried: 5).Ledger;
        Only(ledger, Kind.UseWentBack, 1, 2);
        Assert.Equal(10, Assert.Single(ledger.Lives).Total.Hours);
    }

    [Fact]
    public void A_part_on_the_shelf_that_runs_again_without_a_fitting_leaves_a_gap()
    {
        Only(new History().Add(FittedNew, "A", 0, "K-1").Add(Removed, "A", 10, "K-1").Add(StillRunning, "A", 20, "K-1").Ledger, Kind.Gap, 1, 2);
    }

    [Fact]
    public void A_part_fitted_where_another_sits_is_named()
    {
        var ledger = new History().Add(FittedNew, "A", 0, "K-1").Add(FittedNew, "A", 10, "K-2").Ledger;
        Only(ledger, Kind.PlaceTaken, 0, 1);
        Assert.Equal((10.0, LifeEnd.OnTheShelf), (ledger.Lives[0].Total.Hours, ledger.Lives[0].End));
    }

    [Fact]
    public void A_used_part_fitted_where_it_already_sits_is_named()
    {
        Only(new History().Add(FittedNew, "A", 0, "K-1").Add(FittedUsed, "A", 10, "K-1").Ledger, Kind.FittedTwice, 0, 1);
    }

    [Fact]
    public void A_new_part_with_a_past_is_named()
    {
        Only(new History().Add(FittedNew, "A", 0, "K-1").Add(Removed, "A", 10, "K-1").Add(FittedNew, "B", 3, "K-1").Ledger, Kind.NewPartHasAPast, 1, 2);
    }

    [Fact]
    public void A_renewed_part_that_comes_back_is_named()
    {
        var ledger = new History().Add(FittedNew, "A", 0, "K-1").Add(Renewed, "A", 10, "K-2").Add(FittedUsed, "B", 3, "K-1").Ledger;
        Only(ledger, Kind.NewPartHasAPast, 1, 2);
    }

    [Fact]
    public void Another_serial_than_the_one_in_place_is_named()
    {
        Only(new History().Add(FittedNew, "A", 0, "K-1").Add(StillRunning, "A", 10, "K-2").Ledger, Kind.SerialDisagrees, 0, 1);
    }

    [Fact]
    public void A_unit_counted_in_two_measures_is_named()
    {
        var ledger = new History().Add(FittedNew, "A", 0).Add(new FittingEvent
        {
            Part = new PartIdentity("third gear dog ring"),
            Unit = "A",
            Date = new DateOnly(2024, 3, 1),
            UnitUse = Use.Kilometres(900),
            Kind = StillRunning,
        }).Ledger;
        Only(ledger, Kind.MeasureChanged, 0, 1);
    }

    [Fact]
    public void A_date_going_back_is_named()
    {
        var ledger = new History().Add(FittedNew, "A", 0).Add(new FittingEvent
        {
            Part = new PartIdentity("third gear dog ring"),
            Unit = "A",
            Date = new DateOnly(2023, 12, 31),
            UnitUse = Use.Hours(5),
            Kind = StillRunning,
        }).Ledger;
        Only(ledger, Kind.DateWentBack, 0, 1);
    }

    private static void Only(PartLedger ledger, Kind kind, params int[] events)
    {
        var contradiction = Assert.Single(ledger.Contradictions);
        Assert.Equal(kind, contradiction.Kind);
        Assert.Equal(events, contradiction.Events);
        Assert.NotEmpty(contradiction.Words);
    }
}
