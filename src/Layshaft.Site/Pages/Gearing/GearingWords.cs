using Layshaft.Site.Assessment.Gearing;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Gearing;

/// <summary>Writes gears as driven/driver with their ratio: "29/23 (1.261)", "25/28 (0.893, overdrive)". What heads them says the direction.</summary>
internal static class GearingWords
{
    public static string Pair(Eng.ToothPair? pair, Composition composition) => pair is null
        ? composition.Say("gearing.no_pair")
        : composition.Say(
            pair.IsOverdrive ? "gearing.pair_overdrive" : "gearing.pair",
            ("teeth", pair.ToString()),
            ("ratio", composition.Figures.Number(pair.Ratio, 3).Text));

    public static string Final(Eng.FinalDrive final, Composition composition) => final.Teeth is { } teeth
        ? composition.Say("gearing.pair", ("teeth", teeth.ToString()), ("ratio", composition.Figures.Number(final.Ratio, 3).Text))
        : composition.Figures.Number(final.Ratio, 3).Text;

    /// <summary>A set of gears with ratios; of the pairs in the box those that differ from the fitted ones.</summary>
    public static string Gears(Eng.GearSet set, Composition composition, GearingCase? made = null) => string.Join(", ", Changed(set, made, composition, pair => Pair(pair, composition)).Append(set.DropPair is null
        ? composition.Say("gearing.final_only", ("final", Final(set.FinalDrive, composition)))
        : composition.Say("gearing.pair_and_final", ("pair", Pair(set.DropPair, composition)), ("final", Final(set.FinalDrive, composition)))));

    /// <summary>The teeth alone, for headings and charts: "33/27 with 39/10", "gear 3 35/26, 33/27 with 39/10".</summary>
    public static string Short(Eng.GearSet set, Composition composition, GearingCase? made = null) => string.Join(", ", Changed(set, made, composition, pair => pair.ToString()).Append(set.DropPair is null
        ? set.FinalDrive.ToString()
        : composition.Say("gearing.short", ("pair", set.DropPair.ToString()), ("final", set.FinalDrive.ToString()))));

    /// <summary>A pair in the box: "gear 3 35/26".</summary>
    public static string GearPair(int gear, string pair, Composition composition) => composition.Say("gearing.gear_pair", ("gear", gear), ("pair", pair));

    public static string Change(Eng.ConditionChange change, Composition composition) => composition.Say("gearing.change." + change.Key);

    public static string Changes(IEnumerable<Eng.ConditionChange> changes, Composition composition) => string.Join(", ", changes.Select(c => Change(c, composition)));

    /// <summary>A time with its uncertainty, no finer than that allows: "0.12 ± 0.06 s".</summary>
    public static string Difference(Eng.TimeDifference difference, Composition composition) => composition.Say(
        "gearing.difference",
        ("time", composition.Figures.Number(difference.Value.Seconds, difference.Decimals).Text),
        ("uncertainty", composition.Figures.Seconds(difference.Expanded, difference.Decimals).Text));

    /// <summary>The same with a sign, plus for slower.</summary>
    public static string Signed(Eng.TimeDifference difference, Composition composition) => composition.Say(
        "gearing.difference",
        ("time", composition.Figures.Number(difference.Value.Seconds, difference.Decimals, withSign: true).Text),
        ("uncertainty", composition.Figures.Seconds(difference.Expanded, difference.Decimals).Text));

    public static string AirSourceOf(EventAir air, Composition composition) => composition.Say(air.Source switch
    {
        AirSource.Pressure => "gearing.air.pressure",
        AirSource.Temperature => "gearing.air.temperature",
        AirSource.Altitude => "gearing.air.altitude",
    });

    public static string TyreBasis(Eng.RollingTyre tyre, Composition composition) => composition.Say(tyre.Basis switch
    {
        Eng.CircumferenceBasis.Measured => "gearing.tyre.measured",
        Eng.CircumferenceBasis.DesignDiameter => "gearing.tyre.design",
        Eng.CircumferenceBasis.NominalDiameter => "gearing.tyre.nominal",
    });

    /// <summary>The pairs in the box that differ from the fitted ones; null for none.</summary>
    public static string? ChangedPairs(Eng.GearSet set, GearingCase made, Composition composition) =>
        string.Join(", ", Changed(set, made, composition, pair => pair.ToString())) is { Length: > 0 } pairs ? pairs : null;

    private static IEnumerable<string> Changed(Eng.GearSet set, GearingCase? made, Composition composition, Func<Eng.ToothPair, string> words)
    {
        if (made?.Fitted is not { } fitted)
        {
            return [];
        }

        var gears = made.Car.Drivetrain.With(set).Gears;
        return made.Car.Drivetrain.GearsThatDiffer(fitted, set).Select(g => GearPair(g, words(gears[g - 1].Pairs[0]), composition));
    }
}
