using Layshaft.Book.Places;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Records;

/// <summary>Whether a picture shows the box before or after the work.</summary>
public enum PhotoMoment
{
    /// <summary>As it came in.</summary>
    Before,

    /// <summary>As it left.</summary>
    After,
}

/// <summary>A picture in a job's <c>photos/</c> folder.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="File">File in photos/.</param>
/// <param name="Caption">What it shows, in one sentence; also read aloud in its place.</param>
/// <param name="Moment">Before or after, where that matters.</param>
/// <param name="PairedWith">The picture of the same thing at the other moment.</param>
/// <param name="Private">Kept from a later owner of the unit.</param>
/// <param name="Internal">For the shop only.</param>
/// <param name="Callouts">Marks on the picture.</param>
public sealed record Photo(
    Origin Origin,
    string File,
    string Caption,
    PhotoMoment? Moment,
    string? PairedWith,
    bool Private,
    bool Internal,
    IReadOnlyList<Callout> Callouts) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Photo> Shape { get; } = new("a photo", "A photo in the job's photos/ folder.", f => new Photo(
        f.Origin,
        f.Required("file", Scalars.FileName.Like("ring-2.jpg"), "File in photos/."),
        f.Required("caption", Scalars.Text, "What it shows, in one sentence; also read by screen readers."),
        f.OptionalValue("moment", new ChoiceShape<PhotoMoment>("a moment", ("before", PhotoMoment.Before), ("after", PhotoMoment.After)), "Before or after the work."),
        f.Optional("paired_with", Scalars.FileName.Like("ring-2-new.jpg"), "Photo of the same subject at the other moment."),
        f.Or("private", Scalars.YesNo, false, "Whether it is hidden from later owners of the unit. Default: no."),
        f.Or("internal", Scalars.YesNo, false, "Whether it is internal and never on a customer's page. Default: no."),
        f.List("callouts", Callout.Shape, "Marks on the photo.")));
}

/// <summary>The shape of a mark on a picture.</summary>
public enum CalloutKind
{
    /// <summary>A ring around a spot.</summary>
    Circle,

    /// <summary>An arrow to a spot.</summary>
    Arrow,
}

/// <summary>A mark on a picture, in shares of its upright width and height.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Kind">Circle or arrow.</param>
/// <param name="X">Middle of the circle or tip of the arrow, share of the width from the left.</param>
/// <param name="Y">Share of the height from the top.</param>
/// <param name="Radius">Of the circle, share of the width.</param>
/// <param name="FromX">Tail of the arrow, share of the width.</param>
/// <param name="FromY">Tail of the arrow, share of the height.</param>
/// <param name="Label">A few words.</param>
public sealed record Callout(Origin Origin, CalloutKind Kind, double X, double Y, double Radius, double? FromX, double? FromY, string Label) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Callout> Shape { get; } = new("a mark", "A mark on a photo.", f => new Callout(
        f.Origin,
        f.Required("mark", new ChoiceShape<CalloutKind>("a mark", ("circle", CalloutKind.Circle), ("arrow", CalloutKind.Arrow)), "Circle or arrow."),
        f.Required("x", Scalars.Part.Like("42 %"), "Centre of the circle or tip of the arrow, from the left."),
        f.Required("y", Scalars.Part.Like("35 %"), "Centre of the circle or tip of the arrow, from the top."),
        f.Or("radius", Scalars.Part.Like("6 %"), 0.06, "Radius of the circle, as a share of the width. Default: 6 %."),
        f.OptionalValue("from_x", Scalars.Part.Like("20 %"), "Tail of the arrow, from the left."),
        f.OptionalValue("from_y", Scalars.Part.Like("15 %"), "Tail of the arrow, from the top."),
        f.Required("label", Scalars.Text, "Label of a few words.")));
}
