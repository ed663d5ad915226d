using AngleSharp.Html.Parser;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Reference;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Tests.Gearing;

public class ReferencePageTests
{
    private static readonly Composition s_demo = DemoBook.Composition();
    private static readonly IReadOnlyList<ReferenceSubject> s_subjects = ReferenceSubject.All(s_demo);

    [Fact]
    public void Each_gearbox_and_each_car_that_may_be_shown_has_a_page() => Assert.Equal(
        ["gearbox-calvane-s6", "gearbox-corrick-f5", "gearbox-marrick-h4", "gearbox-ostrel-t6", .. s_demo.Book.Cars.Values.Where(c => c.Public).Select(c => "car-" + c.Id).Order(StringComparer.Ordinal)],
        [.. s_subjects.Where(s => s.Id[0] == 'g').Select(s => s.Id), .. s_subjects.Where(s => s.Id[0] == 'c').Select(s => s.Id).Order(StringComparer.Ordinal)]);

    [Fact]
    public void No_page_holds_a_customer_an_event_a_unit_or_a_car_that_is_private()
    {
        var book = s_demo.Book;
        string[] secret =
        [
            .. book.Customers.Values.Select(c => c.Name),
            .. book.Cars.Values.Where(c => !c.Public).Select(c => c.Name),
            .. book.Units.Values.Select(u => u.Serial),
            .. book.Jobs.Select(j => j.NextEvent?.Name).OfType<string>(),
            .. book.Venues.Values.Select(v => v.Name),
        ];
        foreach (var html in Pages())
        {
            Assert.All(secret, s => Assert.DoesNotContain(s, html, StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public void Every_choice_has_its_own_table_and_the_stylesheet_shows_each_once()
    {
        foreach (var subject in s_subjects)
        {
            var page = ReferenceComposer.Page(s_demo, subject);
            var stock = subject.Boxes[0].Stock;
            Assert.Equal(stock.DropPairs.Count * stock.FinalDrives.Count * subject.Tyres.Count, page.Combinations.Count);
            Assert.Equal(page.Combinations.Count, page.Combinations.Select(c => c.Classes).Distinct().Count());

            // Each option hides what has not its class, so of all that is offered one combination stays, whatever is chosen.
            var css = ReferenceChoices.Stylesheet(subject);
            Assert.All(page.Groups.SelectMany(g => g.Options), o => Assert.Contains($".chooser:has(#{o.Id}:checked) .combination:not(.{o.Id[0]}{o.Id.Split('-')[1]}) {{ display: none; }}", css, StringComparison.Ordinal));
            Assert.Equal(page.Groups.Sum(g => g.Options.Count), css.Split("display: none").Length - 1);
            Assert.All(page.Groups, g => Assert.Single(g.Options, o => o.IsChosen));
            var ids = new HtmlParser().ParseDocument(DemoBook.Render(s_demo, ReferenceComposer.Template, page)).QuerySelectorAll("[id]").Select(e => e.Id).ToList();
            Assert.Equal(ids.Count, ids.Distinct().Count());
        }
    }

    [Fact]
    public void On_paper_each_choice_names_the_tyre_where_there_are_several()
    {
        foreach (var subject in s_subjects)
        {
            var page = ReferenceComposer.Page(s_demo, subject);
            Assert.All(page.Combinations, c => Assert.Equal(
                subject.Tyres.Count > 1,
                c.Rests?.Contains(subject.Tyres[int.Parse(c.Classes[^1..], System.Globalization.CultureInfo.InvariantCulture)].Words, StringComparison.Ordinal) ?? false));
        }
    }

    [Fact]
    public void The_words_for_damage_are_found_from_the_first_page_and_lead_back()
    {
        Assert.Equal("terms.html", ReferenceComposer.Index(s_demo, s_subjects).Terms.Address);
        Assert.Equal("index.html", Assert.Single(TermsPage.Compose(s_demo).Head.Links).Address);
    }

    [Fact]
    public void The_figures_on_a_page_are_those_of_the_calculation()
    {
        var subject = s_subjects.Single(s => s.Id == "car-saloon-44");
        var page = ReferenceComposer.Page(s_demo, subject);
        var combination = page.Combinations.Single(c => c.Heading.Contains("33/28", StringComparison.Ordinal) && c.Heading.Contains("41/10", StringComparison.Ordinal) && c.Classes.EndsWith(" t0", StringComparison.Ordinal));

        // 8200 rpm in top: 28/32 x 33/28 x 4.1 = 4.228; 1.936 m, 3.5 % slip, 0.4 % growth at 200 km/h.
        var train = subject.Boxes[0].Drivetrain.With(new Eng.ToothPair(28, 33), Eng.FinalDrive.FromTeeth(new Eng.ToothPair(10, 41)));
        Assert.Equal(4.228, train.OverallRatio(6), 5e-4);
        var metres = 8200 / 60.0 / 4.22813 * 1.936 * 0.965;
        var kmh = metres * 3.6 * (1 + (0.004 * Math.Pow(metres * 3.6 / 200, 2)));
        Assert.Contains($"{kmh:0}", combination.Rows[^1].AtLimit, StringComparison.Ordinal);
        Assert.Null(combination.Rows[^1].Lands);
    }

    [Fact]
    public void The_wall_chart_has_every_pair_under_every_final_drive()
    {
        foreach (var subject in s_subjects)
        {
            var wall = WallComposer.Compose(s_demo, subject, 0);
            var box = subject.Boxes[0];
            Assert.Equal(box.Stock.DropPairs.Count, wall.Rows.Count);
            Assert.All(wall.Rows, r => Assert.Equal(box.Stock.FinalDrives.Count * box.Set.Gears.Count, r.Cells.Count));

            // Down the wall the ratio falls, so the speeds rise.
            Assert.Equal(wall.Rows.Select(r => int.Parse(r.Cells[0].First, System.Globalization.CultureInfo.InvariantCulture)).Order(), wall.Rows.Select(r => int.Parse(r.Cells[0].First, System.Globalization.CultureInfo.InvariantCulture)));
        }
    }

    [Fact]
    public void A_speed_past_the_tyres_rating_or_the_output_shafts_limit_is_marked_with_its_limit()
    {
        var subject = s_subjects.Single(s => s.Id == "car-saloon-44"); // tyre rated W, 270 km/h; output shaft 9000 rpm
        var wall = WallComposer.Compose(s_demo, subject, 0);
        Assert.All(wall.Rows.SelectMany(r => r.Cells), c => Assert.Equal(int.Parse(c.Second, System.Globalization.CultureInfo.InvariantCulture) > 270, c.Past?.Contains("tyre speed rating", StringComparison.Ordinal) ?? false));
        Assert.Contains(wall.Rows.SelectMany(r => r.Cells), c => c.Past is not null);
        Assert.Contains(wall.Rows.SelectMany(r => r.Cells), c => c.Past is null);
        var marked = wall.Rows.Sum(r => r.Cells.Count(c => c.Past is not null));
        Assert.Equal(marked, new HtmlParser().ParseDocument(DemoBook.Render(s_demo, WallComposer.Template, wall)).QuerySelectorAll("td .past[aria-label^='exceeds ']").Length);

        // 8200 rpm behind 0.875 x 0.765 (26/34) turns the output shaft at 12 255 rpm.
        var shaft = ReferenceComposer.Page(s_demo, subject).Combinations.First(c => c.Heading.Contains("26/34", StringComparison.Ordinal));
        Assert.Contains("output shaft limit", shaft.Rows[^1].Past, StringComparison.Ordinal);
        Assert.Null(shaft.Rows[0].Past);
    }

    [Fact]
    public void Pages_need_no_script_and_are_the_same_each_time()
    {
        var first = Pages().ToList();
        Assert.Equal(first, Pages());
        Assert.All(first, p => Assert.DoesNotContain("<script", p, StringComparison.OrdinalIgnoreCase));
    }

    private static IEnumerable<string> Pages()
    {
        yield return DemoBook.Render(s_demo, ReferenceComposer.IndexTemplate, ReferenceComposer.Index(s_demo, s_subjects));
        foreach (var subject in s_subjects)
        {
            yield return DemoBook.Render(s_demo, ReferenceComposer.Template, ReferenceComposer.Page(s_demo, subject));
            yield return DemoBook.Render(s_demo, WallComposer.Template, WallComposer.Compose(s_demo, subject, subject.Tyres.Count - 1));
        }
    }
}
