using Layshaft.Book.Records;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>Where a gear that is to be fitted comes from.</summary>
public enum GearSource
{
    /// <summary>It is fitted already; the drop pair is only swapped over.</summary>
    Fitted,

    /// <summary>The owner's own kit.</summary>
    Kit,

    /// <summary>The workshop's shelf: to be bought or borrowed.</summary>
    Shelf,
}

/// <summary>One pair that is to be fitted.</summary>
/// <param name="What">What it is.</param>
/// <param name="Gear">The gear, for a pair in the box; else 0.</param>
/// <param name="Pair">The pair, of a final drive the pinion and crown wheel; null for none, or if the teeth are not known.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record NewPair(ChangedGears What, int Gear, Eng.ToothPair? Pair, GearSource Source);

/// <summary>What a change of gears takes.</summary>
/// <param name="Pairs">What is to be fitted; empty if nothing changes.</param>
/// <param name="Labour">Working time; null if the gearbox's file does not give it for all of the change.</param>
/// <param name="BoxOut">Whether the gearbox must be out of the car.</param>
public sealed record GearChange(IReadOnlyList<NewPair> Pairs, Duration? Labour, bool BoxOut)
{
    /// <summary>The change from what is fitted; null if that is not known.</summary>
    /// <param name="made">The case.</param>
    /// <param name="to">What is to be fitted.</param>
    public static GearChange? Of(GearingCase made, Eng.GearSet to)
    {
        ArgumentNullException.ThrowIfNull(made);
        ArgumentNullException.ThrowIfNull(to);
        if (made.Fitted is not { } fitted)
        {
            return null;
        }

        var kit = made.Kit;
        var gears = made.Car.Drivetrain.With(to).Gears;
        List<NewPair> pairs =
        [
            .. made.Car.Drivetrain.GearsThatDiffer(fitted, to).Select(gear => new NewPair(ChangedGears.GearPair, gear, gears[gear - 1].Pairs[0], SourceOf(
                gears[gear - 1].Pairs[0], kit?.GearPairs.Where(c => c.Gear == gear).SelectMany(c => c.Pairs)))),
        ];
        if (to.DropPair != fitted.DropPair)
        {
            var isSwapped = to.DropPair is { } pair && pair == fitted.DropPair?.Swapped;
            var mayBeSwapped = made.Box.Gearbox.DropGears?.Swappable is true;
            pairs.Add(new NewPair(ChangedGears.DropGears, 0, to.DropPair, isSwapped ? GearSource.Fitted : SourceOf(
                to.DropPair, kit?.DropPairs.SelectMany(p => mayBeSwapped ? [p, new(p.Driven, p.Driver)] : new[] { p }))));
        }

        if (to.FinalDrive != fitted.FinalDrive)
        {
            pairs.Add(new NewPair(ChangedGears.FinalDrive, 0, to.FinalDrive.Teeth, SourceOf(to.FinalDrive.Teeth, kit?.FinalDrives)));
        }

        var times = made.Box.Gearbox.ChangeTimes;
        return new GearChange(
            pairs,
            pairs.TrueForAll(p => TimeOf(times, p.What) is not null)
                ? WorkOf(times).Of(to.DropPair != fitted.DropPair, to.FinalDrive != fitted.FinalDrive, pairs.Count(p => p.What == ChangedGears.GearPair))
                : null,
            times is not null && pairs.Exists(p => times.BoxOut.Contains(p.What)));
    }

    /// <summary>The working times of a gearbox, the usual ones where it gives none.</summary>
    /// <param name="times">The gearbox's times.</param>
    internal static Eng.ChangeWork WorkOf(ChangeTimes? times)
    {
        var usual = Eng.ChangeWork.Usual;
        return times is null ? usual : new Eng.ChangeWork(
            times.DropGears ?? usual.DropPair,
            times.FinalDrive ?? usual.FinalDrive,
            times.GearPair ?? usual.GearPair,
            times.FurtherPair ?? times.GearPair ?? usual.FurtherGearPair);
    }

    private static Duration? TimeOf(ChangeTimes? times, ChangedGears what) => what switch
    {
        ChangedGears.DropGears => times?.DropGears,
        ChangedGears.FinalDrive => times?.FinalDrive,
        _ => times?.GearPair,
    };

    private static GearSource SourceOf(Eng.ToothPair? pair, IEnumerable<Book.Values.Teeth>? kit) =>
        pair is not null && kit is not null && kit.Any(p => GearboxStock.PairOf(p) == pair) ? GearSource.Kit : GearSource.Shelf;
}
