namespace Layshaft.Engineering.Gearing;

/// <summary>One gear of a gearbox: its name and its ratio, from tooth counts where they are known. Immutable.</summary>
public sealed record Gear
{
    private Gear(string name, double ratio, IReadOnlyList<ToothPair> pairs)
    {
        Name = name;
        Ratio = ratio;
        Pairs = pairs;
    }

    /// <summary>The gear's name, such as <c>1</c> or <c>top</c>.</summary>
    public string Name { get; }

    /// <summary>Input turns for one turn of the output, the drop pair not counted.</summary>
    public double Ratio { get; }

    /// <summary>The meshes that the ratio comes from, in the order of the power flow; empty when it was given as a number.</summary>
    public IReadOnlyList<ToothPair> Pairs { get; }

    /// <summary>A gear from its meshes; two of them when the input shaft drives the layshaft through a pair of its own.</summary>
    /// <param name="name">The gear's name.</param>
    /// <param name="pairs">The meshes in the order of the power flow.</param>
    /// <exception cref="ArgumentException">There is no mesh.</exception>
    public static Gear FromTeeth(string name, params IReadOnlyList<ToothPair> pairs)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        if (pairs.Count == 0)
        {
            throw new ArgumentException("A gear has at least one mesh; for direct drive give the ratio 1.", nameof(pairs));
        }

        return new Gear(name, pairs.Aggregate(1.0, (product, pair) => product * pair.Ratio), pairs.ToArray());
    }

    /// <summary>A gear whose tooth counts are not known.</summary>
    /// <param name="name">The gear's name.</param>
    /// <param name="ratio">Driven over driver, 0.2 to 20.</param>
    public static Outcome<Gear> FromRatio(string name, double ratio)
    {
        var faults = new FaultList();
        faults.Range($"gear {name}", ratio, 0.2, 20);
        return faults.Finish(() => new Gear(name, ratio, []));
    }
}
