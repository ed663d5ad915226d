namespace Layshaft.Site.Charts;

/// <summary>The outline of a grade mark. Each differs in shape and in how heavily it is filled: grey print keeps them apart.</summary>
public enum GradeShape
{
    /// <summary>An open circle: goes back in.</summary>
    Circle,

    /// <summary>A tinted triangle, point up like a warning sign: goes back in and is watched.</summary>
    Triangle,

    /// <summary>A solid square: is renewed.</summary>
    Square,
}

/// <summary>The mark of a grade: shape, letter and name, so that none depends on colour.</summary>
/// <param name="Shape">The outline.</param>
/// <param name="Letter">One letter inside it, for example U (use again), W (watch), N (new part).</param>
/// <param name="Name">The grade in words, read aloud.</param>
public sealed record GradeMark(GradeShape Shape, string Letter, string Name);
