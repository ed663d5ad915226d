using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>The published survival data sets, by the names that the expected tables use.</summary>
internal static class SurvivalData
{
    public static LifeSample Sample(string name) => name switch
    {
        "NIST500" => From("nist_handbook_weibull_500h", 20, "hours", "failed"),
        "KM8215" => From("nist_handbook_km_8_2_1_5", 20, "hours", "failed"),
        "OVARIAN" => From("survival_ovarian", 26, "days", "event"),
        "AML" => From("survival_aml", 23, "weeks", "event"),
        "AMLM" => From("survival_aml", 23, "weeks", "event", "Maintained"),
        "AMLN" => From("survival_aml", 23, "weeks", "event", "Nonmaintained"),
        _ => throw new ArgumentException(name),
    };

    private static LifeSample From(string file, int rows, string time, string failed, string? group = null)
    {
        var table = PublishedTable.Read(file, rows);
        return LifeSample.Of(UseMeasure.Hours, table.Rows
            .Where(row => group is null || table.Text(row, "group") == group)
            .Select(row => Life(table.Number(row, time), table.Text(row, failed) == "1")));
    }

    public static ObservedLife Life(double usage, bool failed) => failed ? ObservedLife.FailedAt(usage) : ObservedLife.GoodAt(usage);
}
