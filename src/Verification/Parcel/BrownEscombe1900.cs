using Litterfall.Domain.Figures;
using Litterfall.Physics.Parcel;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Parcel;

/// <summary>
/// Brown, H. T. and Escombe, F. 1900, Philosophical Transactions of the Royal Society B 193:223-291: a hole
/// in a thin wall passes by its width; a tube acts longer than it is.
/// </summary>
/// <remarks>
/// Solved a second time from the disk in still gas (Weber 1873: a disk of radius r takes up 4 D r of a
/// difference of 1): two half spaces in series with a tube, 1/(2 · 1/(4 D r) + l/(π r² D)).
/// </remarks>
public static class BrownEscombe1900
{
    private const double Diffusivity = 2.5e-5;
    private static readonly CaseSource Source = new(
        "Parcel",
        "Brown and Escombe 1900, diffusion through holes",
        Evidence.ClosedForm,
        Provenance.Recalled
    );

    /// <summary>The cases.</summary>
    /// <returns>Conductances.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (int Count, double Millimeters, double Deep)[] rows =
        [
            (1, 1.0, 0.0),
            (1, 2.0, 0.0),
            (6, 1.0, 0.5),
            (10, 0.8, 1.0),
            (4, 6.0, 25.0),
        ];
        foreach (var (count, width, deep) in rows)
        {
            yield return Source.Case(
                $"{count} of {width} mm, {deep} mm deep",
                "mm³/s",
                CaseSource.Within(1e-12, 1e9 * Series(count, width / 1e3, deep / 1e3)),
                "Rounding.",
                () => 1e9 * new VentHoles(count, width / 1e3, deep / 1e3).Conductance(Diffusivity)
            );
        }

        yield return Source.Case(
            $"hole of 2 mm over hole of 1 mm in a thin wall",
            "1",
            (2.0, 1e-12),
            "By width, not by area.",
            () =>
                new VentHoles(1, 2e-3, 0.0).Conductance(Diffusivity)
                / new VentHoles(1, 1e-3, 0.0).Conductance(Diffusivity)
        );
    }

    private static double Series(int count, double width, double deep)
    {
        double radius = 0.5 * width;
        double end = 1.0 / (4.0 * Diffusivity * radius);
        double tube = deep / (Math.PI * radius * radius * Diffusivity);
        return count / (end + tube + end);
    }
}
