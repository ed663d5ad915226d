namespace Layshaft.Engineering.Life;

/// <summary>
/// The share still good over usage, without assuming a distribution: the non-parametric maximum likelihood estimate for
/// lives seen at inspections (Turnbull 1976, J. R. Statist. Soc. B 38, 290–295, from memory), in terms of the chance of
/// failing in each cell, so that left truncation needs no more than leaving a part out of the cells before its entry. Where
/// every failure is at a known moment it is the product-limit estimate of Kaplan and Meier.
/// </summary>
public sealed record TurnbullCurve
{
    private const int MostRounds = 5000;
    private const double Settled = 1e-10;
    private const double Nothing = 1e-6; // share of parts below which a cell is not shown as a step

    private TurnbullCurve(UseMeasure measure, IReadOnlyList<TurnbullStep> steps, double seenTo) =>
        (Measure, Steps, SeenTo) = (measure, steps, seenTo);

    /// <summary>What lives are counted in.</summary>
    public UseMeasure Measure { get; }

    /// <summary>The steps, shortest usage first; empty when nothing failed.</summary>
    public IReadOnlyList<TurnbullStep> Steps { get; }

    /// <summary>The greatest usage at which anything is known: the curve says nothing beyond it.</summary>
    public double SeenTo { get; }


    /// <summary>Works out the curve.</summary>
    /// <param name="sample">Lives, failed and still good.</param>
    public static TurnbullCurve Of(LifeSample sample)
    {
        ArgumentNullException.ThrowIfNull(sample);
        var edges = Edges(sample);
        var survival = Survival(edges, sample);
        var steps = new List<TurnbullStep>();
        var before = 1.0;
        for (var cell = 0; cell < survival.Length; cell++)
        {
            if (before - survival[cell] > Nothing)
            {
                steps.Add(new TurnbullStep(edges[cell].Usage, edges[cell + 1].Usage, survival[cell]));
                before = survival[cell];
            }
        }

        return new TurnbullCurve(sample.Measure, steps, sample.SeenTo);
    }

    // The usages at which a watch begins, a part was good or found worn, and just before one at which failures are exact.
    private static Edge[] Edges(LifeSample sample)
    {
        var edges = new SortedSet<Edge> { new(0, false) };
        foreach (var life in sample.Lives)
        {
            edges.Add(new Edge(life.Entry, false));
            edges.Add(new Edge(life.LastGood, life.IsExact));
            edges.Add(new Edge(life.SeenTo, false));
        }

        return [.. edges];
    }

    /// <summary>Survival after each cell between two edges, by repeated expectation and division (EM), in time proportional to parts and cells.</summary>
    private static double[] Survival(Edge[] edges, LifeSample sample)
    {
        var at = edges.Select((edge, index) => (edge, index)).ToDictionary(e => e.edge, e => e.index);
        var cells = edges.Length - 1;
        var watched = new double[cells + 1]; // parts in each cell that are certain to have been good at its beginning
        var unsure = new Dictionary<(int First, int End), int>(); // failures by the cells in which they may lie
        foreach (var life in sample.Lives)
        {
            var good = at[new Edge(life.LastGood, life.IsExact)];
            watched[at[new Edge(life.Entry, false)]]++;
            watched[good]--;
            if (life.FirstWorn is { } worn)
            {
                var span = (good, at[new Edge(worn, false)]);
                unsure[span] = unsure.GetValueOrDefault(span) + 1;
            }
        }

        for (var cell = 1; cell <= cells; cell++)
        {
            watched[cell] += watched[cell - 1];
        }

        var chance = new double[cells];
        foreach (var (first, end) in unsure.Keys)
        {
            Array.Fill(chance, 0.1, first, end - first);
        }

        var survival = new double[cells + 1]; // at each edge
        for (var round = 0; round < MostRounds; round++)
        {
            survival[0] = 1;
            for (var cell = 0; cell < cells; cell++)
            {
                survival[cell + 1] = survival[cell] * (1 - chance[cell]);
            }

            var weight = new double[cells + 1];
            var carried = new double[cells + 1];
            foreach (var ((first, end), count) in unsure)
            {
                var share = count / (survival[first] - survival[end]);
                weight[first] += share;
                weight[end] -= share;
                carried[first] += share * survival[end];
                carried[end] -= share * survival[end];
            }

            var change = 0.0;
            for (var cell = 0; cell < cells; cell++)
            {
                weight[cell + 1] += weight[cell];
                carried[cell + 1] += carried[cell];
                var failed = weight[cell] * (survival[cell] - survival[cell + 1]);
                var atRisk = watched[cell] + weight[cell] * survival[cell] - carried[cell];
                var next = failed <= 0 || atRisk <= 0 ? 0 : Math.Min(1, failed / atRisk);
                change = Math.Max(change, survival[cell] * Math.Abs(next - chance[cell]));
                chance[cell] = next;
            }

            if (change < Settled)
            {
                break;
            }
        }

        return survival[1..];
    }

    /// <param name="Usage">Usage since new.</param>
    /// <param name="JustBefore">Whether what happens at that very usage comes after this edge.</param>
    private readonly record struct Edge(double Usage, bool JustBefore) : IComparable<Edge>
    {
        public int CompareTo(Edge other) =>
            Usage == other.Usage ? other.JustBefore.CompareTo(JustBefore) : Usage.CompareTo(other.Usage);
    }
}
