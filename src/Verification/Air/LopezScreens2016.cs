using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// López, A., Molina-Aiz, F. D., Valera, D. L. and Peña, A. 2016, Sensors 16:690 (abstract read):
/// discharge coefficients of three insect screens at 0.25 m/s. The thickness of the threads follows
/// from their number and the open share, (1 - n d)(1 - m d).
/// </summary>
public static class LopezScreens2016
{
    private static readonly CaseSource Source = new(
        "Air",
        "López, Molina-Aiz, Valera and Peña 2016, insect screens in a wind tunnel",
        Evidence.PrintedText,
        Provenance.Read
    );

    /// <summary>The cases.</summary>
    /// <returns>Discharge coefficients.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        (int Across, int Along, double Open, double Discharge)[] screens =
        [
            (10, 20, 0.350, 0.207),
            (13, 30, 0.263, 0.151),
            (10, 20, 0.360, 0.325),
        ];
        foreach (var (across, along, open, discharge) in screens)
        {
            yield return Source.Case(
                $"discharge coefficient of {across} by {along} threads per cm, {100.0 * open} % open",
                "1",
                CaseSource.Within(0.29, discharge),
                "The law knows threads and open share alone.",
                () => Discharge(across, along, open)
            ) with
            {
                Spread = "two screens of the same threads, 35 and 36 % open, measured 0.207 and 0.325",
            };
        }
    }

    private const double Speed = 0.25;
    private const double AirDensity = 1.2;

    private static double Discharge(int across, int along, double open)
    {
        double both = across + along;
        double product = across * along;
        double centimeters =
            (both - Math.Sqrt((both * both) - (4.0 * product * (1.0 - open)))) / (2.0 * product);
        double wire = centimeters / 100.0;
        double share = Math.Sqrt(open);
        double resistance = AirOpening.WovenMesh(wire * share / (1.0 - share), wire);
        double kinetic = Speed / AirOpening.SharpEdges;
        double pressure = (resistance * Speed) + (0.5 * AirDensity * kinetic * kinetic);
        return Speed * Math.Sqrt(0.5 * AirDensity / pressure);
    }
}
