using Layshaft.Book.Reading;

if (args is not ["check", var folder])
{
    Console.Error.WriteLine("Use: layshaft check BOOK");
    return 2;
}

var read = BookReader.ReadFolder(folder);
foreach (var problem in read.Problems)
{
    Console.Error.WriteLine(problem);
}

return read.HasProblems ? 1 : 0;
