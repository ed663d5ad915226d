namespace Layshaft.Engineering.Gearing;

/// <summary>The bounds of the speeds of each gear over every pair on the shelf, with one drop pair and final drive; m/s, gears from 0.</summary>
/// <param name="LeastShift">Least speed at which the gear is left for the next; the top gear's is its limiter's.</param>
/// <param name="LeastLimiter">Least speed of the gear at the limiter.</param>
/// <param name="MostLimiter">Greatest speed of the gear at the limiter.</param>
internal sealed record ShelfSpeeds(double[] LeastShift, double[] LeastLimiter, double[] MostLimiter)
{
    internal static ShelfSpeeds Of(CarModel car, ShelfPairs pairs, double[][,] shiftRpm, double reduction)
    {
        var speeds = new ShelfSpeeds(new double[pairs.Gears], new double[pairs.Gears], new double[pairs.Gears]);
        for (int gear = 0; gear < pairs.Gears; gear++)
        {
            (speeds.LeastShift[gear], speeds.LeastLimiter[gear]) = (double.PositiveInfinity, double.PositiveInfinity);
            for (int i = 0; i < pairs[gear].Count; i++)
            {
                double ratio = pairs[gear][i].Ratio * reduction, limiter = car.SpeedMps(car.Car.Engine.LimiterRpm, ratio);
                speeds.LeastLimiter[gear] = Math.Min(speeds.LeastLimiter[gear], limiter);
                speeds.MostLimiter[gear] = Math.Max(speeds.MostLimiter[gear], limiter);
                double least = limiter;
                for (int j = 0; gear < pairs.Gears - 1 && j < pairs[gear + 1].Count; j++)
                {
                    double rpm = shiftRpm[gear][i, j];
                    least = double.IsNaN(rpm) ? least : Math.Min(least, car.SpeedMps(rpm, ratio));
                }

                speeds.LeastShift[gear] = Math.Min(speeds.LeastShift[gear], least);
            }
        }

        return speeds;
    }
}
