using Layshaft.Site.Templates;

namespace Layshaft.Site.Tests.Templates;

/// <summary>Where templates come from.</summary>
public sealed class TemplateFolderTests : IDisposable
{
    private readonly TempFolder _temp = new();

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void A_shops_file_replaces_ours_of_the_same_name_and_ours_stays_for_the_rest()
    {
        _temp.Write("ours/a.html", "ours a");
        _temp.Write("ours/parts/b.html", "ours b");
        _temp.Write("shop/parts/b.html", "shop b");
        var files = TemplateFiles.Read(new(_temp.At("ours"), _temp.At("shop")), "*.html", []);
        Assert.Equal(["a.html=ours a", "parts/b.html=shop b"], files.Select(f => $"{f.Key}={f.Value}"));
    }

    [Fact]
    public void The_fingerprint_follows_names_and_texts_and_not_line_ends()
    {
        string Of(string name, string text)
        {
            using var one = new TempFolder();
            one.Write(name, text);
            return TemplateSet.Load(new(one.Path)).Fingerprint;
        }

        Assert.Equal(Of("a.html", "x\ny"), Of("a.html", "x\r\ny"));
        Assert.Equal(3, new[] { Of("a.html", "x"), Of("b.html", "x"), Of("a.html", "y") }.Distinct().Count());
    }

    [Fact]
    public void Links_out_of_the_folder_are_not_followed()
    {
        _temp.Write("secret/a.html", "secret");
        _temp.Write("secret/more/c.html", "secret");
        _temp.Write("ours/b.html", "b");
        File.CreateSymbolicLink(_temp.At("ours/a.html"), _temp.At("secret/a.html"));
        Directory.CreateSymbolicLink(_temp.At("ours/more"), _temp.At("secret/more"));
        Assert.Equal(["b.html"], TemplateSet.Load(new(_temp.At("ours"))).Names);
    }

    [Fact]
    public void Files_that_are_missing_too_large_or_not_text_are_problems()
    {
        _temp.Write("ours/large.html", new string('x', (1 << 20) + 1));
        _temp.WriteBytes("ours/latin.html", [0x4F, 0xD6, 0x4C]);
        var problems = TemplateSet.Load(new(_temp.At("ours"), _temp.At("nowhere"))).Problems;
        Assert.Equal(3, problems.Count);
        Assert.Contains(problems, p => p.File == "large.html");
        Assert.Contains(problems, p => p.File == "latin.html" && p.Message.Contains("UTF-8", StringComparison.Ordinal));
        Assert.Contains(problems, p => p.File == _temp.At("nowhere"));
    }

    [Fact]
    public void Our_own_folder_stands_beside_the_program_and_has_no_problem() =>
        Assert.Empty(TemplateSet.Load(TemplateFolders.BesideProgram()).Problems);
}
