using Layshaft.Engineering.Measurement;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>Published critical values and a published example of Grubbs' test.</summary>
public class GrubbsTableTests
{
    // Read: LibreTexts Chemistry, Reference Tables, appendix 7 "Critical Values for Grubb's Test" (two-sided, G10).
    // Left out as misprints of that page: n = 7 at 5 % (2.202 for 2.020) and n = 15 at 1 % (a repeat of n = 14).
    [Theory]
    [InlineData(3, 1.155, 1.155)]
    [InlineData(4, 1.481, 1.496)]
    [InlineData(5, 1.715, 1.764)]
    [InlineData(6, 1.887, 1.973)]
    [InlineData(8, 2.126, 2.274)]
    [InlineData(9, 2.215, 2.387)]
    [InlineData(10, 2.290, 2.482)]
    [InlineData(11, 2.355, 2.564)]
    [InlineData(12, 2.412, 2.636)]
    [InlineData(13, 2.462, 2.699)]
    [InlineData(14, 2.507, 2.755)]
    public void Two_sided_critical_values_are_those_of_the_table(int count, double at5Percent, double at1Percent)
    {
        Assert.Equal(at5Percent, GrubbsTest.CriticalValue(count, 0.05), 1.2e-3);
        Assert.Equal(at1Percent, GrubbsTest.CriticalValue(count, 0.01), 1.2e-3);
    }

    // ASTM E178 table 1 (one-sided), read in a modified form that gives two digits ("Treatment of extreme values"):
    // a one-sided α is the two-sided 2α. Its column is the 2.5 % one, the same numbers as 5 % two-sided.
    [Theory]
    [InlineData(3, 1.15)]
    [InlineData(4, 1.48)]
    [InlineData(5, 1.71)]
    [InlineData(6, 1.89)]
    [InlineData(7, 2.02)]
    [InlineData(8, 2.13)]
    public void One_sided_values_at_2_5_percent_are_those_of_astm_e178(int count, double expected) =>
        Assert.Equal(expected, GrubbsTest.CriticalValue(count, 2 * 0.025), 6e-3);

    [Fact]
    public void Uranium_isotope_example_has_statistic_2_4687_and_flags_245_57()
    {
        // NIST e-Handbook 1.3.5.17.1, eight mass spectrometer readings; one-sided critical value 2.032 at 5 %. From memory.
        double[] readings = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

        var test = GrubbsTest.Of(readings);

        Assert.Equal(2.4687, test.Statistic, 1e-4); // 2.468765 from the data: the printed figure is cut, not rounded
        Assert.Equal(7, test.SuspectIndex);
        Assert.Equal(OutlierStatus.Outlier, test.Status);
        Assert.Equal(2.032, GrubbsTest.CriticalValue(8, 2 * 0.05), 5e-4);
    }
}
