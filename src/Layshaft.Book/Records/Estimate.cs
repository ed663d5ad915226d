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
/// <param name="Id">Its short name in a go-ahead; null for the part or the work.</param>
/// <param name="Part">A part of the gearbox; null for work.</param>
/// <param name="Work">Work at the bench; null for a part.</param>
/// <param name="Quantity">How many parts.</param>
/// <param name="Price">Price of one without tax, where it is not the gearbox's.</param>
/// <param name="Hours">Hours of work.</param>
/// <param name="Need">How pressing it is.</param>
/// <param name="IfLeft">What happens if it is left.</param>
/// <param name="Reason">In the final account: why it is charged though it was not approved, or costs more.</param>
public sealed record EstimateLine(Origin Origin, string? Id, string? Part, string? Work, int Quantity, decimal? Price, decimal? Hours, Need Need, string? IfLeft, string? Reason) : IPlaced
{
    /// <summary>Its name in a go-ahead: its own id, or what it is.</summary>
    public string Name => Id ?? What;

    /// <summary>What it is: the id of the part, or the work.</summary>
    public string What => Part ?? Work ?? string.Empty;

    /// <summary>How it is written.</summary>
    public static RecordShape<EstimateLine> Shape { get; } = new("an estimate line", "A part, or labour.", f => new EstimateLine(
        f.Origin,
        f.Optional("id", Scalars.Id, "Short name of the line for a go-ahead by line. Default: its part or its work."),
        f.Optional("part", Scalars.Id, "Id of a part in the gearbox file."),
        f.Optional("work", Scalars.Text, "Labour, or a bought-in item."),
        f.Or("quantity", Scalars.Count, 1, "Number of parts. Default: 1."),
        f.OptionalValue("price", Scalars.Money, "Unit price excluding tax. Default: the price in the gearbox file."),
        f.OptionalValue("hours", Scalars.Hours, "Labour hours."),
        f.Or("need", new ChoiceShape<Need>("a level of need", ("must", Need.Must), ("should", Need.Should), ("can wait", Need.CanWait)), Need.Must, "How urgent it is. Default: must."),
        f.Optional("if_left", Scalars.Text, "What happens if it is not done."),
        f.Optional("reason", Scalars.Text, "In 'final': why it is invoiced without approval, costs more than approved, or was not fitted. Printed on the report.")));
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
        f.Required("answer", new ChoiceShape<Answer>("an answer", ("yes", Answer.Yes), ("must only", Answer.MustOnly), ("must and should", Answer.MustAndShould), ("by line", Answer.ByLine), ("no", Answer.No)), "The answer."),
        f.Required("on", Scalars.Date, "Date of the answer."),
        f.Optional("by", Scalars.Text, "Who answered."),
        f.List("approved", Scalars.LineName, "With 'by line': each approved line, by its 'id', its part or its work. Other lines are declined."),
        f.Optional("note", Scalars.Text, "Internal note on the answer; never on a customer's page.")));
}
