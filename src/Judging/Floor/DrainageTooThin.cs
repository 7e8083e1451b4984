using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Floor;

/// <summary>A thin reservoir is full before anyone looks.</summary>
internal static class DrainageTooThin
{
    private static readonly Figure Least = Figure.Given(
        "least drainage",
        0.03,
        Unit.Centimeter,
        Citation.Habit("below 3 cm a drainage layer is not worth having")
    );

    private static readonly Figure LeastMisted = Figure.Given(
        "least drainage under a misting system",
        0.04,
        Unit.Centimeter,
        Citation.Habit("4 to 5 cm of drainage under automatic misting")
    );

    private const double Usual = 0.05;

    public static readonly Rule Rule = new(
        "drainage-too-thin",
        Protects.Build,
        FormattableString.Invariant(
            $"the drainage layer is under {Least.Value:0.##} cm, or under {LeastMisted.Value:0.##} cm "
        ) + "below a misting system",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            design.Document.Design.Floor.Drainage?.Depth is null
                ? null
                : DesignFix.From(
                    FormattableString.Invariant($"{Usual * 100:0.#} cm of drainage"),
                    FixEdit.Length(design.Document, "floor.drainage.depth", Usual)
                ),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var misted = n.Design.Design.Misting is not null;
        var least = misted ? LeastMisted : Least;
        var drainage = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage);
        if (drainage is not null && drainage.Depth.Si < least.Si - Gaps.Slack)
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The drainage layer is {drainage.Depth.Value:0.#} cm deep; "
                        + $"{(misted ? "under a misting system" : "to be worth having")} it needs "
                        + $"{least.Value:0} cm."
                ),
                (drainage.Depth, least),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Make it {(least.Si - drainage.Depth.Si) * 100:0.#} cm deeper, or build without one."
                ),
                "floor.drainage.depth"
            );
        }
    }
}
