using Layshaft.Book.Problems;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Slices;

/// <summary>A job of a slice as it is known without reading it.</summary>
/// <param name="File">The path of its file.</param>
/// <param name="Content">The hash of that.</param>
/// <param name="IsOnTheBench">Whether a unit of it is still in the shop.</param>
/// <param name="Links">What ties it to the rest of the book.</param>
internal sealed record KnownJob(string File, ContentHash Content, bool IsOnTheBench, JobLinks Links);

/// <summary>What is kept of a slice besides its tally.</summary>
/// <param name="Units">The ids of its units, in order.</param>
/// <param name="Jobs">Its jobs.</param>
/// <param name="Newest">The newest day of anything done in its jobs; null without any.</param>
/// <param name="Problems">What is wrong or worth knowing in it.</param>
internal sealed record SliceDetails(IReadOnlyList<string> Units, IReadOnlyList<KnownJob> Jobs, DateOnly? Newest, IReadOnlyList<Problem> Problems)
{
    /// <summary>Reads it back.</summary>
    /// <param name="reader">Stands where it begins.</param>
    /// <exception cref="IOException">It is something else.</exception>
    public static SliceDetails Read(BinaryReader reader)
    {
        var units = TextList.Read(reader);
        var jobs = new KnownJob[reader.ReadInt32()];
        for (var i = 0; i < jobs.Length; i++)
        {
            jobs[i] = new KnownJob(
                reader.ReadString(),
                ContentHash.Read(reader.BaseStream),
                reader.ReadBoolean(),
                new JobLinks(reader.ReadString(), TextList.Read(reader), TextList.Read(reader), TextList.Read(reader)));
        }

        return new SliceDetails(units, jobs, reader.ReadBoolean() ? DateOnly.FromDayNumber(reader.ReadInt32()) : null, ProblemBytes.Read(reader));
    }

    /// <summary>Writes it.</summary>
    /// <param name="writer">Where to.</param>
    public void Write(BinaryWriter writer)
    {
        TextList.Write(writer, Units);
        writer.Write(Jobs.Count);
        foreach (var job in Jobs)
        {
            writer.Write(job.File);
            job.Content.WriteTo(writer);
            writer.Write(job.IsOnTheBench);
            writer.Write(job.Links.Unit);
            TextList.Write(writer, job.Links.Serials);
            TextList.Write(writer, job.Links.Donors);
            TextList.Write(writer, job.Links.Venues);
        }

        writer.Write(Newest is not null);
        if (Newest is { } day)
        {
            writer.Write(day.DayNumber);
        }

        ProblemBytes.Write(writer, Problems);
    }
}
