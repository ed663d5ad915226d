using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Dogs;
using Layshaft.Site.Html;

namespace Layshaft.Site.Pages.Report;

/// <summary>The positions of the dogs that a report's driving advice speaks of.</summary>
internal static class DogPictures
{
    public static RawHtml? Of(DrivingAssessment driving, Composition composition)
    {
        List<(DogEngagement Position, string Key)> shown = [];
        if (driving.Signs.AtRest.Count > 0)
        {
            shown.Add((DogEngagement.TipToTip, "advice.dogs.tip_to_tip"));
        }

        if (driving.Signs.Moving.Count > 0)
        {
            shown.Add((DogEngagement.Ratcheting, "advice.dogs.ratcheting"));
        }

        if (driving.BackCuts.Count > 0)
        {
            shown.Add((DogEngagement.JumpedOut, "advice.dogs.jumped_out"));
        }

        if (shown.Count == 0)
        {
            return null;
        }

        shown.Add((DogEngagement.In, "advice.dogs.in"));
        (DogEngagement Position, string Caption)[] panels = [.. shown.Select(s => (s.Position, composition.Say(s.Key)))];
        var frame = new ChartFrame(
            "driving-dogs", composition.Say("advice.dogs.title"), composition.Say("advice.dogs.words", ("positions", string.Join(", ", panels.Select(p => p.Caption)))));
        return ChartPair.Of(
            new DogEngagementInput(frame, panels, composition.Say("advice.dogs.ring"), composition.Say("advice.dogs.gear")), DogEngagementDrawing.Draw);
    }
}
