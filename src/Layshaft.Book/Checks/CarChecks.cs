using Layshaft.Book.Records;

namespace Layshaft.Book.Checks;

internal static class CarChecks
{
    public static void Run(Checker check, Car car)
    {
        check.Refers(car.Customer, check.Draft.Customers, car.Origin.At("customer"), "customer");
        foreach (var earlier in car.EarlierCustomers)
        {
            check.Refers(earlier, check.Draft.Customers, car.Origin.At("earlier_customers"), "customer");
        }

        foreach (var corner in car.Corners)
        {
            check.Refers(corner.Venue, check.Draft.Venues, corner.Origin.At("venue"), "venue");
        }

        CornerChecks.Run(check, car.Corners, null);
        var engine = car.Engine;
        if (engine.Launch is { } launch && launch >= engine.Limit)
        {
            check.Problems.Add("range-out-of-order", engine.Origin.At("launch"), "The engine's launch speed is not below its rev limit.", "Correct 'launch' or 'limit'.");
        }

        if (engine.CurveFile is { } file)
        {
            var path = $"cars/{file}";
            if (engine.Curve.Count > 0)
            {
                check.Problems.Add("two-curves", engine.Origin.At("curve_file"), "The torque curve is given twice: in 'curve' and in 'curve_file'.", "Remove one of them.");
            }
            else if (!check.Draft.Files.Has(path))
            {
                check.Problems.Add("missing-file", engine.Origin.At("curve_file"), $"There is no file '{path}'.", "Add the file, or write the points under 'curve'.");
            }
        }
        else if (engine.Curve.Count < 3)
        {
            check.Problems.Add("short-curve", engine.Origin.At("curve"), "A torque curve needs at least three points.", "Write them under 'curve', lowest engine speed first.");
        }
        else
        {
            Curve(check, engine);
        }

        if (engine.LowestUseful is { } lowest && lowest >= engine.Limit)
        {
            check.Problems.Add("range-out-of-order", engine.Origin.At("lowest_useful"), "The engine's lowest useful speed is not below its rev limit.", "Correct 'lowest_useful' or 'limit'.");
        }
    }

    private static void Curve(Checker check, Engine engine)
    {
        for (var i = 1; i < engine.Curve.Count; i++)
        {
            if (engine.Curve[i].At <= engine.Curve[i - 1].At)
            {
                check.Problems.Add("curve-turns-back", engine.Curve[i].Origin.At("at"), "The engine speed of this point is not above the previous one.", "Write the points lowest engine speed first, each speed once.");
            }
        }

        if (engine.Curve[^1].At < engine.Limit)
        {
            check.Problems.Add("curve-too-short", engine.Origin.At("limit"), "The torque curve ends below the rev limiter.", "Add a point at the limiter, or correct 'limit'.");
        }
    }
}
