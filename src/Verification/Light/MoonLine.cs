using Litterfall.Domain.Figures;
using Litterfall.Physics.Light;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// A tube as a diffuse line (Moon, recalled): 0.55 m, 1350 lm, 0.40 m over the plane; and a plane beside its
/// end.
/// </summary>
public static class MoonLine
{
    private static readonly CaseSource Source = new(
        "Light",
        "Moon, The Scientific Basis of Illuminating Engineering",
        Evidence.ClosedForm,
        Provenance.Recalled
    );

    private static readonly Luminaire Tube = Luminaire.Line(
        new Point3(1.725, 2.0, 0.40),
        new Point3(2.275, 2.0, 0.40),
        1350.0
    );

    /// <summary>The cases.</summary>
    /// <returns>Illuminances.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        const string Reason = "Closed form; digits printed.";
        (double Along, double Across, double Lux)[] rows =
        [
            (0.0, 0.0, 664.7253),
            (0.0, 0.15, 559.8518),
            (0.20, 0.15, 457.7761),
            (0.275, 0.0, 440.7154),
            (0.40, 0.0, 275.6928),
        ];
        foreach (var (along, across, lux) in rows)
        {
            yield return Source.Case(
                $"level light {along} m along, {across} m across",
                "lx",
                CaseSource.Within(1e-3, lux),
                Reason,
                () => PanelScene.Under(Tube, along, across)
            );
        }

        yield return Source.Case(
            $"plane square to the tube at its end, 0.30 m beside",
            "lx",
            CaseSource.Within(1e-3, 319.4521),
            Reason,
            () =>
                PanelScene.At(
                    PanelScene.Space(),
                    Tube,
                    new Receiver(new Point3(2.275, 2.30, 0.40), new Point3(-1.0, 0.0, 0.0))
                )
        );
    }
}
