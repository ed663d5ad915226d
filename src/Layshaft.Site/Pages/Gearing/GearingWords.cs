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

    public static string Gears(Eng.GearingCandidate candidate, Composition composition) => Gears(candidate.DropPair, candidate.FinalDrive, composition);

    public static string Gears(Eng.ToothPair? pair, Eng.FinalDrive final, Composition composition) => pair is null
        ? composition.Say("gearing.final_only", ("final", Final(final, composition)))
        : composition.Say("gearing.pair_and_final", ("pair", Pair(pair, composition)), ("final", Final(final, composition)));

    public static string Change(Eng.ConditionChange change, Composition composition) => composition.Say("gearing.change." + change.Name.Replace(' ', '_'));

    public static string AirSourceOf(EventAir air, Composition composition) => composition.Say(air.Source switch
    {
        AirSource.Pressure => "gearing.air.pressure",
        AirSource.Temperature => "gearing.air.temperature",
        _ => "gearing.air.altitude",
    });

    public static string TyreBasis(Eng.RollingTyre tyre, Composition composition) => composition.Say(tyre.Basis switch
    {
        Eng.CircumferenceBasis.Measured => "gearing.tyre.measured",
        Eng.CircumferenceBasis.DesignDiameter => "gearing.tyre.design",
        _ => "gearing.tyre.nominal",
    });
}
