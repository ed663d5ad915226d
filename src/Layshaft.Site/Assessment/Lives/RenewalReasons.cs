using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using Layshaft.Engineering.Measurement;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>
/// Why a part was renewed, as far as the job says: graded renew, its condition ended its life; graded better, it was a
/// precaution. Without a finding nothing is recorded, save for seals: they are renewed whenever a box is open (common
/// practice, no source), so theirs is a precaution.
/// </summary>
internal static class RenewalReasons
{
    public static RenewalReason Of(JobAssessment job, Part part)
    {
        Grade[] grades = [.. job.Findings.Where(f => f.Part.Id == part.Id).Select(f => f.Grade)];
        return grades.Length == 0
            ? part.Kind == PartKind.Seal ? RenewalReason.Precaution : RenewalReason.NotRecorded
            : grades.Contains(Grade.Renew) ? RenewalReason.Condition : RenewalReason.Precaution;
    }
}
