using Layshaft.Book.Places;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Records;

/// <summary>A customer: file <c>customers/ID.yaml</c>.</summary>
/// <param name="Id">The file's name.</param>
/// <param name="Origin">Where it stands.</param>
/// <param name="Name">Full name or team.</param>
/// <param name="Formerly">An earlier name of the same person or team, where the name was corrected or changed.</param>
/// <param name="Greeting">What the shop calls them.</param>
/// <param name="Emails">Where the report goes; empty if nowhere.</param>
/// <param name="Telephone">Where they are called.</param>
/// <param name="InternalNotes">For the shop only; never on a customer's page.</param>
public sealed record Customer(string Id, Origin Origin, string Name, string? Formerly, string? Greeting, IReadOnlyList<string> Emails, string? Telephone, string? InternalNotes) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Customer> Shape { get; } = new("a customer", "A customer of the shop.", f => new Customer(
        string.Empty,
        f.Origin,
        f.Required("name", Scalars.Text, "Full name or team name."),
        f.Optional("formerly", Scalars.Text, "Previous name here, if the same person or team was renamed: their links stay valid. For another person, create a new file."),
        f.Optional("greeting", Scalars.Text, "Name used in the salutation."),
        f.Optional("email", new OneOrMoreShape<string>(Scalars.Text, atMost: 10), "Email address for reports: one or several.") ?? [],
        f.Optional("telephone", Scalars.Text, "Telephone number."),
        f.Optional("internal_notes", Scalars.Text, "Internal note; never on a customer's page.")));
}
