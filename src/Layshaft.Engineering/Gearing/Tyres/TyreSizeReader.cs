using System.Globalization;
using System.Text.RegularExpressions;
using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>Reads tyre size codes: ISO 4000-1 metric, P and LT metric, and the racing forms in inches and millimetres.</summary>
internal static partial class TyreSizeReader
{
    private const double MillimetresPerInch = 25.4;

    internal static Outcome<TyreSize> Read(string text)
    {
        if (text.Length is 0 or > 40)
        {
            return Fault(text.Length == 0 ? text : text[..40] + "…", "write a size such as 205/55R16 91V, 22.0x8.0-13 or 200/530R13.");
        }

        Match match = MetricForm().Match(text);
        if (match.Success)
        {
            return ReadMetric(text, match);
        }

        match = InchDiameterFirst().Match(text);
        if (!match.Success)
        {
            match = InchWidthFirst().Match(text);
        }

        return match.Success
            ? ReadInch(text, match)
            : Fault(text, "write a size such as 205/55R16 91V, LT235/85R16, 22.0x8.0-13, 8.0/22.0-13 or 200/530R13.");
    }

    private static Outcome<TyreSize> ReadMetric(string text, Match match)
    {
        int width = Whole(match, "width");
        int second = Whole(match, "second");
        double rimInch = Number(match, "rim");
        string prefix = match.Groups["prefix"].Value;
        bool isDiameter = second >= 400;
        if (width is < 100 or > 455)
        {
            return Fault(text, $"section width {width} mm is outside 100 to 455.");
        }

        if (rimInch is < 8 or > 24)
        {
            return Fault(text, "the rim is outside 8 to 24 inches.");
        }

        if (isDiameter ? second > 900 || second <= rimInch * MillimetresPerInch || prefix.Length > 0 : second is < 20 or > 95)
        {
            return Fault(
                text,
                $"{second} is neither an aspect ratio (20 to 95) nor the overall diameter in mm of a racing tyre (400 to 900, more than the rim).");
        }

        if (ReadService(match, out int? loadIndex, out SpeedSymbol? symbol) is { } reason)
        {
            return Fault(text, reason);
        }

        // Whole-number arithmetic: a height of exactly half a millimetre goes up, never to even.
        int heightMm = ((width * second) + 50) / 100;
        double rimMm = Math.Round(rimInch * MillimetresPerInch, MidpointRounding.AwayFromZero);
        return Good(new TyreSize(text)
        {
            Form = isDiameter ? TyreSizeForm.RacingMetric : prefix switch
            {
                "P" => TyreSizeForm.PassengerMetric,
                "LT" => TyreSizeForm.LightTruckMetric,
                _ => TyreSizeForm.Metric,
            },
            SectionWidth = Length.FromMillimeters(width),
            AspectRatio = isDiameter ? null : second,
            RimDiameter = Length.FromInches(rimInch),
            IsRadial = match.Groups["ply"].Value is "R" or "ZR",
            LoadIndex = loadIndex,
            SpeedSymbol = symbol,
            NominalDiameter = Length.FromMillimeters(
                isDiameter ? second : (rimInch * MillimetresPerInch) + (2 * width * second / 100.0)),
            DesignDiameter = isDiameter ? null : Length.FromMillimeters(rimMm + (2 * heightMm)),
        });
    }

    private static Outcome<TyreSize> ReadInch(string text, Match match)
    {
        double diameter = Number(match, "diameter");
        double width = Number(match, "width");
        double rim = Number(match, "rim");
        if (rim is < 8 or > 24 || diameter <= rim || diameter > 40 || width is < 3 or > 20)
        {
            return Fault(
                text,
                "a racing size in inches is diameter x width - rim, or width/diameter-rim: rim 8 to 24, diameter above the rim and up to 40, width 3 to 20.");
        }

        return Good(new TyreSize(text)
        {
            Form = TyreSizeForm.RacingInch,
            SectionWidth = Length.FromInches(width),
            RimDiameter = Length.FromInches(rim),
            IsRadial = match.Groups["ply"].Value == "R",
            NominalDiameter = Length.FromInches(diameter),
        });
    }

    private static string? ReadService(Match match, out int? loadIndex, out SpeedSymbol? symbol)
    {
        bool isZr = match.Groups["ply"].Value == "ZR";
        loadIndex = null;
        symbol = isZr ? SpeedSymbol.Find("ZR") : null;
        if (!match.Groups["load"].Success)
        {
            return null;
        }

        int load = Whole(match, "load");
        bool isBracketed = match.Groups["open"].Success;
        if (load > 279)
        {
            return $"load index {load} is outside 0 to 279.";
        }

        if (isBracketed != match.Groups["close"].Success)
        {
            return "the service description has one bracket; write both, as in (91Y), or none.";
        }

        string letter = match.Groups["speed"].Value;
        symbol = SpeedSymbol.Find(isBracketed ? "(" + letter + ")" : letter);
        loadIndex = load;
        return symbol is null ? $"the speed symbol {letter} is not one of J to Y, or (Y) in brackets." : null;
    }

    private static Outcome<TyreSize> Good(TyreSize size) => new(size, []);

    private static Outcome<TyreSize> Fault(string text, string detail) =>
        new(null, [new GearingFault(GearingFaultKind.TyreSizeNotRead, text, Detail: detail)]);

    private static int Whole(Match match, string group) =>
        int.Parse(match.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);

    private static double Number(Match match, string group) =>
        double.Parse(match.Groups[group].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"\A(?<prefix>P|LT)? ?(?<width>[0-9]{3})/(?<second>[0-9]{2,3}) ?(?<ply>ZR|R|D|B|-) ?(?<rim>[0-9]{1,2}(?:\.5)?)(?: ?(?<open>\()?(?<load>[0-9]{2,3})(?:/[0-9]{2,3})? ?(?<speed>[A-Z])(?<close>\))?)?(?: XL)?\z",
        RegexOptions.CultureInvariant)]
    private static partial Regex MetricForm();

    [GeneratedRegex(
        @"\A(?<diameter>[0-9]{2}(?:\.[0-9]{1,2})?) ?[xX×] ?(?<width>[0-9]{1,2}(?:\.[0-9]{1,2})?) ?(?<ply>-|R) ?(?<rim>[0-9]{1,2}(?:\.5)?)\z",
        RegexOptions.CultureInvariant)]
    private static partial Regex InchDiameterFirst();

    [GeneratedRegex(
        @"\A(?<width>[0-9]{1,2}(?:\.[0-9]{1,2})?) ?/ ?(?<diameter>[0-9]{2}(?:\.[0-9]{1,2})?) ?(?<ply>-|R) ?(?<rim>[0-9]{1,2}(?:\.5)?)\z",
        RegexOptions.CultureInvariant)]
    private static partial Regex InchWidthFirst();
}
