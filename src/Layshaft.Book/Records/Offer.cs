using Layshaft.Book.Places;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Records;

/// <summary>What was offered to the customer, with the answer: the job's estimate, or a supplement to it.</summary>
/// <param name="Origin">Where it is written.</param>
/// <param name="Number">0 for the estimate, 1 and up for the supplements.</param>
/// <param name="Sent">Day it was sent.</param>
/// <param name="ValidUntil">Last day of its validity; null for the shop's rule.</param>
/// <param name="Lines">Parts and work.</param>
/// <param name="Note">Text to go with it: of a supplement, why it is needed.</param>
/// <param name="IfRefused">What a complete refusal costs, without tax; null for nothing.</param>
/// <param name="Total">The subtotal that was sent, without tax; null if it is not written.</param>
/// <param name="GoAhead">The customer's answer; null while it waits for one.</param>
public sealed record Offer(
    Origin Origin,
    int Number,
    DateOnly Sent,
    DateOnly? ValidUntil,
    IReadOnlyList<EstimateLine> Lines,
    string? Note,
    decimal? IfRefused,
    decimal? Total,
    GoAhead? GoAhead) : IPlaced
{
    private const string ValidUntilMeaning = "Last day of validity. Default: sent date plus estimate_valid_for in shop.yaml.";

    /// <summary>How the estimate is written. Its answer is a field of the job.</summary>
    public static RecordShape<Offer> EstimateShape { get; } = new("an estimate", "The estimate sent to the customer.", f => new Offer(
        f.Origin,
        0,
        f.Required("sent", Scalars.Date, "Date sent."),
        f.OptionalValue("valid_until", Scalars.Date, ValidUntilMeaning),
        f.Optional("lines", LinesShape, "Parts and labour. Default: the usual_work of the gearbox, and each part graded renew.") ?? [],
        f.Optional("note", Scalars.Text, "Note to the customer."),
        f.OptionalValue("if_refused", Scalars.Money, "Amount invoiced, excluding tax, if the answer is no, such as for the inspection. Printed on the estimate."),
        f.OptionalValue("total", Scalars.Money.Like("812.50"), "Subtotal that was sent, excluding tax. Needed for an answer to an estimate without 'lines': a later change then stops a publish."),
        null));

    /// <summary>How a supplement is written.</summary>
    public static RecordShape<Offer> SupplementShape { get; } = new("a supplement", "A second estimate during the same job, with its answer.", f => new Offer(
        f.Origin,
        0,
        f.Required("sent", Scalars.Date, "Date sent."),
        f.OptionalValue("valid_until", Scalars.Date, ValidUntilMeaning),
        f.Required("lines", LinesShape, "Parts and labour."),
        f.Required("reason", Scalars.Text, "Why more work is needed, for the customer."),
        null,
        null,
        f.Optional("go_ahead", GoAhead.Shape, "The customer's answer to the supplement.")));

    /// <summary>Whether its lines follow from the grades.</summary>
    public bool IsFromGrades => !Origin.Has("lines") && Origin != Origin.None;

    /// <summary>Whether the customer has not answered yet.</summary>
    public bool Waits => GoAhead is null;

    /// <summary>The lines that the customer approved.</summary>
    public IEnumerable<EstimateLine> Approved => Lines.Where(Approves);

    /// <summary>The lines that the customer declined; none while it waits.</summary>
    public IEnumerable<EstimateLine> Declined => Waits ? [] : Lines.Where(l => !Approves(l));

    private static ListShape<EstimateLine> LinesShape => new(EstimateLine.Shape, atLeast: 1);

    /// <summary>The estimate and its supplements in order, numbered from the estimate's 0.</summary>
    public static IReadOnlyList<Offer> Series(Offer? estimate, GoAhead? answer, IReadOnlyList<Offer> supplements) =>
    [
        .. estimate is null ? Array.Empty<Offer>() : [estimate with { GoAhead = answer }],
        .. supplements.Select((s, i) => s with { Number = i + 1 }),
    ];

    /// <summary>Whether the customer approved a line of it.</summary>
    public bool Approves(EstimateLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return GoAhead is { } answer && answer.Answer switch
        {
            Answer.Yes => true,
            Answer.MustAndShould => line.Need != Need.CanWait,
            Answer.MustOnly => line.Need == Need.Must,
            Answer.ByLine => answer.Approved.Contains(line.Name),
            _ => false,
        };
    }
}
