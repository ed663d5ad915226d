using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>The keys of customers' pages, and the secret behind them.</summary>
public sealed class CustomerKeyTests : IDisposable
{
    private const string Given = "0123456789abcdefghijklmnopqrstuv";
    private readonly TempFolder _book = new();

    public void Dispose() => _book.Dispose();

    private static ShopSecret Secret(string text = Given) => ShopSecret.Open("nowhere", _ => text).Secret!;

    private ShopSecretResult FromFile() => ShopSecret.Open(_book.Path, _ => null);

    [Fact]
    public void A_key_is_26_small_letters_and_digits_and_always_the_same()
    {
        var key = new CustomerKeys(Secret()).For("dg-014", "vass");
        Assert.Matches("^[a-z2-7]{26}$", key);
        Assert.Equal(key, new CustomerKeys(Secret($"  {Given}\n")).For("dg-014", "vass", 1, 0));
    }

    [Fact]
    public void Unit_customer_time_renewal_and_secret_each_make_another_key()
    {
        var keys = new CustomerKeys(Secret());
        string[] all =
        [
            keys.For("dg-014", "vass"), keys.For("dg-014", "vass", 2), keys.For("dg-014", "vass", 1, 1), keys.For("dg-014", "vass", 11, 1), keys.For("dg-014", "vass", 1, 11),
            keys.For("dg-0141", "vass"), keys.For("DG-014", "vass"), keys.For("vass", "dg-014"), keys.For("dg-01", "4vass"), keys.For("dg-014", "vass\n1", 1),
            keys.For("dg-014\n4:vass", "1"), keys.OfPlace("dg-014", 0, 0), keys.OfPlace("dg-014", 1, 0), keys.Fingerprint,
            new CustomerKeys(Secret(Given + "x")).For("dg-014", "vass"),
        ];
        Assert.Equal(all.Length, all.Distinct().Count());
    }

    [Fact]
    public void The_form_in_which_a_unicode_id_was_typed_does_not_matter() =>
        Assert.Equal(new CustomerKeys(Secret()).For("\u00C4-1", "\u00C4"), new CustomerKeys(Secret()).For("A\u0308-1", "A\u0308"));

    [Fact]
    public void A_key_is_the_keyed_hash_of_its_message()
    {
        // Worked with another implementation: HMAC-SHA256 and base 32 of Python 3's hmac, hashlib and base64 modules.
        Assert.Equal("e5d5bdi3opwrhmziiwlekfudge", new CustomerKeys(Secret()).For("dg-014", "vass", 2, 3));
        Assert.Equal("fyhsqkq6jzu53kwfozj3jucvkq", new CustomerKeys(Secret()).OfPlace("dg-014", 1, 2));
    }

    [Fact]
    public void The_first_use_makes_a_secret_that_only_its_owner_can_read_and_the_next_finds_it()
    {
        var first = FromFile();
        Assert.Equal((null, null), (first.Problem, first.Warning));
        Assert.Equal([ShopSecret.FileName], Directory.EnumerateFiles(_book.Path).Select(Path.GetFileName));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(_book.At(ShopSecret.FileName)));
        }

        Assert.Equal(new CustomerKeys(first.Secret!).For("a", "b"), new CustomerKeys(FromFile().Secret!).For("a", "b"));
        using var other = new TempFolder();
        Assert.NotEqual(new CustomerKeys(first.Secret!).For("a", "b"), new CustomerKeys(ShopSecret.Open(other.Path, _ => null).Secret!).For("a", "b"));
    }

    [Fact]
    public void Many_that_begin_at_once_agree_on_one_secret()
    {
        // Often, for the moment between looking and renaming is short.
        for (var i = 0; i < 50; i++)
        {
            File.Delete(_book.At(ShopSecret.FileName));
            using var all = new Barrier(8);
            var keys = new string[8];
            var threads = Enumerable.Range(0, keys.Length).Select(t => new Thread(() =>
            {
                all.SignalAndWait();
                keys[t] = new CustomerKeys(FromFile().Secret!).For("a", "b");
            })).ToList();
            threads.ForEach(t => t.Start());
            threads.ForEach(t => t.Join());
            Assert.Single(keys.Distinct());
            Assert.Single(Directory.EnumerateFiles(_book.Path));
        }
    }

    [Fact]
    public void The_environments_secret_goes_before_the_file_and_gives_the_same_keys_as_the_file_would()
    {
        var file = FromFile();
        var text = File.ReadAllText(_book.At(ShopSecret.FileName));
        Assert.Equal(new CustomerKeys(file.Secret!).For("a", "b"), new CustomerKeys(ShopSecret.Open(_book.Path, _ => text).Secret!).For("a", "b"));
        Assert.NotEqual(new CustomerKeys(file.Secret!).For("a", "b"), new CustomerKeys(ShopSecret.Open(_book.Path, _ => Given).Secret!).For("a", "b"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("too short")]
    [InlineData("0123456789abcdef 0123456789abcdef")]
    [InlineData("aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa")]
    [InlineData("abababababababababababababababababababab")]
    [InlineData("0123456789abcdef0123456789abcdef")]
    [InlineData("correct-horse-correct-horse-correct-horse-")]
    [InlineData("11111111111111112222222222222222")]
    public void A_damaged_secret_is_a_problem_and_is_left_as_it_is(string text)
    {
        _book.Write(ShopSecret.FileName, text);
        Assert.Contains("backup", FromFile().Problem, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(_book.At(ShopSecret.FileName)));
        Assert.Contains(ShopSecret.VariableName, ShopSecret.Open(_book.Path, _ => text).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_secret_that_others_can_read_is_used_with_a_warning()
    {
        if (!OperatingSystem.IsWindows())
        {
            FromFile();
            File.SetUnixFileMode(_book.At(ShopSecret.FileName), UnixFileMode.UserRead | UnixFileMode.OtherRead);
            Assert.Contains("chmod 600", FromFile().Warning, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_link_to_a_secret_is_refused()
    {
        if (OperatingSystem.IsWindows())
        {
            return; // links ask for rights there
        }

        _book.Write("elsewhere", Given);
        File.CreateSymbolicLink(_book.At(ShopSecret.FileName), _book.At("elsewhere"));
        Assert.Contains("link", FromFile().Problem, StringComparison.Ordinal);
        File.Delete(_book.At("elsewhere"));
        Assert.NotNull(FromFile().Problem);
        Assert.False(File.Exists(_book.At("elsewhere")));
    }

    [Fact]
    public void A_secret_does_not_print_itself() => Assert.DoesNotContain("0123", Secret().ToString(), StringComparison.Ordinal);

    [Fact]
    public void A_folder_that_is_not_there_is_a_problem() =>
        Assert.Contains(ShopSecret.VariableName, ShopSecret.Open(_book.At("nowhere"), _ => null).Problem, StringComparison.Ordinal);
}
