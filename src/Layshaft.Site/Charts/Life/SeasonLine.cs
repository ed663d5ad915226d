using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Life;

/// <summary>
/// A unit's jobs along its seasons. Time runs downwards: labels of any length fit a phone, and every job keeps a row
/// high enough for a finger.
/// </summary>
public static class SeasonLine
{
    private const double RowHeight = 28;
    private const double AxisX = 62;
    private const double MarkX = 112;

    /// <summary>Draws the chart.</summary>
    /// <param name="input">What to draw.</param>
    /// <param name="size">For which width.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">No seasons, a season that ends before it starts, an unsafe link, a number that is not finite.</exception>
    public static RawHtml Draw(SeasonLineInput input, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.Seasons is null || input.Seasons.Count == 0 || input.Seasons.Any(s => !(s.To > s.From)))
        {
            throw new ArgumentException("The chart needs at least one season, and none that ends before it starts.", nameof(input));
        }

        var room = ChartSheet.Width(size) - MarkX - 18;
        var jobs = input.Jobs.OrderBy(j => j.Day).Select(j => (Job: j, Lines: TextWidth.Wrap(j.Label, room))).ToList();
        double[] heights = [.. jobs.Select(j => Math.Max(RowHeight, (j.Lines.Count * 16) + 10))];
        var height = Math.Max(input.Seasons.Count * 90, heights.Sum()) + 20;
        Scale scale = new(
            input.Seasons.Select(s => s.From).Concat(jobs.Select(j => j.Job.Day)).Min(),
            input.Seasons.Select(s => s.To).Concat(jobs.Select(j => j.Job.Day)).Max(),
            10,
            height - 10);
        var centres = LabelSpread.Apart([.. jobs.Select(j => scale.At(j.Job.Day))], heights, 4, height - 4);
        return ChartSheet.WithLinks(input.Frame, size, height, jobs.Any(j => j.Job.Link is not null), svg =>
        {
            svg.Line("axis", AxisX, scale.Start, AxisX, scale.End);
            foreach (var season in input.Seasons)
            {
                var (from, to) = (scale.At(season.From), scale.At(season.To));
                svg.Rect("bar", AxisX - 5, from, 10, to - from);
                svg.Label("strong", AxisX - 12, ((from + to) / 2) + 4.5, season.Label, Anchor.End);
            }

            for (var i = 0; i < jobs.Count; i++)
            {
                DrawJob(svg, jobs[i].Job, jobs[i].Lines, scale.At(jobs[i].Job.Day), centres[i], heights[i], ChartSheet.Width(size));
            }
        });
    }

    private static void DrawJob(SvgWriter svg, JobMark job, IReadOnlyList<string> lines, double at, double y, double height, double width)
    {
        svg.Path("leader", new PathData().Move(AxisX, at).To(AxisX + 12, at).To(MarkX - 22, y).To(MarkX - 10, y).ToString());
        svg.Circle("mark mark-solid", AxisX, at, 3);
        ChartLink.Around(svg, job.Link, ChartLink.NameOf(job.Grade, job.Label, job.AccessibleName), () =>
        {
            svg.Rect("hit", MarkX - 14, y - (height / 2) + 1, width - MarkX + 14, height - 2);
            if (job.Grade is null)
            {
                svg.Circle("mark", MarkX, y, 5);
            }
            else
            {
                Marks.Grade(svg, job.Grade, MarkX, y, 9.5);
            }

            for (var i = 0; i < lines.Count; i++)
            {
                svg.Label(job.Link is null ? "row-value" : "row-value link-text", MarkX + 17, y + 4.5 - ((lines.Count - 1) * 8) + (i * 16), lines[i]);
            }
        });
    }
}
