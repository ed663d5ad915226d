using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Dogs;

/// <summary>Explains dog engagement: each position a panel, dogs exaggerated and not to scale.</summary>
public static class DogEngagementDrawing
{
    private const double PanelWidth = 180;
    private const double PanelHeight = 148;
    private const double BarLeft = 8;
    private const double BarWidth = 160;
    private const double BarHeight = 18;
    private const double RingRoot = 22;
    private const double DogHeight = 36;
    private const double Pitch = 80;
    private const double FirstRingDog = 40;

    // Half widths of a dog. New dogs are wider at the tip: their flanks pull together. Worn ones are the other way round.
    private const double Narrow = 12;
    private const double Wide = 15;

    /// <summary>Draws the panels.</summary>
    /// <param name="input">What to draw.</param>
    /// <param name="size">For which width.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no panel.</exception>
    public static RawHtml Draw(DogEngagementInput input, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.Panels.Count == 0)
        {
            throw new ArgumentException("A drawing of dogs needs a position.", nameof(input));
        }

        var across = (int)(ChartSheet.Width(size) / PanelWidth);
        var rows = (input.Panels.Count + across - 1) / across;
        return ChartSheet.Picture(input.Frame, size, rows * PanelHeight, svg =>
        {
            for (var i = 0; i < input.Panels.Count; i++)
            {
                DrawPanel(svg, input, i, i % across * PanelWidth, i / across * PanelHeight);
            }
        });
    }

    private static void DrawPanel(SvgWriter svg, DogEngagementInput input, int panel, double left, double top)
    {
        var (position, caption) = input.Panels[panel];
        var worn = position == DogEngagement.JumpedOut;
        var (ringRoot, ringTip) = (top + RingRoot, top + RingRoot + DogHeight);

        // Where the gear's dogs begin and how far they are turned against the ring's.
        var (gearTip, turn) = position switch
        {
            DogEngagement.TipToTip => (ringTip, 0.0),
            DogEngagement.Ratcheting => (ringTip - 4, (2 * Wide) - 2),
            DogEngagement.JumpedOut => (ringTip + 5, (2 * Wide) + 2),
            _ => (ringRoot + 2, Narrow + Wide + 0.2),
        };
        var gearRoot = gearTip + DogHeight;
        var (root, tip) = worn ? (Wide, Narrow - 1) : (Narrow, Wide);
        if (worn)
        {
            Dogs(svg, "band-edge", left + turn, ringRoot + 2 + DogHeight, ringRoot + 2, root, tip, 0);
        }

        var rounding = position == DogEngagement.Ratcheting ? 6 : 0;
        svg.Rect("dog-metal", left + BarLeft, ringRoot - BarHeight, BarWidth, BarHeight);
        Dogs(svg, "dog-metal", left, ringRoot, ringTip, root, tip, rounding);
        svg.Rect("dog-metal", left + BarLeft, gearRoot, BarWidth, BarHeight);
        Dogs(svg, "dog-metal", left + turn, gearRoot, gearTip, root, tip, rounding);
        switch (position)
        {
            case DogEngagement.TipToTip:
                Strike(svg, left, ringTip, -Wide, Wide);
                break;
            case DogEngagement.Ratcheting:
                Strike(svg, left, ringTip - 2, Wide - 4, Wide + 2);
                break;
            case DogEngagement.In:
                Arrow(svg, left + FirstRingDog + Pitch + turn, gearTip + 24, -1);
                break;
            case DogEngagement.JumpedOut:
                Arrow(svg, left + FirstRingDog + Pitch + turn, gearTip + 12, 1);
                break;
        }

        svg.Label("label", left + BarLeft + (BarWidth / 2), ringRoot - 5, input.Ring, Anchor.Middle);
        svg.Label("label", left + BarLeft + (BarWidth / 2), gearRoot + 13, input.Gear, Anchor.Middle);
        svg.Label("strong", left + BarLeft + (BarWidth / 2), top + PanelHeight - 6, caption, Anchor.Middle);
    }

    private static void Dogs(SvgWriter svg, string cssClass, double left, double rootY, double tipY, double root, double tip, double rounding)
    {
        var inward = Math.Sign(rootY - tipY) * rounding;
        foreach (var at in new[] { left + FirstRingDog, left + FirstRingDog + Pitch })
        {
            var sweep = inward > 0 ? 1 : 0;
            svg.Path(cssClass, rounding > 0
                ? $"M{N(at - root)} {N(rootY)}L{N(at - tip)} {N(tipY + inward)}A{N(rounding)} {N(rounding)} 0 0 {sweep} {N(at - tip + rounding)} {N(tipY)}L{N(at + tip - rounding)} {N(tipY)}A{N(rounding)} {N(rounding)} 0 0 {sweep} {N(at + tip)} {N(tipY + inward)}L{N(at + root)} {N(rootY)}Z"
                : $"M{N(at - root)} {N(rootY)}L{N(at - tip)} {N(tipY)}L{N(at + tip)} {N(tipY)}L{N(at + root)} {N(rootY)}Z");
        }
    }

    private static void Strike(SvgWriter svg, double left, double y, double from, double to)
    {
        foreach (var at in new[] { left + FirstRingDog, left + FirstRingDog + Pitch })
        {
            svg.Path("dog-strike", $"M{N(at + from)} {N(y)}L{N(at + to)} {N(y)}");
        }
    }

    // Which way the gear is pulled: up into the ring, or down out of it.
    private static void Arrow(SvgWriter svg, double x, double y, int down)
    {
        svg.Path("leader", $"M{N(x)} {N(y - (8 * down))}L{N(x)} {N(y + (8 * down))}");
        svg.Path("dimension-arrow", $"M{N(x)} {N(y + (12 * down))}L{N(x - 4)} {N(y + (4 * down))}L{N(x + 4)} {N(y + (4 * down))}Z");
    }

    private static string N(double value) => SvgNumber.Of(value);
}
