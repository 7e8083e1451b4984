using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Physics.Hygiene;

namespace Litterfall.Quantities.Hygiene;

/// <summary>A bleach dip for hardy plants, from the strength on the product's own label.</summary>
/// <param name="Label">Sodium hypochlorite on the label.</param>
/// <param name="Bath">Volume of the bath.</param>
/// <param name="ProductMilliliters">Bleach to add to the water.</param>
/// <param name="WaterLiters">Water.</param>
/// <param name="Strength">Sodium hypochlorite in the bath.</param>
/// <param name="ChlorineMgPerLiter">The same as chlorine.</param>
/// <param name="OverDose">Strength over the dose that kills the frog chytrid in 30 s.</param>
/// <param name="Ranavirus">What trials say of the dip of hardy plants, 5 minutes, against ranavirus.</param>
/// <param name="RanavirusSoft">The same of soft plants: half the bleach, 1 minute.</param>
public sealed record PlantDip(
    Figure Label,
    Figure Bath,
    Figure ProductMilliliters,
    Figure WaterLiters,
    Figure Strength,
    Figure ChlorineMgPerLiter,
    Figure OverDose,
    DoseVerdict Ranavirus,
    DoseVerdict RanavirusSoft
)
{
    /// <summary>Time of the trials in which the frog chytrid was killed, s.</summary>
    public const double ChytridSeconds = 30.0;

    private const double HardySeconds = 300.0;
    private const double SoftSeconds = 60.0;

    /// <summary>Time of hardy plants in the bath, min.</summary>
    public const double HardyMinutes = HardySeconds / 60;

    /// <summary>Time of soft plants in the bath, min.</summary>
    public const double SoftMinutes = SoftSeconds / 60;

    private static readonly Figure ProductShare = Figure.Given(
        "bleach product in the bath",
        0.05,
        Unit.Percent,
        Citation.Habit("keepers' dip of 1 part product and 19 parts water")
    );

    /// <summary>Half the bath's bleach, for soft leaves.</summary>
    public static readonly Figure SoftShare = Figure.Given(
        "share of the bleach for soft leaves",
        0.5,
        Unit.Percent,
        Citation.Habit("dips of plants: soft leaves take half the bleach, for a shorter time")
    );

    /// <summary>Sodium hypochlorite that kills the frog chytrid in 30 s.</summary>
    public static readonly Figure ChytridDose = Figure.Given(
        "dose that kills the frog chytrid in 30 s",
        DisinfectionDose.Chytrid.LeastStrengthPercent(ChytridSeconds)!.Value / 100.0,
        Unit.Percent,
        new Citation("becker-gratwicke-2017", "abstract: 0.12 % sodium hypochlorite, 30 s", Provenance.Read)
    );

    private static readonly Citation Arithmetic = new(
        "own-derivation",
        "dilution arithmetic, c1 v1 = c2 v2",
        Provenance.Recomputed
    );

    /// <summary>The dip; null when no label strength was entered.</summary>
    public static PlantDip? Of(CheckedDesign design)
    {
        if (design.Design.Hygiene?.Bleach is not { } typed)
        {
            return null;
        }

        var label = design.Figure("hygiene.bleach", "label strength of the bleach", typed, Unit.Percent);
        var bath = design.Design.Hygiene.Bath is { } b
            ? design.Figure("hygiene.bath", "volume of the bath", b, Unit.Liter)
            : Bucket;
        return From(label, bath);
    }

    /// <summary>The bath while nobody says another one.</summary>
    public static readonly Figure Bucket = Figure.Choice("volume of the bath", 10, Unit.Liter, "a bucket");

    /// <summary>The dip of a label and a bath.</summary>
    /// <param name="label">Sodium hypochlorite on the label.</param>
    /// <param name="bath">Volume of the bath.</param>
    public static PlantDip From(Figure label, Figure bath)
    {
        var strength = (label * ProductShare).As("strength of the dip", Unit.Percent, Arithmetic);
        var chlorine = Chlorine.ChlorineMilligramsPerLiter(strength.Value);
        return new PlantDip(
            label,
            bath,
            (bath * ProductShare).As("bleach product", Unit.Milliliter, Arithmetic),
            (bath * (Figure.Number(1) - ProductShare)).As("water of the bath", Unit.Liter, Arithmetic),
            strength,
            Figure
                .Computed(
                    "strength × 10 000 × 70.906 ÷ 74.44",
                    chlorine * 1e-3,
                    Unit.MilligramPerLiter.Dimension,
                    strength
                )
                .As("dip as chlorine", Unit.MilligramPerLiter, Arithmetic),
            (strength / ChytridDose).As("strength over the dose", Unit.One, Arithmetic),
            DisinfectionDose.Ranavirus.Judge(ProductShare.Value, HardySeconds),
            DisinfectionDose.Ranavirus.Judge(ProductShare.Value * SoftShare.Si, SoftSeconds)
        );
    }
}
