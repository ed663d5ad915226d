using System.Text.Json.Nodes;
using Layshaft.Engineering.Measurement.Gears;
using Layshaft.Site.Figures;
using Layshaft.Site.Pages.Shared;
using UnitsNet;

namespace Layshaft.Cli.Bench;

/// <summary>What to expect when a gear is measured, and what a reading means, in words and as data.</summary>
/// <param name="Question">The gear and how it is measured.</param>
internal sealed record GearAnswer(GearQuestion Question)
{
    private const int Decimals = 3;

    private SpurGear Gear => Question.Gear;

    /// <summary>The answer in lines.</summary>
    public IEnumerable<string> Lines(FigureWriter figures)
    {
        yield return $"{figures.Teeth(Gear.Teeth)}, module {figures.Length(Gear.Module, Measured.DecimalsWritten(Gear.Module)).Text}, {Measured.Figure(Gear.PressureAngle, Measured.DecimalsWritten(Gear.PressureAngle), figures).Text}, profile shift {figures.Number(Gear.ProfileShift, 3, withSign: true).Text}.";
        yield return Question.Pin is { } pin
            ? $"Size over two pins of {figures.Length(pin, Decimals).Text}: {figures.Length(Question.New, Decimals).Text} {NewWords}."
            : $"Span over {figures.Teeth(Question.Span!.Value)}: {figures.Length(Question.New, Decimals).Text} {NewWords}.";
        if (Question.Pin is null)
        {
            foreach (var line in Neighbours(figures))
            {
                yield return line;
            }
        }

        if (!Question.NewIsGiven)
        {
            yield return "This applies to teeth cut without a backlash allowance. If the maker gives a size or marked one on the gear, write it with --new.";
        }

        if (Question is { Measured: { } measured, Loss: { } loss })
        {
            yield return string.Empty;
            var known = measured.Number.UncertaintyIsKnown;
            yield return $"Measured {Measured.WithUncertainty(measured, Decimals, figures)}: the teeth are {Thinner(loss.Number.Value)} by {Measured.WithUncertainty(loss with { Number = loss.Number with { Value = Math.Abs(loss.Number.Value) } }, Decimals, figures)} "
                + $"at the pitch circle, both flanks together.{(known ? "" : " The gauge's error limit is not known, so no uncertainty is given (write --error-limit).")}";
        }

        yield return string.Empty;
        yield return "The maker's manual and its wear limit take precedence.";
    }

    /// <summary>The answer as data, each value with its unit.</summary>
    public JsonObject Json() => new()
    {
        ["teeth"] = Gear.Teeth,
        ["module"] = JsonFigure.Of(Gear.Module),
        ["pressure_angle"] = new JsonObject { ["value"] = Math.Round(Gear.PressureAngle.Degrees, 4), ["unit"] = "°" },
        ["profile_shift"] = Gear.ProfileShift,
        ["teeth_spanned"] = Question.Span,
        ["pin"] = Question.Pin is { } pin ? JsonFigure.Of(pin) : null,
        ["new_size"] = JsonFigure.Of(Question.New),
        ["new_size_given"] = Question.NewIsGiven,
        ["measured"] = Question.Measured is { } measured ? JsonFigure.Of(measured) : null,
        ["tooth_thickness_lost"] = Question.Loss is { } loss ? JsonFigure.Of(loss) : null,
    };

    private string NewWords => Question.NewIsGiven ? "new, as given" : "new";

    // The neighbours reveal a miscount of the teeth: they differ by a base pitch.
    private IEnumerable<string> Neighbours(FigureWriter figures)
    {
        int[] others = [.. new[] { Question.Span!.Value - 1, Question.Span.Value + 1 }.Where(k => k is >= 2 && k < Gear.Teeth && BaseTangentSpan.CanSpan(Gear, k))];
        if (others.Length > 0)
        {
            yield return $"It can also be spanned over {string.Join(" or ", others.Select(k => $"{figures.Number(k).Text} ({figures.Length(BaseTangentSpan.Over(Gear, k), Decimals).Text})"))} teeth.";
        }

        if (IdealPin() is { } pin)
        {
            yield return $"To measure over pins, use pins of about {figures.Length(pin, 2).Text}.";
        }
    }

    private Length? IdealPin()
    {
        try
        {
            return SizeOverPins.IdealPin(Gear);
        }
        catch (ArgumentOutOfRangeException)
        {
            // A strong negative shift leaves no flank for a pin at that place.
            return null;
        }
    }

    private static string Thinner(double loss) => loss >= 0 ? "thinner" : "thicker";
}
