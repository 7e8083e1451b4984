using System.Collections.Immutable;
using Litterfall.Domain.Trees;
using Litterfall.Physics.Parcel;

namespace Litterfall.Laboratory.Parcel;

/// <summary>Reads the vents and the cup of a case; both may be left out.</summary>
internal static class ParcelAirForm
{
    private const double CubicMetersPerLiter = 1e-3;
    private const double MetersPerMm = 1e-3;
    private const double Percent = 100.0;
    private static readonly NumberRange Width = new(0.1, 200.0);

    /// <summary>What is asked about the air.</summary>
    /// <param name="form">The case.</param>
    /// <param name="iron">Its heat packs that rust.</param>
    public static ParcelAir Read(TreeForm form, ImmutableArray<IronPack> iron)
    {
        var asked = new ParcelAir { Iron = iron };
        if (form.OptionalObject("vents", "the vents") is { } vents)
        {
            double leaks = vents.Number(
                "leaksPerHour",
                NumberRange.UpTo(100.0),
                ChamberAir.TapedCartonChangesPerHour
            );
            asked = asked with { Vents = Holes(vents), LeaksPerHour = leaks };
            vents.Close();
        }

        if (form.OptionalObject("cup", "the cup") is { } cup)
        {
            var animals = new AnimalBreath(
                cup.Number("animalGrams", new NumberRange(0.01, 1000.0)),
                cup.OptionalWhole("animals", 0, 1000) ?? 1,
                cup.Number("activity", new NumberRange(1.0, 20.0), AnimalBreath.UsualActivity)
            );
            double air = CubicMetersPerLiter * cup.Number("airLiters", NumberRange.Positive(100.0));
            double humidity = cup.Number("humidityAroundPercent", NumberRange.UpTo(100.0), 50.0) / Percent;
            asked = asked with { Cup = new CupAir(air, Holes(cup), animals), HumidityAround = humidity };
            cup.Close();
        }

        return asked;
    }

    private static VentHoles Holes(TreeForm form) =>
        new(
            form.Whole("holes", 0, 10_000),
            MetersPerMm * form.Number("holeMm", Width),
            MetersPerMm * form.Number("holeDepthMm", NumberRange.UpTo(500.0))
        );
}
