using Layshaft.Site.Charts.Drawing;

namespace Layshaft.Site.Charts.Terms;

/// <summary>Draws sound parts on a sheet of 160 by 110, and marks of damage on them.</summary>
internal sealed class TermPen(SvgWriter svg)
{
    /// <summary>A closed shape of sound metal.</summary>
    public TermPen Metal(string data) => Shape("metal", data);

    /// <summary>A line of a sound part.</summary>
    public TermPen Edge(string data) => Shape("edge", data);

    /// <summary>Where metal was when the part was new.</summary>
    public TermPen Ghost(string data) => Shape("ghost", data);

    /// <summary>A line of damage.</summary>
    public TermPen Damage(string data) => Shape("damage", data);

    /// <summary>A hollow or a hole.</summary>
    public TermPen Pit(string data) => Shape("pit", data);

    /// <summary>A dull or worn area.</summary>
    public TermPen Tone(string data) => Shape("tone", data);

    /// <summary>An area that was hot or has rusted.</summary>
    public TermPen Hot(string data) => Shape("hot", data);

    /// <summary>A round pit.</summary>
    public TermPen Dot(double x, double y, double radius)
    {
        svg.Circle("pit", x, y, radius);
        return this;
    }

    /// <summary>A sound ball.</summary>
    public TermPen Ball(double x, double y, double radius)
    {
        svg.Circle("metal", x, y, radius);
        return this;
    }

    /// <summary>Round pits strewn evenly over a field, the same ones each time.</summary>
    public TermPen Strew(int count, double left, double top, double right, double bottom, double radius)
    {
        for (var i = 1; i <= count; i++)
        {
            // Steps by one over the plastic number and over its square fill a field without clumps.
            var (u, v) = (i * 0.7548776662 % 1, i * 0.5698402910 % 1);
            Dot(left + (u * (right - left)), top + (v * (bottom - top)), radius * (0.7 + (0.6 * (i * 0.381966 % 1))));
        }

        return this;
    }

    /// <summary>The same mark at several places along a row.</summary>
    public TermPen Each(double from, double to, double step, Action<TermPen, double> mark)
    {
        for (var at = from; at <= to; at += step)
        {
            mark(this, at);
        }

        return this;
    }

    /// <summary>A tooth seen square on its flank: tip above, root below, the line where it rolls between.</summary>
    public TermPen Flank() => Metal("M14 14H146V96H14Z").Edge("M14 22H146").Ghost("M14 55H146");

    /// <summary>A tooth in section.</summary>
    public TermPen Tooth() => Metal("M8 104V92C34 92 44 84 50 66C55 48 60 30 66 14H94C100 30 105 48 110 66C116 84 126 92 152 92V104Z");

    /// <summary>What is left of a tooth in section when it is gone above its root.</summary>
    public TermPen Stump() => Ghost("M50 66C55 48 60 30 66 14H94C100 30 105 48 110 66").Metal("M8 104V92C34 92 44 84 50 66H110C116 84 126 92 152 92V104Z");

    /// <summary>The running track of a bearing ring, laid flat and seen from above.</summary>
    public TermPen Track() => Metal("M10 20H150V90H10Z").Edge("M10 36H150M10 74H150");

    /// <summary>A ball on its track, in section.</summary>
    public TermPen Section() => Metal("M8 62H152V102H8Z").Ball(80, 38, 24);

    /// <summary>Three balls on a track, in section.</summary>
    public TermPen Balls() => Metal("M8 62H152V102H8Z").Ball(36, 46, 16).Ball(80, 46, 16).Ball(124, 46, 16);

    /// <summary>A bearing ring seen from the side.</summary>
    public TermPen Ring()
    {
        svg.Circle("metal", 80, 55, 46);
        svg.Circle("bore", 80, 55, 30);
        return this;
    }

    /// <summary>Two dogs in mesh, seen from outside: each leans over so that they pull together.</summary>
    public TermPen Dogs() => Metal("M8 88H152V104H8Z").Metal("M48 88L42 40H96L90 88Z").Ghost("M100 46L94 18H150L144 46");

    /// <summary>A selector fork.</summary>
    public TermPen Fork() => Metal("M72 8H88V34C118 38 132 60 130 100H112C114 70 104 52 80 52C56 52 46 70 48 100H30C28 60 42 38 72 34Z");

    /// <summary>A dog ring seen from the side, its dogs outward.</summary>
    public TermPen DogRing()
    {
        foreach (var angle in Enumerable.Range(0, 6).Select(i => i * 60))
        {
            svg.Open("path", "metal").With("d", "M70 4H90V24H70Z").With("transform", FormattableString.Invariant($"rotate({angle} 80 55)")).Close();
        }

        svg.Circle("metal", 80, 55, 38);
        svg.Circle("bore", 80, 55, 22);
        return this;
    }

    /// <summary>A friction plate seen from the side, its tabs outward.</summary>
    public TermPen Plate()
    {
        foreach (var angle in Enumerable.Range(0, 4).Select(i => i * 90))
        {
            svg.Open("path", "metal").With("d", "M72 4H88V18H72Z").With("transform", FormattableString.Invariant($"rotate({angle} 80 55)")).Close();
        }

        svg.Circle("metal", 80, 55, 43);
        svg.Circle("bore", 80, 55, 25);
        return this;
    }

    /// <summary>Splines of a hub in section, laid flat.</summary>
    public TermPen Splines() => Metal("M8 100V60H28V36H52V60H76V36H100V60H124V36H148V60H152V100Z");

    private TermPen Shape(string cssClass, string data)
    {
        svg.Path(cssClass, data);
        return this;
    }
}
