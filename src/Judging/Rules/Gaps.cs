using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Judging.Rules;

/// <summary>The two gaps the trade knows: what a froglet gets through, and what a feeder fly does.</summary>
public static class Gaps
{
    /// <summary>Largest gap where froglets live.</summary>
    public static readonly Figure Froglet = Figure.Given(
        "largest gap where froglets live",
        0.002,
        Unit.Millimeter,
        Citation.Habit("froglets and crew get through more than 2 mm")
    );

    /// <summary>Largest opening that holds small wingless flies back.</summary>
    public static readonly Figure Fly = Figure.Given(
        "largest opening that holds small flies back",
        0.0006,
        Unit.Millimeter,
        Citation.Habit("0.5 to 0.6 mm hold small wingless flies back, 1.2 mm does not")
    );

    /// <summary>Half a micrometer, so that a typed limit is inside it.</summary>
    public const double Slack = 1e-9;
}
