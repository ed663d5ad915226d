using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Dogs;

namespace Layshaft.Site.Tests.Charts;

internal static partial class Samples
{
    public static DogEngagementInput Dogs() => new(
        new ChartFrame("dogs", "Dog engagement", "Four positions of a dog ring on a gear."),
        [
            (DogEngagement.TipToTip, "tip to tip"),
            (DogEngagement.In, "in"),
            (DogEngagement.Ratcheting, "ratcheting"),
            (DogEngagement.JumpedOut, "jumped out"),
        ],
        "ring",
        "gear");
}
