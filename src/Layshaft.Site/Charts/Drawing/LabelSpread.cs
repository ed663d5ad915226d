namespace Layshaft.Site.Charts.Drawing;

/// <summary>
/// Moves labels apart along one line so that none overlap, each as near to its wish as the others let it.
/// </summary>
/// <remarks>
/// Neighbours that would overlap join into a block that sits where the sum of squared moves is least (pooling of
/// adjacent violators, the usual method of isotonic regression).
/// </remarks>
internal static class LabelSpread
{
    /// <param name="wishes">Wished centre of each label.</param>
    /// <param name="widths">Room that each label takes, gap included.</param>
    /// <param name="from">Where the first label may start.</param>
    /// <param name="to">Where the last label may end; labels that need more room than there is run over it.</param>
    /// <returns>The centres, in the order of the wishes.</returns>
    public static IReadOnlyList<double> Apart(IReadOnlyList<double> wishes, IReadOnlyList<double> widths, double from, double to)
    {
        var order = Enumerable.Range(0, wishes.Count).OrderBy(i => wishes[i]).ThenBy(i => i).ToArray();
        List<Block> blocks = [];
        foreach (var i in order)
        {
            Block block = new([i], wishes[i] - (widths[i] / 2), widths[i]);
            block = block with { Start = Clamp(block.Start, block.Width, from, to) };
            while (blocks.Count > 0 && blocks[^1].Start + blocks[^1].Width > block.Start)
            {
                block = Join(blocks[^1], block, wishes, widths, from, to);
                blocks.RemoveAt(blocks.Count - 1);
            }

            blocks.Add(block);
        }

        var centres = new double[wishes.Count];
        foreach (var block in blocks)
        {
            var at = block.Start;
            foreach (var i in block.Members)
            {
                centres[i] = at + (widths[i] / 2);
                at += widths[i];
            }
        }

        return centres;
    }

    private static Block Join(Block first, Block second, IReadOnlyList<double> wishes, IReadOnlyList<double> widths, double from, double to)
    {
        int[] members = [.. first.Members, .. second.Members];
        var offset = 0.0;
        var sum = 0.0;
        foreach (var i in members)
        {
            sum += wishes[i] - (offset + (widths[i] / 2));
            offset += widths[i];
        }

        return new Block(members, Clamp(sum / members.Length, offset, from, to), offset);
    }

    private static double Clamp(double start, double width, double from, double to) => Math.Max(from, Math.Min(start, to - width));

    private sealed record Block(int[] Members, double Start, double Width);
}
