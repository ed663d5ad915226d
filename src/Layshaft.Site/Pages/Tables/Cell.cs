using System.Globalization;
using Layshaft.Site.Figures;
using Layshaft.Site.Pages.Shared;
using Figure = Layshaft.Site.Figures.Figure;

namespace Layshaft.Site.Pages.Tables;

/// <summary>A cell of a table: what the page shows, and what a program reads.</summary>
/// <param name="Text">As the page shows it.</param>
/// <param name="Data">As a program reads it: the number, the date by ISO 8601, or the same words; null for nothing.</param>
/// <param name="IsNumber">Whether it is set to the right and a number for a program.</param>
/// <param name="Unit">Unit of the number; null for none.</param>
/// <param name="Link">Where it leads; null for nowhere.</param>
/// <param name="Grade">The grade that it shows; null for none.</param>
/// <param name="Strong">Whether it is to be noticed.</param>
/// <param name="Whole">Whether its words stay on one line.</param>
public sealed record Cell(string Text, string? Data, bool IsNumber = false, string? Unit = null, string? Link = null, GradeView? Grade = null, bool Strong = false, bool Whole = false)
{
    private const int Long = 48;

    /// <summary>The number for a program; null for words or nothing.</summary>
    public decimal? Number => IsNumber && Data is { } data ? decimal.Parse(data, NumberStyles.Float, CultureInfo.InvariantCulture) : null;

    /// <summary>Whether it holds a sentence, which needs room.</summary>
    public bool IsLong => !IsNumber && !Whole && Text.Length > Long;

    /// <summary>An empty cell.</summary>
    public static Cell Empty { get; } = new(string.Empty, null);

    /// <summary>Words, or an empty cell for null.</summary>
    public static Cell Of(string? text) => text is null ? Empty : new Cell(text, text);

    /// <summary>Words that lead somewhere.</summary>
    public static Cell To(string text, string link) => new(text, text, Link: link, Whole: true);

    /// <summary>A day.</summary>
    public static Cell Day(DateOnly? day, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return day is { } d ? new Cell(composition.Figures.Date(d), FigureWriter.IsoDate(d), Whole: true) : Empty;
    }

    /// <summary>A count.</summary>
    public static Cell Count(int count) => new(count.ToString(CultureInfo.InvariantCulture), count.ToString(CultureInfo.InvariantCulture), IsNumber: true);

    /// <summary>A count of days.</summary>
    public static Cell Days(int days) => Count(days) with { Unit = "d" };

    /// <summary>A pure number.</summary>
    public static Cell Pure(double number, int decimals, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return Of(composition.Figures.Number(number, decimals), number);
    }

    /// <summary>An exact number, such as the quantity of a priced line.</summary>
    public static Cell Exact(decimal number, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return new Cell(composition.Figures.Exact(number).Text, number.ToString("0.#########", CultureInfo.InvariantCulture), IsNumber: true);
    }

    /// <summary>A speed.</summary>
    public static Cell Speed(UnitsNet.Speed speed, int decimals, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        var figure = composition.Figures.Speed(speed, decimals);
        return Of(figure, figure.Unit == "mph" ? speed.MilesPerHour : speed.KilometersPerHour) with { Text = figure.Both };
    }

    /// <summary>An engine speed; the unit is written as a program knows it, whatever word the page has for it.</summary>
    public static Cell Rpm(UnitsNet.RotationalSpeed speed, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return Of(composition.Figures.Rpm(speed), speed.RevolutionsPerMinute) with { Unit = "r/min" };
    }

    /// <summary>A short time in seconds.</summary>
    public static Cell Seconds(UnitsNet.Duration time, int decimals, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return Of(composition.Figures.Seconds(time, decimals), time.Seconds);
    }

    /// <summary>A share in per cent.</summary>
    public static Cell Percent(double share, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return Of(composition.Figures.Percent(share), share * 100);
    }

    /// <summary>A figure with the number behind it.</summary>
    /// <param name="figure">As the page shows it.</param>
    /// <param name="number">In the unit of the figure.</param>
    public static Cell Of(Figure figure, double number)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return new Cell(figure.Text, Write(number), IsNumber: true, figure.Unit.Length > 0 ? figure.Unit : null);
    }

    /// <summary>An amount of money.</summary>
    public static Cell Money(decimal? amount, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        var currency = composition.Shop.Currency;
        return amount is { } a ? new Cell(composition.Figures.Money(a, currency), a.ToString(CultureInfo.InvariantCulture), IsNumber: true, currency) : Empty;
    }

    /// <summary>An amount of use.</summary>
    public static Cell Use(Engineering.Life.Use? use, Composition composition) => use is { } u
        ? new Cell(UseWords.Of(u, composition), Write(Math.Round(u.Amount, 6)), IsNumber: true, UseWords.UnitOf(u.Measure))
        : Empty;

    /// <summary>A grade.</summary>
    public static Cell Of(GradeView? grade) => grade is null ? Empty : new Cell(grade.Name, grade.Name, Grade: grade);

    // Nine significant digits: more than any figure is known to, and the same on every machine.
    private static string Write(double number) => number.ToString("G9", CultureInfo.InvariantCulture);
}
