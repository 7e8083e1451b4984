using Litterfall.Domain.Figures;
using Litterfall.Physics.Light;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Optical data of ESP-r, single clear glass of 4 mm, entry "SC_8985_04nb" (data file read): sunlight
/// through and taken at five angles, index 1.52. Angles 0, 40, 55, 70 and 80° as its manual has them
/// (recalled). The extinction follows from what the pane takes straight on, 10.6 %: ours of all sunlight,
/// not of visible light.
/// </summary>
public static class EspRPanes
{
    private static readonly CaseSource Source = new(
        "Light",
        "ESP-r, optical data of clear glass of 4 mm",
        Evidence.PrintedTable,
        Provenance.Read
    );

    private static readonly PaneOptics Pane = PaneOptics.Single(0.004, 1.52, 27.9);

    /// <summary>The cases.</summary>
    /// <returns>Light through and taken by angle.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (double Degrees, double Through, double Taken)[] rows =
        [
            (0.0, 0.819, 0.106),
            (40.0, 0.802, 0.116),
            (55.0, 0.761, 0.124),
            (70.0, 0.621, 0.129),
            (80.0, 0.376, 0.125),
        ];
        foreach (var (degrees, through, taken) in rows)
        {
            double cosine = Math.Cos(degrees * Math.PI / 180.0);
            const string Reason = "The program behind the data smooths its curves: 0.01.";
            yield return Source.Case($"through at {degrees}°", "1", (through, 0.01), Reason, () =>
                Pane.Exact(cosine).Transmitted
            );
            yield return Source.Case($"taken at {degrees}°", "1", (taken, 0.01), Reason, () =>
                Pane.Exact(cosine).Absorbed
            );
        }
    }
}
