namespace Layshaft.Engineering.Gearing;

/// <summary>A circuit or hill as its straights, in the order in which they are driven. Checked and immutable.</summary>
public sealed class Venue
{
    private Venue(string name, IReadOnlyList<Straight> straights)
    {
        Name = name;
        Straights = straights;
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The straights of one lap.</summary>
    public IReadOnlyList<Straight> Straights { get; }

    /// <summary>Checks the straights.</summary>
    /// <param name="name">The venue's name.</param>
    /// <param name="straights">The straights of one lap, in order.</param>
    public static Outcome<Venue> Create(string name, IReadOnlyList<Straight> straights)
    {
        ArgumentNullException.ThrowIfNull(straights);
        var faults = new FaultList();
        if (straights.Count == 0)
        {
            faults.Add(new GearingFault(GearingFaultKind.NoStraights, name));
        }

        foreach (Straight straight in straights)
        {
            Check(straight, faults);
        }

        return faults.Finish(() => new Venue(name, straights.ToArray()));
    }

    private static void Check(Straight straight, FaultList faults)
    {
        double lengthM = straight.Length.Meters;
        double startMps = straight.StartSpeed.MetersPerSecond;
        double endMps = straight.EndSpeed.MetersPerSecond;
        var own = new FaultList();
        own.Range(straight.Name + ".length", lengthM, 5, 20_000, "m");
        own.Range(straight.Name + ".start_speed", startMps, 0, RollingTyre.HighestSpeedMps, "m/s");
        own.Range(straight.Name + ".end_speed", endMps, 0, RollingTyre.HighestSpeedMps, "m/s");
        own.Range(straight.Name + ".braking", straight.Braking.MetersPerSecondSquared, 1, 60, "m/s²");
        own.Range(straight.Name + ".grade", straight.Grade, -0.4, 0.4);
        if (straight.BrakingDistance is { } distance)
        {
            own.Range(straight.Name + ".braking_distance", distance.Meters, 0, lengthM, "m");
        }

        if (straight.CornerMinimum is { } minimum)
        {
            own.Range(straight.Name + ".corner_minimum", minimum.MetersPerSecond, 0, startMps, "m/s");
        }

        if (own.IsEmpty && straight.BrakingDistance is null)
        {
            double neededM = ((startMps * startMps) - (endMps * endMps)) / (2 * straight.Braking.MetersPerSecondSquared);
            if (neededM > lengthM)
            {
                own.Add(new GearingFault(GearingFaultKind.StraightTooShortToBrake, straight.Name, lengthM, neededM, Unit: "m"));
            }
        }

        own.CopyTo(faults);
    }
}
