namespace Layshaft.Engineering.Measurement;

/// <summary>A technician's grade in place of the calculated one.</summary>
/// <param name="Grade">The grade that counts.</param>
/// <param name="Reason">Why; never blank.</param>
public sealed record GradeOverruling(Grade Grade, string Reason);
