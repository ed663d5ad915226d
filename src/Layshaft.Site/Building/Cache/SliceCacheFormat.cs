using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Building;

/// <summary>How the cached book is written. What another build of the program wrote is passed over.</summary>
internal static class SliceCacheFormat
{
    /// <summary>Writes a book.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="book">The book; null for none.</param>
    public static void Write(BinaryWriter to, CachedBook? book)
    {
        to.Write(ProgramFingerprint.Value);
        to.Write(book is not null);
        if (book is null)
        {
            return;
        }

        to.Write(book.Standing);
        to.Write(book.Site);
        Write(to, book.Checked);
        Write(to, book.Geared);
        to.WriteAll(book.Readers, reader =>
        {
            to.WriteTexts([reader.Folder, reader.FolderOfPlace, reader.Unit, reader.Customer, reader.Name]);
            to.WriteOptional(reader.Formerly);
            Write(to, reader.Place);
        });
        to.Write(book.Reference);
        to.Write(book.ReferenceFiles);
        to.WriteAll(book.Slices, slice => Write(to, slice));
    }

    /// <summary>Reads a book back.</summary>
    /// <param name="from">Where from.</param>
    /// <returns>Null for none, or for one that another build of the program wrote.</returns>
    /// <exception cref="IOException">It is something else.</exception>
    public static CachedBook? Read(BinaryReader from)
    {
        if (from.ReadString() != ProgramFingerprint.Value || !from.ReadBoolean())
        {
            return null;
        }

        return new(
            from.ReadString(),
            from.ReadString(),
            ReadProblems(from),
            ReadProblems(from),
            from.ReadAll(() => from.ReadTexts() is [var folder, var folderOfPlace, var unit, var customer, var name]
                ? new LinkReader(folder, folderOfPlace, unit, customer, name, from.ReadOptional(), ReadPlace(from)) : throw new FormatException()),
            from.ReadHash(),
            from.ReadInt32(),
            from.ReadAll(() => ReadSlice(from)));
    }

    private static void Write(BinaryWriter to, CachedSlice slice)
    {
        to.Write(slice.Mark is not null);
        to.Write(slice.Mark ?? default);
        to.Write(slice.Outputs);
        foreach (var packed in new[] { slice.Tally.Units, slice.Tally.Jobs, slice.Tally.Lives })
        {
            to.Write(packed.Length);
            to.Write(packed.Span);
        }

        to.WriteTexts(slice.Units);
        to.WriteAll(slice.Jobs, job =>
        {
            to.Write(job.File);
            to.Write(job.Content);
            to.Write(job.IsOnTheBench);
            to.Write(job.Links.Unit);
            to.WriteTexts(job.Links.Serials);
            to.WriteTexts(job.Links.Donors);
            to.WriteTexts(job.Links.Venues);
        });
        to.Write(slice.Newest?.DayNumber ?? -1);
        Write(to, slice.Problems);
        to.WriteAll(slice.Wear, unit =>
        {
            to.WriteTexts([unit.Unit, unit.Gearbox]);
            to.Write((int)unit.Counted);
            to.WriteTexts(unit.Owners);
            to.WriteAll(unit.Measures, measured =>
            {
                to.WriteTexts([measured.Part, measured.Measure]);
                to.Write(measured.Uncertainty);
                to.WriteAll(measured.Readings, reading =>
                {
                    to.Write(reading.Day.DayNumber);
                    to.Write(reading.Life);
                    to.Write(reading.Use);
                    to.Write(reading.Share);
                });
            });
        });
        to.Write(slice.Others);
    }

    private static CachedSlice ReadSlice(BinaryReader from)
    {
        ReadOnlyMemory<byte> ReadPacked() => from.ReadBytes(from.ReadInt32());
        var (hasMark, mark, outputs) = (from.ReadBoolean(), from.ReadHash(), from.ReadInt32());
        return new(
            hasMark ? mark : null,
            outputs,
            new PackedTally(ReadPacked(), ReadPacked(), ReadPacked()),
            from.ReadTexts(),
            from.ReadAll(() => new KnownJob(
                from.ReadString(), from.ReadHash(), from.ReadBoolean(), new JobLinks(from.ReadString(), from.ReadTexts(), from.ReadTexts(), from.ReadTexts()))),
            from.ReadInt32() is >= 0 and var day ? DateOnly.FromDayNumber(day) : null,
            ReadProblems(from),
            from.ReadAll(() => from.ReadTexts() is [var unit, var gearbox] ? new WearTally(unit, gearbox, (UseMeasure)from.ReadInt32(), from.ReadTexts(), from.ReadAll(() => ReadWear(from))) : throw new FormatException()),
            from.ReadString());
    }

    private static MeasuredWear ReadWear(BinaryReader from) => from.ReadTexts() is [var part, var measure]
        ? new(part, measure, from.ReadDouble(), from.ReadAll(() => new DatedReading(DateOnly.FromDayNumber(from.ReadInt32()), from.ReadInt32(), from.ReadDouble(), from.ReadDouble())))
        : throw new FormatException();

    private static void Write(BinaryWriter to, IReadOnlyList<Problem> problems) => to.WriteAll(problems, problem =>
    {
        to.WriteTexts([problem.Code, problem.Message, problem.Remedy]);
        Write(to, problem.Place);
        to.Write((int)problem.Severity);
    });

    private static Problem[] ReadProblems(BinaryReader from) => from.ReadAll(() => from.ReadTexts() is [var code, var message, var remedy]
        ? new Problem(code, ReadPlace(from), message, remedy, (Severity)from.ReadInt32()) : throw new FormatException());

    private static void Write(BinaryWriter to, Place place)
    {
        to.Write(place.File);
        to.Write(place.Line);
        to.Write(place.Column);
    }

    private static Place ReadPlace(BinaryReader from) => new(from.ReadString(), from.ReadInt32(), from.ReadInt32());
}
