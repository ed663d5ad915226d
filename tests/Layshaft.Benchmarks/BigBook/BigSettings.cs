using System.Globalization;
using System.Text;
using Layshaft.Book.Records;
using UnitsNet;

namespace Layshaft.Benchmarks.BigBook;

/// <summary>What was found and what was set, within the band of each setting.</summary>
internal sealed class BigSettings(Gearbox box, Random random, string technician)
{
    public void Write(StringBuilder text)
    {
        text.Append("settings:\n");
        foreach (var setting in box.Settings)
        {
            var (low, high, unit, form) = setting.Target switch
            {
                { Low: Length l, High: Length h } => (l.Millimeters, h.Millimeters, " mm", "0.000"),
                { Low: null, High: Length h } => (0, h.Millimeters, " mm", "0.000"),
                { Low: Torque l, High: Torque h } => (l.NewtonMeters, h.NewtonMeters, " N·m", h.NewtonMeters > 10 ? "0" : "0.00"),
                _ => (0, 0, "", ""),
            };
            if (unit.Length == 0)
            {
                continue;
            }

            var value = (low + high) / 2;
            var spread = (high - low) * 0.1;
            var built = Enumerable.Range(0, 3).Select(_ => (value + (spread * (random.NextDouble() - 0.5))).ToString(form, CultureInfo.InvariantCulture) + unit);
            var instrument = unit == " mm" ? "lever-gauge" : high > 10 ? "wrench-250" : "drag-wrench";
            text.Append(CultureInfo.InvariantCulture, $"  - setting: {setting.Id}\n    built: [{string.Join(", ", built)}]\n    instrument: {instrument}\n    by: {technician}\n");
        }
    }
}
