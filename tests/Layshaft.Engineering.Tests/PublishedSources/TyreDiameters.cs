using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>Tyre diameters and rolling circumferences against size sheets and the rules of UN R30 and ETRTO.</summary>
public class TyreDiameters
{
    // Size and specification sheets of two light-truck ranges, shop-hosted copies (read).
    [Theory]
    [InlineData("LT235/85R16", 31.7)]
    [InlineData("LT245/75R16", 30.5)]
    [InlineData("LT265/75R16", 31.7)]
    [InlineData("LT285/75R16", 32.8)]
    [InlineData("LT305/70R16", 32.8)]
    [InlineData("LT315/75R16", 34.6)]
    public void Nominal_diameter_lies_within_0_06_inch_of_an_all_terrain_sheet(string code, double sheetInch)
    {
        TyreSize size = TyreSize.Parse(code).Require();
        Assert.InRange(size.NominalDiameter.Inches, sheetInch - 0.06, sheetInch + 0.06);
    }

    // The same sheets (read): diameter in inches, revolutions per mile.
    [Theory]
    [InlineData(31.7, 655)]
    [InlineData(30.5, 682)]
    [InlineData(31.7, 656)]
    [InlineData(32.8, 633)]
    [InlineData(34.6, 601)]
    [InlineData(32.0, 648)]
    [InlineData(33.5, 620)]
    [InlineData(34.9, 595)]
    [InlineData(37.7, 550)]
    public void The_factor_3_05_gives_the_sheets_turns_per_mile_within_0_4_per_cent(double diameterInch, double turnsPerMile)
    {
        double computed = Length.FromMiles(1).Inches / (RollingTyre.RollingFactor * diameterInch);
        Assert.InRange(computed / turnsPerMile, 0.996, 1.004);
        double withPi = Length.FromMiles(1).Inches / (Math.PI * diameterInch);
        Assert.InRange(turnsPerMile / withPi, 1.024, 1.036); // the unloaded diameter overstates road speed by about 3 %
    }

    [Theory] // brickboard.com, 1023718: worked arithmetic (read)
    [InlineData("225/55-16", 653.9)]
    [InlineData("195/65-15", 634.5)]
    [InlineData("205/55-16", 631.9)]
    public void Nominal_diameter_is_rim_and_two_sidewalls(string code, double millimetres)
    {
        Assert.Equal(millimetres, TyreSize.Parse(code).Require().NominalDiameter.Millimeters, 5e-3);
    }

    [Theory] // a maker's sheet for small rims (read)
    [InlineData("205/50-10", 460)]
    [InlineData("205/65-10", 520)]
    public void Nominal_diameter_of_small_rims_lies_within_a_millimetre(string code, double millimetres)
    {
        Assert.InRange(TyreSize.Parse(code).Require().NominalDiameter.Millimeters, millimetres - 1.05, millimetres + 1);
    }

    [Theory] // UN R30, 6.1.2; ETRTO manual (from memory)
    [InlineData("195/65R15", 635)]
    [InlineData("205/55R16", 632)]
    [InlineData("185/60R14", 578)]
    [InlineData("225/45R17", 634)]
    [InlineData("175/65R14", 584)]
    [InlineData("195/50R15", 577)]
    [InlineData("205/50R16", 612)]
    [InlineData("205/60R15", 627)]
    [InlineData("225/50R16", 632)]
    [InlineData("245/40R18", 653)]
    public void Design_diameter_follows_the_rule_of_R30(string code, int millimetres)
    {
        TyreSize size = TyreSize.Parse(code).Require();
        Assert.Equal(millimetres, size.DesignDiameter!.Value.Millimeters, 5e-10);
        Assert.InRange(size.NominalDiameter.Millimeters, millimetres - 1.0, millimetres + 1.0);
    }

    [Theory] // ETRTO dynamic rolling circumference (from memory; the factor is supported by the sheets above)
    [InlineData("205/55R16", 1928)]
    [InlineData("195/65R15", 1937)]
    [InlineData("225/45R17", 1934)]
    public void Rolling_circumference_is_3_05_times_the_design_diameter(string code, double millimetres)
    {
        RollingTyre tyre = RollingTyre.FromSize(TyreSize.Parse(code).Require()).Require();
        Assert.Equal(CircumferenceBasis.DesignDiameter, tyre.Basis);
        Assert.InRange(tyre.Circumference.Millimeters, millimetres - 1, millimetres + 1);
    }
}
