using Layshaft.Site.Charts.Drawing;

namespace Layshaft.Site.Charts.Stack;

/// <summary>Where everything of a gear stack stands on the sheet, at one scale in both directions.</summary>
internal sealed class StackLayout
{
    /// <summary>How far a shaft reaches beyond its outermost part, mm.</summary>
    private const double Overhang = 6;

    private readonly Dictionary<string, StackShaft> shafts;
    private readonly double left;
    private readonly double top;
    private readonly double fromMm;
    private readonly double highestMm;

    private StackLayout(GearStackInput input, ChartSize size, double topRoom, double bottomRoom)
    {
        Input = input;
        Size = size;
        shafts = input.Shafts.ToDictionary(s => s.Id, StringComparer.Ordinal);
        Bounds = [.. input.Parts.Select(Box)];
        FinalDrive = input.FinalDrive is null ? null : FinalDriveShape.Of(input.FinalDrive, Shaft(input.FinalDrive.ShaftId), PartsOn(input.FinalDrive.ShaftId));

        var ends = input.Shafts.SelectMany(s => new[] { Ends(s).From, Ends(s).To }).Concat(FinalDrive is null ? [] : [FinalDrive.Left, FinalDrive.Right]).ToList();
        var heights = Bounds.SelectMany(b => new[] { b.Low, b.High }).Concat(input.Shafts.Select(s => s.Height))
            .Concat(FinalDrive is null ? [] : [FinalDrive.Low, FinalDrive.High]).ToList();
        fromMm = ends.Min();
        highestMm = heights.Max();
        left = Math.Ceiling(TextWidth.Widest(input.Shafts.SelectMany(s => s.Label.Split(' ')))) + 10;
        var right = ChartSheet.Width(size) - (input.Dimensions.Count > 0 ? 34 : 8);
        PerMm = Math.Min((right - left) / (ends.Max() - fromMm), (size == ChartSize.Wide ? 460 : 420) / (highestMm - heights.Min()));
        top = topRoom;
        Right = left + ((ends.Max() - fromMm) * PerMm);
        Bottom = Y(heights.Min());
        Height = Bottom + bottomRoom;
    }

    public GearStackInput Input { get; }

    public ChartSize Size { get; }

    /// <summary>Each part's outline, in mm, in the order of the parts.</summary>
    public IReadOnlyList<PartBox> Bounds { get; }

    public FinalDriveShape? FinalDrive { get; }

    /// <summary>User units per mm.</summary>
    public double PerMm { get; }

    public double Right { get; }

    public double Top => top;

    public double Bottom { get; }

    public double Height { get; }

    /// <exception cref="ArgumentException">The description contradicts itself.</exception>
    public static StackLayout Of(GearStackInput input, ChartSize size, double topRoom, double bottomRoom)
    {
        if (input.Shafts is null || input.Shafts.Count == 0 || input.Parts is null || input.Parts.Count == 0)
        {
            throw new ArgumentException("The drawing needs at least one shaft and one part.", nameof(input));
        }

        var lengths = input.Shafts.Select(s => s.Diameter).Concat(input.Parts.Select(p => p.Width))
            .Concat(input.Parts.Where(p => p.OuterDiameter is not null).Select(p => p.OuterDiameter!.Value));
        if (lengths.Any(l => !(l > 0 && double.IsFinite(l))) || input.Parts.Any(p => !double.IsFinite(p.Middle)) || input.Shafts.Any(s => !double.IsFinite(s.Height)))
        {
            throw new ArgumentException("Widths and diameters must be finite and above 0, places finite.", nameof(input));
        }

        return new StackLayout(input, size, topRoom, bottomRoom);
    }

    public double X(double mm) => left + ((mm - fromMm) * PerMm);

    public double Y(double mm) => top + ((highestMm - mm) * PerMm);

    public StackShaft Shaft(string id) => shafts.TryGetValue(id, out var shaft)
        ? shaft
        : throw new ArgumentException($"There is no shaft '{id}' in the drawing.", nameof(id));

    public (double From, double To) Ends(StackShaft shaft)
    {
        var parts = PartsOn(shaft.Id).ToList();
        var (from, to) = parts.Count == 0
            ? (0, Overhang)
            : (parts.Min(p => p.Middle - (p.Width / 2)) - Overhang, parts.Max(p => p.Middle + (p.Width / 2)) + Overhang);
        return FinalDrive is { } drive && drive.ShaftId == shaft.Id
            ? (Math.Min(from, drive.Back), Math.Max(to, drive.Back))
            : (from, to);
    }

    public IEnumerable<StackPart> PartsOn(string shaftId) => Input.Parts.Where(p => p.ShaftId == shaftId);

    private PartBox Box(StackPart part)
    {
        var shaft = Shaft(part.ShaftId);
        return new PartBox(part.Middle - (part.Width / 2), part.Middle + (part.Width / 2), shaft.Height, StackRadii.Outer(part, shaft));
    }
}

/// <summary>A part's outline, mm: from and to along the shaft, its axis and its outer radius.</summary>
internal readonly record struct PartBox(double From, double To, double Axis, double Radius)
{
    public double Low => Axis - Radius;

    public double High => Axis + Radius;
}
