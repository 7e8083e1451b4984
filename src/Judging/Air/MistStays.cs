using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Judging.Rules;
using Litterfall.Physics;

namespace Litterfall.Judging.Air;

/// <summary>
/// More is misted than the air takes even where most of it is exchanged, and nothing drains: no setting of
/// the
/// vents as they are balances it.
/// </summary>
internal static class MistStays
{
    public static readonly Rule Rule = new(
        "mist-cannot-be-balanced",
        Protects.Build,
        FormattableString.Invariant(
            $"more is misted than the air takes even at {MostFlow():0.#} times the air "
        ) + "computed, and there is no drain",
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Levers = LeverReach.Air,
    };

    private static double MostFlow() =>
        ModelCoefficients.Cited.First(c => c.Key == "headspace.airFlow").Range!.Value.High;

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (
            n.Climate is not { Computed: { } climate, Vented: { High: { } most } }
            || n.Design.Design.Drain is not null
            || climate.Days.Misted <= Constants.WaterDensity * most.Si
        )
        {
            yield break;
        }

        var misted = Seasons.Number(
            n,
            climate.Seasons[0],
            "water misted a day",
            climate.Days.Misted / Constants.WaterDensity,
            Unit.Milliliter
        );
        bool isNear = misted.Si <= (1 + ModelError.WaterShare) * most.Si;
        yield return Rule.Found(
            isNear ? Severity.Note : Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{misted.Value:0} mL are misted a day; ventilation removes {most.Value:0} mL at most, "
                    + $"and nothing drains: "
                    + $"the rest stays in the floor."
            ) + ModelError.Words(isNear),
            (misted, most),
            "Mist less, open a vent, or give the floor a drain.",
            Controls.Mist(n.Design.Design)
        );
    }
}
