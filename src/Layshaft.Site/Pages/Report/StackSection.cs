using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Stack;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>The drawing of this gear stack, each part with its grade, and the same as a list.</summary>
/// <param name="Drawing">The drawing in both sizes.</param>
/// <param name="Remark">What is to scale in it.</param>
/// <param name="Parts">The parts that were looked at, in the order of their findings, those outside the drawing too.</param>
public sealed record StackSection(RawHtml Drawing, string Remark, IReadOnlyList<StackListView> Parts)
{
    /// <summary>Composes the section; null when the gearbox file does not say where the parts are.</summary>
    public static SectionView? Compose(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var composition = report.Composition;
        return StackPicture.Of(report) is { } picture
            ? new SectionView(
                "stack",
                composition.Say("stack.heading"),
                "sections/stack.html",
                new StackSection(
                    ChartPair.Of(picture, GearStackDrawing.Draw),
                    composition.Say("stack.remark"),
                    [
                        .. report.InOrder.Select(f => new StackListView(
                            $"#{report.Anchor(f)}", f.Part.Name, GradeViews.Of(f.Grade, composition))),
                    ]))
            : null;
    }
}

/// <summary>A part in words.</summary>
/// <param name="Finding">Link to its finding.</param>
/// <param name="Name">The part.</param>
/// <param name="Grade">Its grade.</param>
public sealed record StackListView(string Finding, string Name, GradeView Grade);
