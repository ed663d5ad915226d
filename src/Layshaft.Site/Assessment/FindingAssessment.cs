using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;

namespace Layshaft.Site.Assessment;

/// <summary>What one measurement of a finding comes to.</summary>
/// <param name="Measure">What was measured, with new size and limit.</param>
/// <param name="Measurement">The readings.</param>
/// <param name="Instrument">What it was measured with; null when the job does not say.</param>
/// <param name="CalibrationOverdue">Whether the instrument was out of its calibration on the day.</param>
/// <param name="Wear">Value, uncertainty, share of the allowance, decision against the limit.</param>
/// <param name="Grade">What the gearbox's policy makes of it.</param>
public sealed record MeasureAssessment(
    Measure Measure,
    Measurement Measurement,
    Book.Records.Instrument? Instrument,
    bool CalibrationOverdue,
    PartWear Wear,
    PartGrade Grade);

/// <summary>What a finding comes to.</summary>
/// <param name="Finding">The finding.</param>
/// <param name="Part">Its part.</param>
/// <param name="Measures">Its measurements, as written.</param>
/// <param name="ByPolicy">The grade that the measurements give; null when nothing was measured.</param>
/// <param name="Grade">The grade that stands.</param>
/// <param name="Overruled">Whether the technician's grade stands against the policy's.</param>
public sealed record FindingAssessment(
    Finding Finding,
    Part Part,
    IReadOnlyList<MeasureAssessment> Measures,
    Grade? ByPolicy,
    Grade Grade,
    bool Overruled);
