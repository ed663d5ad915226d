using System.Text;
using System.Xml;
using CsCheck;
using Layshaft.Site.Charts.Drawing;

namespace Layshaft.Site.Tests.Charts;

/// <summary>The writer of drawings against the framework's own XML writer.</summary>
public class SvgWriterTests
{
    private static readonly XmlWriterSettings Settings = new()
    {
        OmitXmlDeclaration = true,
        ConformanceLevel = ConformanceLevel.Fragment,
        Indent = true,
        IndentChars = string.Empty,
        NewLineChars = "\n",
    };

    // Letters, what XML escapes, line ends, spaces of all kinds, a sign beyond the first plane.
    private static readonly string[] Signs = ["a", "&", "<", ">", "\"", "'", "\t", "\n", "\r", "\r\n", "\u00A0", "\u202F", "\uFFFD", "é", "😀", "]]>"];

    private static readonly double[] Corners = [0, -0.0, 0.005, -0.005, 1e12, 999_999_999_999.999, 1e300];

    private static readonly Gen<string> Text = Gen.Int[0, Signs.Length - 1].Array[0, 8].Select(all => string.Concat(all.Select(i => Signs[i])));

    private static readonly Gen<double> Number = Gen.OneOf(Gen.Double[-1e4, 1e4], Gen.Int[-100_000, 100_000].Select(i => i / 1000.0), Gen.Double[-1e15, 1e15], Gen.Int[0, Corners.Length - 1].Select(i => Corners[i]));

    // 0: open, 1: close, 2: say, 3: number.
    private static readonly Gen<(int Step, string Text, double Number)[]> Steps = Gen.Select(Gen.Int[0, 3], Text, Number).Array[0, 40];

    [Fact]
    public void What_is_written_is_what_the_frameworks_writer_writes() => Steps.Sample(steps =>
    {
        var expected = new StringBuilder();
        using var ours = new SvgWriter();
        using (var xml = XmlWriter.Create(expected, Settings))
        {
            var depth = 0;
            void Open(string name, string text)
            {
                xml.WriteStartElement(name, "http://www.w3.org/2000/svg");
                xml.WriteAttributeString("class", text);
                ours.Open(name, text);
                depth++;
            }

            Open("svg", "chart");
            foreach (var (step, text, number) in steps)
            {
                switch (step)
                {
                    case 0:
                        Open("g", text);
                        break;
                    case 1 when depth > 1:
                        xml.WriteEndElement();
                        ours.Close();
                        depth--;
                        break;
                    case 2:
                        xml.WriteString(text);
                        ours.Say(text);
                        break;
                    case 3:
                        Open("path", text);
                        xml.WriteAttributeString("d", Plain(number));
                        ours.With("d", number);
                        break;
                }
            }

            for (; depth > 0; depth--)
            {
                xml.WriteEndElement();
                ours.Close();
            }
        }

        Assert.Equal(expected.ToString(), ours.Finish().Markup);
    });

    [Fact]
    public void What_xml_cannot_carry_becomes_the_replacement_character()
    {
        using var svg = new SvgWriter();
        svg.Open("g", "a\u0001b").Say("\uD83Dx\uDE00 \uFFFE \u000B").Close();
        Assert.Equal("<g class=\"a\uFFFDb\" xmlns=\"http://www.w3.org/2000/svg\">\uFFFDx\uFFFD \uFFFD \uFFFD</g>", svg.Finish().Markup);
    }

    [Fact]
    public void Numbers_have_two_decimals_at_most() => Number.Sample(number => Assert.Equal(Plain(number), SvgNumber.Of(number)));

    private static string Plain(double number) =>
        (Math.Round(number, 2, MidpointRounding.AwayFromZero) + 0.0).ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);
}
