using Layshaft.Book.Places;
using Layshaft.Book.Records;
using Layshaft.Book.Values;
using Layshaft.Engineering.Measurement.Gears;

namespace Layshaft.Book.Checks;

/// <summary>Whether gears can be made to run at their centre distance, and their spans be taken.</summary>
internal static class MeshChecks
{
    /// <summary>Each pair must run at the centre distance with a profile shift that a cutter makes.</summary>
    public static void Pairs(Checker check, Records.GearPair cut, IEnumerable<Teeth> pairs, Place place)
    {
        if (!KnownRack(check, cut))
        {
            return;
        }

        var shafts = new FixedCentreDistance(cut.CentreDistance, cut.Module, cut.PressureAngle);
        foreach (var pair in pairs)
        {
            var fit = shafts.Fit(pair.Driver, pair.Driven);
            if (fit is null || !fit.IsReasonable)
            {
                var sums = shafts.ToothSums().Where(s => Math.Abs(s.ShiftSum) <= 1).Select(s => s.ToothSum).ToArray();
                check.Problems.Add(
                    "does-not-mesh",
                    place,
                    FormattableString.Invariant($"{pair} does not mesh at this centre distance: {Why(fit)}."),
                    sums.Length > 0
                        ? FormattableString.Invariant($"Check the tooth counts, the module and the centre distance. A total of {sums[0]} to {sums[^1]} teeth is usual here.")
                        : "Check the tooth counts, the module and the centre distance.");
            }
        }
    }

    /// <summary>A span must touch flanks: over too few teeth the anvils sit in the root, over too many they pass the tips.</summary>
    public static void Spans(Checker check, Gearbox box)
    {
        if (box.MainGears is not { } cut || cut.PressureAngle.Degrees is < 10 or > 35)
        {
            return;
        }

        foreach (var part in box.Parts.Where(p => p.Kind == PartKind.Gear))
        {
            int[] teeth = [.. TeethOf(part, box).Distinct()];
            foreach (var measure in part.Measures.Where(m => m is { Span: not null, New: UnitsNet.Length }))
            {
                var gears = teeth.Select(z => (Teeth: z, Gear: ShiftFromSpan.GearOf(z, cut.Module, cut.PressureAngle, measure.Span!.Value, (UnitsNet.Length)measure.New))).ToArray();
                if (gears.Length > 0 && !gears.Any(g => g.Gear is not null && BaseTangentSpan.CanSpan(g.Gear, measure.Span!.Value)))
                {
                    var best = BaseTangentSpan.BestTeethSpanned(new SpurGear(gears[0].Teeth, cut.Module, cut.PressureAngle));
                    check.Problems.Add(
                        "cannot-span",
                        measure.Origin.At("span"),
                        FormattableString.Invariant($"A gear of {gears[0].Teeth} teeth cannot have this span over {measure.Span} teeth: the anvils would not touch its flanks."),
                        FormattableString.Invariant($"Write 'span: {best}', or check the new size."));
                }
            }
        }
    }

    private static bool KnownRack(Checker check, Records.GearPair cut)
    {
        if (cut.PressureAngle.Degrees is >= 10 and <= 35)
        {
            return true;
        }

        check.Problems.Add("unlikely-angle", cut.Origin.At("pressure_angle"), "A pressure angle must be from 10° to 35°.", "Write 20°, or the angle on the maker's drawing.");
        return false;
    }

    // A ratio set for each: the part may be in any of them.
    private static IEnumerable<int> TeethOf(Part part, Gearbox box) => part.Teeth is { } own
        ? [own]
        : box.RatioSets.Where(r => part.Gear >= 1 && part.Gear <= r.Gears.Count).Select(r => r.Gears[part.Gear!.Value - 1])
            .SelectMany(pair => part.Shaft switch
            {
                ShaftPosition.Lay => [pair.Driver],
                ShaftPosition.Main => new[] { pair.Driven },
                _ => [],
            });

    private static string Why(DropPairFit? fit) => fit is null
        ? "the gears would overlap"
        : string.Join(", ", fit.Troubles.Select(t => t switch
        {
            FitTrouble.Undercut => "a tooth root would be undercut",
            FitTrouble.PointedTeeth => "the teeth would be pointed",
            FitTrouble.LowContactRatio => "the contact ratio would be too low",
            FitTrouble.Interference => "tooth tips would interfere with roots",
            _ => FormattableString.Invariant($"a total of {fit.Sum.ToothSum} teeth would need too large a profile shift"),
        }));
}
