using System.Globalization;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;

namespace Layshaft.Book.Checks;

/// <summary>What must hold between an offer and its answer.</summary>
internal static class OfferChecks
{
    public static void Run(Checker check, Job job)
    {
        foreach (var offer in job.Offers)
        {
            if (offer.GoAhead is { } answer)
            {
                Answered(check, offer, answer);
            }
            else if (job.Finished is not null)
            {
                check.Problems.Add("finished-without-answer", job.Origin.At("finished"), $"The job is finished, but the {NameOf(offer)} has no answer.", "Add its answer under 'go_ahead'.");
            }
        }
    }

    public static string NameOf(Offer offer) => offer.Number == 0 ? "estimate" : string.Create(CultureInfo.InvariantCulture, $"supplement {offer.Number}");

    private static void Answered(Checker check, Offer offer, GoAhead answer)
    {
        if (answer.Answer != Answer.ByLine)
        {
            if (answer.Approved.Count > 0)
            {
                check.Problems.Add("approved-without-by-line", answer.Origin.At("approved"), "'approved' is used only with the answer 'by line'.", "Write 'answer: by line', or remove 'approved'.");
            }
            else if (answer.Answer != Answer.No && !offer.Approved.Any())
            {
                check.Problems.Add("nothing-approved", answer.Origin.At("answer"), $"No line of the {NameOf(offer)} is covered by this answer.", "Write 'answer: no', or correct the 'need' of the lines.");
            }

            return;
        }

        if (answer.Approved.Count == 0)
        {
            check.Problems.Add("nothing-approved", answer.Origin.At("answer"), "The answer is by line, but no approved line is listed.", "Add 'approved: […]', or write 'answer: no'.");
        }

        string[] names = [.. offer.Lines.Select(l => l.Name)];
        foreach (var name in answer.Approved)
        {
            if (!names.Contains(name))
            {
                check.Problems.Add("missing-reference", answer.Origin.At("approved"), $"The {NameOf(offer)} has no line '{name}'.", NearestWord.Advice(name, names));
            }
            else if (names.Count(n => n == name) > 1)
            {
                check.Problems.Add("line-not-unique", answer.Origin.At("approved"), $"The {NameOf(offer)} has more than one line '{name}', so this answer is not clear.", "Merge the lines, or give each an 'id'.");
            }
        }
    }
}
