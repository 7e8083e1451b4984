using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Fittings;

/// <summary>A strong mat bakes the soil above it.</summary>
internal static class HeatMatTooStrong
{
    private static readonly Figure OnMat = Figure.Given(
        "most power per area of the mat",
        200,
        Unit.WattPerSquareMeter,
        new Citation(
            "own-derivation",
            "100 W per m2 of the floor, all of it from a mat under half of the floor",
            Provenance.Recomputed
        )
    );

    private static readonly Figure OnFloor = Figure.Given(
        "most power per area of the whole floor",
        100,
        Unit.WattPerSquareMeter,
        new Citation(
            "floor-heating-article",
            "about 100 W per m2 of the whole floor, such as 27 W for 60 x 45 cm, under half of it at most",
            Provenance.CommonPractice
        )
    );

    public static readonly Rule Rule = new(
        "heat-mat-too-strong",
        Protects.Animal,
        FormattableString.Invariant(
            $"the heat mat gives over {OnMat.Value:0} W/m² of its own area, or over {OnFloor.Value:0} W "
        ) + "for each m² of the whole floor",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        var floor = HeatMat.Floor(n);
        if (n.Design.Design.Heating is not { } heating || floor.Si <= 0)
        {
            yield break;
        }

        var watts = n.Design.Figure("heating.watts", "power of the heat mat", heating.Watts, Unit.Watt);
        var cover = HeatMat.Cover(n, heating);
        var onFloor = (watts / floor).As("power per area of the floor", Unit.WattPerSquareMeter);
        var onMat =
            cover.Si <= 0
                ? onFloor
                : (onFloor / cover).As("power per area of the mat", Unit.WattPerSquareMeter);
        var (measured, limit, what) =
            onMat.Si > OnMat.Si + 1e-9
                ? (onMat, OnMat, "its own area")
                : (onFloor, OnFloor, "the whole floor");
        if (measured.Si > limit.Si + 1e-9)
        {
            var most = Math.Min(OnFloor.Si * floor.Si, OnMat.Si * floor.Si * (cover.Si <= 0 ? 1 : cover.Si));
            yield return Rule.Found(
                n.WithAnimals(Severity.Caution, Severity.Note),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The heat mat gives {measured.Value:0} W/m² of {what}; advice is to stay below "
                        + $"{limit.Value:0}."
                ),
                (measured, limit),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Take a mat of {Math.Floor(most):0} W or less, with a thermostat."
                ),
                "heating.watts"
            );
        }
    }
}
