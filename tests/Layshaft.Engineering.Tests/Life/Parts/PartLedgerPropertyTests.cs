using CsCheck;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Parts;

public class PartLedgerPropertyTests
{
    private static readonly Gen<FittingEvent[]> AnyEvents =
        Gen.Select(
            Gen.Enum<FittingKind>(),
            Gen.Int[0, 2].Select(index => "ABC"[index..(index + 1)]),
            Gen.Bool.Select(first => first ? "ring" : "bearing"),
            Gen.Int[0, 2].Select(index => index == 0 ? null : $"K-{index}"),
            Gen.Int[0, 50],
            Gen.Int[-5, 50],
            (kind, unit, part, serial, hours, other) => new FittingEvent
            {
                Part = new PartIdentity(part, serial),
                Unit = unit,
                Date = new DateOnly(2024, 1, 1).AddDays(hours),
                UnitUse = Use.Hours(hours),
                Kind = kind,
                CarriedUse = other % 3 == 0 ? Use.Hours(Math.Abs(other)) : null,
                FromUnit = other % 2 == 0 ? "A" : null,
                FromUnitUse = other % 4 == 0 ? Use.Hours(Math.Abs(other)) : null,
            }).Array[0, 30];

    [Fact]
    public void Any_entries_at_all_give_lives_with_no_negative_stay_and_contradictions_that_point_at_entries()
    {
        AnyEvents.Sample(events =>
        {
            var ledger = PartLedger.Of(events);
            Assert.All(ledger.Lives.SelectMany(life => life.Spans), span => Assert.True(span.Ran.Amount >= 0));
            Assert.All(ledger.Contradictions, contradiction =>
            {
                Assert.NotEmpty(contradiction.Events);
                Assert.All(contradiction.Events, index => Assert.InRange(index, 0, events.Length - 1));
                Assert.Equal(contradiction.Events.Order(), contradiction.Events);
            });
        });
    }

    [Fact]
    public void No_place_in_a_unit_holds_two_parts_at_one_time()
    {
        AnyEvents.Sample(events =>
        {
            var ledger = PartLedger.Of(events);
            var running = ledger.Lives.Where(life => life.End == LifeEnd.Running).Select(life => (life.Part.Part, life.Spans[^1].Unit)).ToArray();
            Assert.Equal(running.Distinct().Count(), running.Length);
        });
    }

    [Fact]
    public void However_often_a_part_changes_units_its_hours_are_the_sum_of_its_stays()
    {
        Gen.Int[1, 40].Array[1, 12].Sample(stays =>
        {
            var history = new History();
            var counters = new Dictionary<string, double> { ["A"] = 100, ["B"] = 7 };
            history.Add(FittingKind.FittedNew, "A", counters["A"], "K-1");
            var (here, there) = ("A", "B");
            foreach (var stay in stays)
            {
                counters[here] += stay;
                history.Add(FittingKind.Moved, there, counters[there], "K-1", from: here, fromHours: counters[here]);
                (here, there) = (there, here);
            }

            Assert.Empty(history.Ledger.Contradictions);
            Assert.Equal(stays.Sum(), Assert.Single(history.Ledger.Lives).Total.Hours!.Value, 1e-9);
        });
    }
}
