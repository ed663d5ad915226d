using System.Globalization;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>
/// Loprinzi et al., Journal of Clinical Oncology 12, 1994 (R package survival, <c>lung</c>, LGPL, not part of this project).
/// Values computed with mpmath 1.2.1 in 40 digits that R 4.2.2 survival 3.5-3 survreg gives as well.
/// </summary>
public class LungSurvivalTests
{
    private const string Variable = "LAYSHAFT_LUNG_CSV";

    [DataFact(Variable, "Rscript -e 'd <- survival::lung; write.csv(data.frame(time=d$time, event=d$status-1), \"lung.csv\", row.names=FALSE)'")]
    public void Lung_survival_agrees_with_R_survreg()
    {
        string[][] rows = [.. File.ReadLines(Environment.GetEnvironmentVariable(Variable)!).Skip(1).Select(l => l.Split(','))];
        var fit = Assert.IsType<WeibullFit>(Weibull.Fit(LifeSample.Of(
            UseMeasure.Hours, rows.Select(r => SurvivalData.Life(double.Parse(r[0], CultureInfo.InvariantCulture), r[1] == "1")))));
        Assert.Equal((228, 165), (fit.Units, fit.Failures));
        Near.Relative(1.31684017157769521, fit.Shape, 1e-11, "shape");
        Near.Relative(417.758665374246104, fit.Scale, 1e-11, "scale");
        Near.Relative(-1153.85118808940588, fit.LogLikelihood, 1e-11, "log-likelihood");
        Near.Relative(0.0591359105117180181, Math.Sqrt(fit.Covariance.LogScaleVariance), 1e-11, "se(log scale)");
        Near.Relative(0.0624303063471350939, Math.Sqrt(fit.Covariance.LogShapeVariance), 1e-11, "se(log shape)");
        Near.Relative(75.6403114782584072, fit.LifeAt(0.1), 1e-11, "B10");
        Near.Relative(0.123222155408176968, fit.LogLifeStandardError(0.1), 1e-11, "se(log B10)");
        Near.Relative(58.2666551348294206, fit.LifeBounds(0.1, forFewFailures: false).Lower, 1e-10, "B10 lower, profile");
        Near.Relative(94.7228705125064281, fit.LifeBounds(0.1, forFewFailures: false).Upper, 1e-10, "B10 upper, profile");
        Near.Relative(1.16061341682576863, fit.ShapeBounds().Lower, 1e-10, "shape lower, profile");
        Near.Relative(1.4827999144559073, fit.ShapeBounds().Upper, 1e-10, "shape upper, profile");
        Near.Relative(316.263695049233526, fit.LifeAt(0.5), 1e-11, "B50");
    }
}
