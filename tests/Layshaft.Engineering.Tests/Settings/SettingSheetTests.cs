using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Settings;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Settings;

public class SettingSheetTests
{
    private static readonly Instrument Indicator = new() { ErrorLimit = Length.FromMicrometers(10) };

    private static readonly RequiredSetting EndFloat = new(
        "layshaft end float", SettingKind.EndFloat, Length.FromMillimeters(0.10), Length.FromMillimeters(0.20));

    [Theory]
    [InlineData(0.15, SettingStatus.Inside)]
    [InlineData(0.195, SettingStatus.TooCloseToCall)]
    [InlineData(0.105, SettingStatus.TooCloseToCall)]
    [InlineData(0.25, SettingStatus.Outside)]
    [InlineData(0.05, SettingStatus.Outside)]
    public void End_float_stands_inside_outside_or_too_close(double valueMm, SettingStatus expected) =>
        Assert.Equal(expected, SettingSheet.Check(EndFloat, Float(valueMm)).Status);

    [Fact]
    public void Run_out_has_no_lower_end()
    {
        var runOut = new RequiredSetting("mainshaft run-out", SettingKind.RunOut, null, Length.FromMicrometers(40));

        Assert.Equal(SettingStatus.Inside, SettingSheet.Check(runOut, Float(0.01)).Status);
        Assert.Equal(SettingStatus.Outside, SettingSheet.Check(runOut, Float(0.06)).Status);
    }

    [Fact]
    public void A_torque_from_a_wrench_of_4_percent_is_checked_in_any_torque_unit()
    {
        var nut = new RequiredSetting(
            "layshaft nut", SettingKind.TighteningTorque, Torque.FromNewtonMeters(110), Torque.FromNewtonMeters(130));
        var wrench = new Instrument { RelativeErrorLimit = 0.04 };
        var recorded = MeasuredQuantity.From([Torque.FromPoundForceFeet(88.5)], wrench);

        Assert.Equal(SettingStatus.Inside, SettingSheet.Check(nut, recorded).Status);
    }

    [Fact]
    public void What_was_asked_for_and_not_recorded_is_listed_and_what_was_not_asked_for_too()
    {
        var backlash = new RequiredSetting("final drive backlash", SettingKind.Backlash, Length.FromMillimeters(0.1), null);
        var pack = new RequiredSetting("input shim pack", SettingKind.ShimPack, null, null);
        var recorded = new Dictionary<string, MeasuredQuantity>
        {
            ["layshaft end float"] = Float(0.15),
            ["input shim pack"] = Float(1.25),
            ["layshaft endfloat"] = Float(0.15),
        };

        var sheet = SettingSheet.Check([EndFloat, backlash, pack], recorded);

        Assert.Equal(
            [SettingStatus.Inside, SettingStatus.NotRecorded, SettingStatus.NoBand], sheet.Results.Select(result => result.Status));
        Assert.Equal("final drive backlash", Assert.Single(sheet.Missing).Required.Name);
        Assert.Equal("layshaft endfloat", Assert.Single(sheet.NotAskedFor));
        Assert.False(sheet.IsComplete);
    }

    [Fact]
    public void A_band_narrower_than_the_uncertainty_is_said()
    {
        var narrow = EndFloat with { High = Length.FromMillimeters(0.11) };

        var result = SettingSheet.Check(narrow, Float(0.105));

        Assert.True(result.BandTooNarrow);
        Assert.Equal(SettingStatus.TooCloseToCall, result.Status);
        Assert.False(SettingSheet.Check(EndFloat, Float(0.105)).BandTooNarrow);
    }

    [Fact]
    public void A_length_for_a_torque_an_upside_down_band_and_a_name_twice_are_refused()
    {
        var torque = MeasuredQuantity.From([Torque.FromNewtonMeters(1)], Instrument.Unknown);

        Assert.Throws<ArgumentException>(() => SettingSheet.Check(EndFloat, torque));
        Assert.Throws<ArgumentException>(() => SettingSheet.Check(EndFloat with { High = Length.Zero }, Float(0.1)));
        Assert.Throws<ArgumentException>(() => SettingSheet.Check([EndFloat, EndFloat], new Dictionary<string, MeasuredQuantity>()));
    }

    private static MeasuredQuantity Float(double mm) => MeasuredQuantity.From([Length.FromMillimeters(mm)], Indicator);
}
