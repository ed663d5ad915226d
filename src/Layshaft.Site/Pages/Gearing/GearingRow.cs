using Layshaft.Site.Assessment.Gearing;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Gearing;

/// <summary>A table of choices.</summary>
/// <param name="Name">What it shows.</param>
/// <param name="First">Head of its first column.</param>
/// <param name="Rows">The choices.</param>
public sealed record GearingTable(string Name, string First, IReadOnlyList<GearingRow> Rows);

/// <summary>One choice of gears as a table shows it.</summary>
/// <param name="Name">What the row is, its place in the ranking, and such as "fitted as it left us".</param>
/// <param name="Pair">The drop pair in words.</param>
/// <param name="Final">The final drive in words.</param>
/// <param name="Loss">Seconds lost a lap against the best.</param>
/// <param name="Ideal">Seconds lost a lap against the ideal.</param>
/// <param name="TopSpeed">Greatest speed.</param>
/// <param name="Where">On which straight, in which gear.</param>
/// <param name="Rpm">Engine speed there.</param>
/// <param name="Limiter">Seconds on the limiter a lap.</param>
/// <param name="Shifts">Shifts under power a lap.</param>
/// <param name="Corners">Corners that fall between gears.</param>
/// <param name="IsBest">Whether it is the recommended one.</param>
public sealed record GearingRow(
    string Name, string Pair, string Final, string Loss, string Ideal, string TopSpeed, string Where, string Rpm, string Limiter, string Shifts, string Corners, bool IsBest)
{
    internal static GearingRow Of(string name, Eng.GearingCandidate candidate, EventGearing gearing, Composition composition)
    {
        var figures = composition.Figures;
        return new GearingRow(
            name,
            GearingWords.Pair(candidate.DropPair, composition),
            GearingWords.Final(candidate.FinalDrive, composition),
            Seconds(gearing.LossOf(candidate), candidate, composition),
            Seconds(candidate.LossToIdeal, candidate, composition),
            figures.Speed(candidate.TopSpeed).Both,
            composition.Say("gearing.where", ("straight", candidate.TopSpeedStraight), ("gear", candidate.TopSpeedGear)),
            figures.Rpm(candidate.EngineSpeedAtTop).Text,
            figures.Seconds(candidate.OnLimiter).Text,
            figures.Number(candidate.ShiftsPerLap).Text,
            CornersOf(candidate, gearing) ?? composition.Say("gearing.no_corners"),
            EventGearing.IsSame(candidate, gearing.Best));
    }

    /// <summary>The corners that fall between gears; null for none.</summary>
    internal static string? CornersOf(Eng.GearingCandidate candidate, EventGearing gearing)
    {
        string[] corners = [.. candidate.CornersBetweenGears.Select(s => Course.CornerBefore(gearing.Case.Venue, s)).OfType<string>()];
        return corners.Length == 0 ? null : string.Join(", ", corners);
    }

    private static string Seconds(Duration loss, Eng.GearingCandidate candidate, Composition composition) =>
        candidate.IsFinished ? composition.Figures.Seconds(loss, 3).Text : composition.Say("gearing.not_finished");
}
