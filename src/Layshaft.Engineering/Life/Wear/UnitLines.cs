namespace Layshaft.Engineering.Life;

/// <summary>Lines of wear against usage^power, one for each unit, with a common height at no usage: new sizes are nominal.</summary>
internal sealed record UnitLines(double Power, double Height, double[] Slopes, double[] Longest, double ResidualSumOfSquares)
{
    public static UnitLines Of(IReadOnlyList<IReadOnlyList<WearReading>> units, double power)
    {
        var sums = units.Select(readings => Sums.Of(readings, power)).ToArray();

        // Least squares: units with one reading have no say in the height.
        var weight = sums.Sum(s => s.Count - s.X * s.X / s.XX);
        var height = weight > 1e-9 ? sums.Sum(s => s.Y - s.X * s.XY / s.XX) / weight : 0;
        return new UnitLines(
            power,
            height,
            [.. sums.Select(s => (s.XY - height * s.X) / s.XX)],
            [.. sums.Select(s => s.Longest)],
            sums.Sum(s => Math.Max(0, s.YY - 2 * height * s.Y + s.Count * height * height - (s.XY - height * s.X) * (s.XY - height * s.X) / s.XX)));
    }

    public TypeRate Rate(double leastWear)
    {
        var logs = Logs(leastWear);
        var mean = CompensatedSum.MeanOf(logs);
        return new TypeRate(Power, mean, Math.Sqrt(logs.Sum(l => (l - mean) * (l - mean)) / (logs.Length - 1)));
    }

    public double MedianLog(double leastWear)
    {
        var logs = Logs(leastWear);
        Array.Sort(logs);
        return (logs[(logs.Length - 1) / 2] + logs[logs.Length / 2]) / 2;
    }

    // A part that shows no wear still has a rate.
    private double[] Logs(double leastWear) => [.. Slopes.Select((slope, i) => Math.Log(Math.Max(slope, leastWear / Longest[i])))];

    private readonly record struct Sums(int Count, double X, double Y, double XX, double XY, double YY, double Longest)
    {
        public static Sums Of(IReadOnlyList<WearReading> readings, double power)
        {
            var (x, y, xx, xy, yy, longest) = (0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
            foreach (var reading in readings)
            {
                var at = Math.Pow(reading.Use, power);
                x += at;
                y += reading.Value;
                xx += at * at;
                xy += at * reading.Value;
                yy += reading.Value * reading.Value;
                longest = Math.Max(longest, at);
            }

            return new Sums(readings.Count, x, y, xx, xy, yy, longest);
        }
    }
}
