using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using Layshaft.Engineering.Measurement;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>What tells why a part was renewed.</summary>
public enum ReasonSource
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>The job says it.</summary>
    Written,

    /// <summary>The grade of its finding.</summary>
    Grade,

    /// <summary>The kind of part.</summary>
    Kind,
}

/// <summary>
/// Why a part was renewed. What the job writes stands. Otherwise the grade says it: graded renew, its condition ended its
/// life; graded better, it was a precaution. Without a finding nothing is recorded, save for seals: they are renewed
/// whenever a box is open (common practice, no source), so theirs is a precaution.
/// </summary>
internal static class RenewalReasons
{
    public static (RenewalReason Reason, ReasonSource Source) Of(JobAssessment job, Renewal renewal, Part part)
    {
        if (renewal.Reason is { } written)
        {
            return (written is RenewalCause.Worn or RenewalCause.Damaged or RenewalCause.Broken ? RenewalReason.Condition : RenewalReason.Precaution, ReasonSource.Written);
        }

        Grade[] grades = [.. job.Findings.Where(f => f.Part.Id == part.Id).Select(f => f.Grade)];
        return grades.Length > 0 ? (grades.Contains(Grade.Renew) ? RenewalReason.Condition : RenewalReason.Precaution, ReasonSource.Grade)
            : part.Kind == PartKind.Seal ? (RenewalReason.Precaution, ReasonSource.Kind)
            : (RenewalReason.NotRecorded, ReasonSource.None);
    }
}
