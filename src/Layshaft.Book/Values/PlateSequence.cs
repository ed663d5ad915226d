using System.Text.RegularExpressions;
using Layshaft.Book.Shapes;
using Layshaft.Engineering.Settings.Differentials;

namespace Layshaft.Book.Values;

/// <summary>The plates of one side of a differential from the pressure ring to the cover: O turns with the case, I with the side gear.</summary>
/// <param name="Text">As written: <c>O-I-O-I-O</c>.</param>
public readonly partial record struct PlateSequence(string Text)
{
    /// <summary>What to write.</summary>
    public const string What = "an order of plates, O (outer) and I (inner)";

    /// <summary>How it is written.</summary>
    public const string Example = "O-I-O-I-O";

    /// <summary>The pattern of the whole text.</summary>
    public const string Pattern = "[OI](?:-[OI]){0,39}";

    /// <summary>The order.</summary>
    public PlateOrder Order => new([.. (Text ?? string.Empty).Where(c => c != '-').Select(c => c == 'O' ? PlateTurning.WithCase : PlateTurning.WithSideGear)]);

    /// <summary>Friction faces on this side.</summary>
    public int Faces => Order.Faces;

    /// <summary>Outer plates.</summary>
    public int Outer => (Text ?? string.Empty).Count(c => c == 'O');

    /// <summary>Inner plates.</summary>
    public int Inner => (Text ?? string.Empty).Count(c => c == 'I');

    /// <summary>Reads <c>O-I-O-I-O</c>.</summary>
    public static Parsed<PlateSequence> Parse(string text) => Form().IsMatch(text)
        ? Parsed.Good(new PlateSequence(text.Trim()))
        : Parsed.Bad<PlateSequence>($"'{text[..Math.Min(text.Length, 60)]}' is not an order of plates.", $"Write O for an outer and I for an inner plate with hyphens between them, from the pressure ring to the cover: {Example}.");

    /// <summary>As the book writes it.</summary>
    public override string ToString() => Text;

    [GeneratedRegex(@"^\s*" + Pattern + @"\s*\z")]
    private static partial Regex Form();
}
