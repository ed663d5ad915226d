using Layshaft.Book.Values;
using Layshaft.Engineering.Life;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>Turns what the book counts into what the life calculation counts.</summary>
public static class UseMeasures
{
    /// <summary>The same amount for the life calculation.</summary>
    public static Engineering.Life.Use Counted(this Book.Values.Use use) => new((double)use.Amount, use.Unit.Measure());

    /// <summary>The same measure for the life calculation.</summary>
    public static UseMeasure Measure(this UseUnit unit) => unit switch
    {
        UseUnit.Hours => UseMeasure.Hours,
        UseUnit.Kilometres => UseMeasure.Kilometres,
        _ => UseMeasure.Events,
    };

    /// <summary>The same measure as the book writes it.</summary>
    public static UseUnit Unit(this UseMeasure measure) => measure switch
    {
        UseMeasure.Hours => UseUnit.Hours,
        UseMeasure.Kilometres => UseUnit.Kilometres,
        _ => UseUnit.Events,
    };
}
