using Layshaft.Engineering.Measurement;
using Layshaft.Site.Charts;

namespace Layshaft.Site.Pages.Shared;

/// <summary>The marks of the grades.</summary>
public static class GradeViews
{
    /// <summary>As pages show a grade.</summary>
    public static GradeView Of(Grade grade, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        var mark = Mark(grade, composition);
        return new GradeView(mark.Shape.ToString().ToLowerInvariant(), mark.Letter, mark.Name);
    }

    /// <summary>As charts show a grade.</summary>
    public static GradeMark Mark(Grade grade, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        var (shape, word) = grade switch
        {
            Grade.Reuse => (GradeShape.Circle, "reuse"),
            Grade.Watch => (GradeShape.Triangle, "watch"),
            _ => (GradeShape.Square, "renew"),
        };
        return new GradeMark(shape, composition.Say($"grade.{word}.letter"), composition.Say($"grade.{word}.name"));
    }
}
