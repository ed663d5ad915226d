using System.Text;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Values;
using Layshaft.Book.Yaml;
using UnitsNet;

namespace Layshaft.Cli.Entering;

/// <summary>Asks for one value after the other and writes each reading into the job as soon as it is typed.</summary>
/// <param name="questions">What to ask, in order.</param>
/// <param name="path">The job file.</param>
/// <param name="input">Where the readings come from; its end stops the session.</param>
/// <param name="output">Where the questions go.</param>
internal sealed class EnterSession(IReadOnlyList<Question> questions, string path, TextReader input, TextWriter output)
{
    private const string Keys = "Enter: next. b: back. x: delete the last reading. q: stop. Several readings: one after the other.";

    /// <summary>How many readings and grades were written.</summary>
    public int Written { get; private set; }

    /// <summary>Runs until the last question, q, or the end of the input.</summary>
    public void Run()
    {
        output.WriteLine(Keys);
        for (var i = 0; i >= 0 && i < questions.Count;)
        {
            var step = Ask(questions[i], i == 0 || questions[i - 1].Heading != questions[i].Heading);
            if (step is not { } move)
            {
                return;
            }

            i = Math.Max(0, i + move);
        }
    }

    // How far to go on; null to stop.
    private int? Ask(Question question, bool begins)
    {
        if (begins)
        {
            output.WriteLine();
            output.WriteLine(question.Heading);
        }

        output.WriteLine($"  {question.Words}");
        while (true)
        {
            if (Read() is not { } job || job.Has(question.Keys))
            {
                output.WriteLine("  Written in another form in the job file; not changed here.");
                return 1;
            }

            IReadOnlyList<string> readings = job.ReadingsOf(question.Keys) ?? [];
            output.Write($"  {question.Keys[^1]} [{string.Join(", ", readings)}] > ");
            output.Flush();
            if (input.ReadLine() is not { } line)
            {
                output.WriteLine();
                return null;
            }

            switch (line.Trim())
            {
                case "":
                    return 1;
                case "b" or "B":
                    return -1;
                case "q" or "Q":
                    return null;
                case "?":
                    output.WriteLine($"    {Keys}");
                    break;
                case "x" or "X" when readings.Count == 0:
                    output.WriteLine("    There is no reading to delete.");
                    break;
                case "x" or "X":
                    Take(job, question, readings.Take(readings.Count - 1));
                    break;
                case var typed when question.Model is { } model:
                    Add(job, question, model, readings, typed);
                    break;
                case "reuse" or "watch" or "renew":
                    Take(job, question, [], line.Trim());
                    return 1;
                case var typed:
                    output.WriteLine($"    '{typed}' is not a grade. {NearestWord.Advice(typed, ["reuse", "watch", "renew"])}");
                    break;
            }
        }
    }

    private void Add(JobText job, Question question, IQuantity model, IReadOnlyList<string> readings, string typed)
    {
        var read = GaugeText.Read(typed, model);
        if (read.Wrong is { } wrong)
        {
            output.WriteLine($"    {wrong} Nothing was written.");
            return;
        }

        string[] all = [.. readings, read.Value!];
        var (lines, canBe) = question.Judge([.. all.Select(r => Quantity(r, model))]);
        foreach (var line in lines)
        {
            output.WriteLine($"    {line}");
        }

        if (canBe)
        {
            Take(job, question, all);
        }
        else
        {
            output.WriteLine("    Nothing was written. Type the reading again.");
        }
    }

    private static IQuantity Quantity(string written, IQuantity model) =>
        QuantityParts.Split(written) is { Unit.Length: > 0 } && UnitWords.Measured.Parse(written) is { Wrong: null, Value: { } value } && value.IsLike(model)
            ? value
            : model.Of(Figure.Parse(QuantityParts.Split(written).Number).Value);

    private void Take(JobText job, Question question, IEnumerable<string> readings, string? grade = null)
    {
        if (job.With(grade ?? $"[{string.Join(", ", readings)}]", question.Before, question.Keys) is not { } changed)
        {
            output.WriteLine("    This place of the job file cannot be changed here. Write it in an editor. Nothing was written.");
            return;
        }

        var bytes = RegularFile.ReadAll(path);
        var hasMark = bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble);
        SafeFile.Replace(path, [.. hasMark ? Encoding.UTF8.Preamble.ToArray() : [], .. Encoding.UTF8.GetBytes(changed.Text)]);
        Written++;
    }

    private JobText? Read() => YamlText.Decode(RegularFile.ReadAll(path), path, new ProblemList()) is { } text ? new JobText(path, text) : null;
}
