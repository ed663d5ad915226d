using System.Globalization;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>
/// NIST/SEMATECH e-Handbook of Statistical Methods (doi 10.18434/M32189), tables 1.3.6.7.2 and 1.3.6.7.4 (read), and
/// values computed with mpmath 1.2.1 that R 4.2.2 gives as well.
/// </summary>
public class QuantileTests
{
    [Theory]
    [InlineData("TQ", 84)]
    [InlineData("CHI2Q", 96)]
    [InlineData("ZQ", 5)]
    public void Quantiles_agree_with_high_precision_values(string distribution, int expectedCount)
    {
        var table = PublishedTable.Read("expected_quantiles_mpmath", 185);
        var rows = table.Rows.Where(row => table.Text(row, "dist") == distribution).ToArray();
        Assert.Equal(expectedCount, rows.Length);
        foreach (var row in rows)
        {
            var p = table.Number(row, "p_lower_tail");
            var nu = table.Number(row, "nu");
            var actual = distribution switch
            {
                "TQ" => Quantiles.StudentT(p, nu),
                "CHI2Q" => Quantiles.ChiSquared(p, nu),
                _ => Quantiles.Normal(p),
            };
            Near.Relative(table.Number(row, "mpmath_18_digits"), actual, 1e-12, $"{distribution} p={row[1]} nu={row[2]}");
        }
    }

    [Fact]
    public void Printed_t_table_is_met_to_its_last_digit()
    {
        var table = PublishedTable.Read("nist_handbook_t_table_subset", 90);
        foreach (var row in table.Rows.Where(row => table.Text(row, "upper_tail_alpha") != "0.001"))
        {
            var value = Quantiles.StudentT(1 - table.Number(row, "upper_tail_alpha"), table.Number(row, "nu"));
            Assert.Equal(table.Text(row, "printed"), value.ToString("F3", CultureInfo.InvariantCulture));
        }
    }

    [Fact]
    public void Printed_chi_squared_table_is_met_to_its_last_digit()
    {
        var table = PublishedTable.Read("nist_handbook_chi2_lower_table_subset", 55);
        foreach (var row in table.Rows)
        {
            var value = Quantiles.ChiSquared(1 - table.Number(row, "prob_of_exceeding"), table.Number(row, "nu"));
            Assert.Equal(table.Number(row, "printed"), value, 0.00051);
        }
    }
}
