using System.Numerics;

namespace Layshaft.Engineering.Settings;

/// <summary>
/// Finds the cheapest packs for every total by dynamic programming over tenths of a micrometre: a bounded knapsack that keeps the
/// few best packs of each total. Exact: what it returns cannot be beaten by any pack from the same shims.
/// </summary>
internal sealed class PackSearch
{
    /// <summary>How many packs are kept for each total: the winner and two runners-up.</summary>
    public const int Kept = 3;

    private readonly IReadOnlyList<ShimKind> kinds;
    private readonly int stepTenths;
    private readonly List<Node>?[] best;

    /// <summary>Works out the best packs of every total up to a greatest one.</summary>
    /// <param name="kinds">The shims, thickest first.</param>
    /// <param name="greatestTenths">Greatest total, 0 or more.</param>
    /// <param name="mostShims">Most shims in a pack.</param>
    public PackSearch(IReadOnlyList<ShimKind> kinds, int greatestTenths, int mostShims)
    {
        this.kinds = kinds;

        // Stock usually comes in steps of 10 or 50 µm or of a thou: only their multiples can be reached.
        stepTenths = kinds.Aggregate(0, (step, kind) => (int)BigInteger.GreatestCommonDivisor(step, kind.ThicknessTenths));
        stepTenths = stepTenths == 0 ? 1 : stepTenths;
        best = new List<Node>?[(greatestTenths / stepTenths) + 1];
        best[0] = [new Node(0, 0, -1, 0, null)];
        for (var kind = 0; kind < kinds.Count; kind++)
        {
            Add(kind, mostShims);
        }
    }

    /// <summary>The best packs whose total lies in a window: cheapest first, then nearest to a middle, then fewest thin shims.</summary>
    /// <param name="fromTenths">Least total.</param>
    /// <param name="toTenths">Greatest total, within what was searched.</param>
    /// <param name="twiceMiddleTenths">Twice the total wanted, so that the middle of an odd band stays whole.</param>
    /// <returns>Up to three packs as counts by kind.</returns>
    public IReadOnlyList<int[]> In(int fromTenths, int toTenths, int twiceMiddleTenths)
    {
        var found = new List<(Node Node, int Off)>();
        for (var at = (Math.Max(0, fromTenths) + stepTenths - 1) / stepTenths; at < best.Length && at * stepTenths <= toTenths; at++)
        {
            found.AddRange((best[at] ?? []).Select(node => (node, Math.Abs((2 * at * stepTenths) - twiceMiddleTenths))));
        }

        return [.. found
            .OrderBy(pack => pack.Node.Cost)
            .ThenBy(pack => pack.Off)
            .ThenBy(pack => pack.Node, Comparer<Node>.Create(FewestThin))
            .Take(Kept)
            .Select(pack => Counts(pack.Node))];
    }

    private void Add(int kind, int mostShims)
    {
        var (thickness, count, cost) = kinds[kind];
        var stride = thickness / stepTenths;

        // Downwards, so that totals below still hold packs without this kind.
        for (var total = best.Length - 1; total >= stride; total--)
        {
            for (var used = 1; used <= count && used * (long)stride <= total; used++)
            {
                foreach (var rest in best[total - (used * stride)] ?? [])
                {
                    if (rest.Shims + used <= mostShims)
                    {
                        Keep(total, rest, kind, used, rest.Cost + (used * cost));
                    }
                }
            }
        }
    }

    private void Keep(int total, Node rest, int kind, int used, long cost)
    {
        var packs = best[total] ??= new List<Node>(Kept + 1);
        if (packs.Count == Kept && cost > packs[^1].Cost)
        {
            return;
        }

        var pack = new Node(cost, rest.Shims + used, kind, used, rest);
        var place = packs.FindIndex(other => Compare(pack, other) < 0);
        packs.Insert(place < 0 ? packs.Count : place, pack);
        if (packs.Count > Kept)
        {
            packs.RemoveAt(Kept);
        }
    }

    private static int Compare(Node one, Node other) =>
        one.Cost != other.Cost ? one.Cost.CompareTo(other.Cost) : FewestThin(one, other);

    /// <summary>
    /// The pack with fewer of the thinnest shims comes first, then of the next thinnest. The same shims added to two packs
    /// leave their order as it is, which is what lets the search drop all but the best.
    /// </summary>
    private static int FewestThin(Node? one, Node? other)
    {
        for (; one is not null && other is not null; one = one.Rest, other = other.Rest)
        {
            if (one.Kind != other.Kind)
            {
                return one.Kind.CompareTo(other.Kind);
            }

            if (one.Used != other.Used)
            {
                return one.Used.CompareTo(other.Used);
            }
        }

        return 0;
    }

    private int[] Counts(Node pack)
    {
        var counts = new int[kinds.Count];
        for (var node = pack; node is { Kind: >= 0 }; node = node.Rest)
        {
            counts[node.Kind] += node.Used;
        }

        return counts;
    }

    /// <summary>A pack: some shims of one kind on top of a smaller pack of thicker kinds.</summary>
    private sealed record Node(long Cost, int Shims, int Kind, int Used, Node? Rest);
}
