using Layshaft.Book.Places;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Records;

/// <summary>How pressing a piece of work is.</summary>
public enum Need
{
    /// <summary>The box can't go back without it.</summary>
    Must,

    /// <summary>It should be done now.</summary>
    Should,

    /// <summary>It can wait.</summary>
    CanWait,
}

/// <summary>A line of an estimate or of the final account: a part, or work at the bench.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Part">A part of the gearbox; null for work.</param>
/// <param name="Work">Work at the bench; null for a part.</param>
/// <param name="Quantity">How many parts.</param>
/// <param name="Price">Price of one without tax, where it is not the gearbox's.</param>
/// <param name="Hours">Hours of work.</param>
/// <param name="Need">How pressing it is.</param>
/// <param name="IfLeft">What happens if it is left.</param>
/// <param name="Reason">In the final account: why it is charged though it was not approved, or costs more.</param>
public sealed record EstimateLine(Origin Origin, string? Part, string? Work, int Quantity, decimal? Price, decimal? Hours, Need Need, string? IfLeft, string? Reason) : IPlaced
{
    /// <summary>Its name in a go-ahead: the id of the part, or the work.</summary>
    public string Name => Part ?? Work ?? string.Empty;

    /// <summary>How it is written.</summary>
    public static RecordShape<EstimateLine> Shape { get; } = new("a line of an estimate", "A part, or work at the bench.", f => new EstimateLine(
        f.Origin,
        f.Optional("part", Scalars.Id, "A part of the gearbox."),
        f.Optional("work", Scalars.Text, "Work at the bench, or something bought in."),
        f.Or("quantity", Scalars.Count, 1, "How many parts."),
        f.OptionalValue("price", Scalars.Money, "Price of one without tax, where it is not the gearbox's."),
        f.OptionalValue("hours", Scalars.Money, "Hours of work, such as 6.5."),
        f.Or("need", new ChoiceShape<Need>("how pressing it is", ("must", Need.Must), ("should", Need.Should), ("can wait", Need.CanWait)), Need.Must, "How pressing it is."),
        f.Optional("if_left", Scalars.Text, "What happens if it is left."),
        f.Optional("reason", Scalars.Text, "In 'final': why it is charged without approval, costs more than approved, or was not fitted; the report says so.")));
}

/// <summary>The customer's answer.</summary>
public enum Answer
{
    /// <summary>Yes, to everything.</summary>
    Yes,

    /// <summary>Only what must be done.</summary>
    MustOnly,

    /// <summary>What must and what should be done.</summary>
    MustAndShould,

    /// <summary>Some lines, each by its name.</summary>
    ByLine,

    /// <summary>No.</summary>
    No,
}

/// <summary>The customer's answer to an estimate.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Answer">What it was.</param>
/// <param name="On">When.</param>
/// <param name="By">Who gave it.</param>
/// <param name="Approved">Names of the approved lines, where the answer was by line.</param>
/// <param name="Note">What was said; for the shop only.</param>
public sealed record GoAhead(Origin Origin, Answer Answer, DateOnly On, string? By, IReadOnlyList<string> Approved, string? Note) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<GoAhead> Shape { get; } = new("a go-ahead", "The customer's answer to an estimate.", f => new GoAhead(
        f.Origin,
        f.Required("answer", new ChoiceShape<Answer>("an answer", ("yes", Answer.Yes), ("must only", Answer.MustOnly), ("must and should", Answer.MustAndShould), ("by line", Answer.ByLine), ("no", Answer.No)), "What the answer was."),
        f.Required("on", Scalars.Date, "When it came."),
        f.Optional("by", Scalars.Text, "Who gave it."),
        f.List("approved", Scalars.Text, "With 'by line': each approved line, by its part or its work. The other lines are declined."),
        f.Optional("note", Scalars.Text, "What was said; for the shop only.")));
}
