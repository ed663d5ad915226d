using Layshaft.Book.Records;
using Layshaft.Site.Assessment;

namespace Layshaft.Site.Pages.Report;

/// <summary>What the sections of one report are composed from.</summary>
/// <param name="Composition">What pages are composed from.</param>
/// <param name="View">Whose report it is.</param>
/// <param name="Assessment">The job, judged.</param>
public sealed record ReportContext(Composition Composition, OwnerView View, JobAssessment Assessment)
{
    private IReadOnlyList<FindingAssessment>? _inOrder;
    private Dictionary<FindingAssessment, string>? _anchors;
    private FittedTeeth? _fitted;

    /// <summary>The job.</summary>
    public Job Job => Assessment.Job;

    /// <summary>The unit.</summary>
    public Unit Unit => Assessment.Unit;

    /// <summary>The type of the unit.</summary>
    public Gearbox Gearbox => Assessment.Gearbox;

    /// <summary>Whether the job was done for this owner: only then he sees words, prices and private pictures.</summary>
    public bool IsOwn => View.IsOwn(Job);

    /// <summary>Path of the report.</summary>
    public string Page => Composition.Addresses.Report(View, Job);

    /// <summary>The link to a file, from the report.</summary>
    public string LinkTo(string path) => Addresses.Link(Page, path);

    /// <summary>The teeth in the unit as the job leaves it.</summary>
    public FittedTeeth Fitted => _fitted ??= FittedTeeth.After(Composition.Book, Assessment);

    /// <summary>The findings worst first; equal grades stay as written.</summary>
    public IReadOnlyList<FindingAssessment> InOrder => _inOrder ??= [.. Assessment.Findings.OrderByDescending(f => f.Grade)];

    /// <summary>The anchor of a finding: other sections link to it.</summary>
    public string Anchor(FindingAssessment finding) => (_anchors ??= InOrder
        .Select((f, i) => (Finding: f, Anchor: FormattableString.Invariant($"finding-{i + 1}")))
        .ToDictionary(f => f.Finding, f => f.Anchor, (IEqualityComparer<FindingAssessment>)ReferenceEqualityComparer.Instance))[finding];
}
