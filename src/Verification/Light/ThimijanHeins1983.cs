using Litterfall.Domain.Figures;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Light;

/// <summary>
/// Thimijan and Heins 1983, HortScience 18:818: lux for a micromole (read as three pages quote it); and the
/// same of Deitzer 1994, Spectral comparison of sunlight and different lamps (read as a list of mail quotes
/// it).
/// </summary>
public static class ThimijanHeins1983
{
    private static readonly CaseSource Source = new(
        "Light",
        "Thimijan and Heins 1983",
        Evidence.PrintedTable,
        Provenance.Read
    );

    private static readonly CaseSource Workshop = Source with { Name = "Deitzer 1994, sunlight and lamps" };

    /// <summary>The cases.</summary>
    /// <returns>Daylight and filament.</returns>
    public static IEnumerable<VerificationCase> Cases()
    {
        yield return Source.Case(
            $"sun and sky, by D65",
            "lx s/µmol",
            (54.0, 2.2),
            "Two digits; D65 is bluer than the sun with its sky: 4 %.",
            () => 1000.0 / CieIlluminants.DaylightPerKilolumen()
        );
        yield return Source.Case(
            $"incandescent, by illuminant A",
            "lx s/µmol",
            (50.0, 1.0),
            "Two digits, and the temperature of the filament.",
            () => 1000.0 / CieIlluminants.FilamentPerKilolumen()
        );
        yield return Workshop.Case(
            $"sunlight, by D65",
            "lx s/µmol",
            CaseSource.Within(0.07, 55.18),
            "D65 is bluer than the sun with its sky.",
            () => 1000.0 / CieIlluminants.DaylightPerKilolumen()
        );
        yield return Workshop.Case(
            $"incandescent behind acrylic, by illuminant A",
            "lx s/µmol",
            CaseSource.Within(0.03, 49.0),
            "Temperature of the filament, and the pane.",
            () => 1000.0 / CieIlluminants.FilamentPerKilolumen()
        );
    }
}
