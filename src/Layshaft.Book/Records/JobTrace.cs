using Layshaft.Book.Places;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Records;

/// <summary>What the car itself recorded before a job.</summary>
/// <param name="Origin">Where it is written.</param>
/// <param name="File">A CSV file beside the job file.</param>
/// <param name="Note">Words to go with it.</param>
public sealed record JobTrace(Origin Origin, string File, string? Note) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<JobTrace> Shape { get; } = new("a trace", "What the car's data logger recorded at the last event. The layout is in the car's trace_columns.", f => new JobTrace(
        f.Origin,
        f.Required("file", Scalars.FileName.Like("trace.csv"), "A CSV file beside the job file."),
        f.Optional("note", Scalars.Text, "Note to the customer on the trace.")));
}
