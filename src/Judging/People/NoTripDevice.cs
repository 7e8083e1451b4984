using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.People;

/// <summary>Electricity beside water needs a device that trips.</summary>
internal static class NoTripDevice
{
    public static readonly Rule Rule = new(
        "no-trip-device",
        Protects.Person,
        "lamps, misting or heating run and no residual-current device is entered, or one that "
            + "trips above 30 mA",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            DesignFix.From(
                "a residual-current device of 30 mA",
                DesignEdits.Set(design.Document, "electrics.trip", "30 mA")
            ),
    };

    private static readonly Figure MostTrip = Figure.Given(
        "largest trip current",
        0.03,
        Unit.Milliampere,
        new Citation(
            "iec-60364-4-41",
            "recalled: additional protection by residual-current devices of 30 mA at most; some "
                + "codes ask for less",
            Provenance.Recalled
        )
    );

    private const string Defer = "The local code and a licensed electrician decide.";

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (!Devices.Any(n))
        {
            yield break;
        }

        if (n.Design.Design.Electrics?.Trip is not { } typed)
        {
            yield return Rule.Found(
                Severity.Caution,
                $"{Devices.Listed(n)} run beside water, and no residual-current (ground-fault) "
                    + $"device is entered.",
                (null, MostTrip),
                $"Feed them through a device that trips at 30 mA or less, give every cable a drip "
                    + $"loop, and write electrics: {{ trip: 30 mA, dripLoops: true }}. {Defer}",
                "electrics.trip"
            );
            yield break;
        }

        var trip = n.Design.Figure("electrics.trip", "trip current", typed, Unit.Milliampere);
        if (trip.Si > MostTrip.Si + 1e-9)
        {
            yield return Rule.Found(
                Severity.Stop,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The residual-current device trips at {trip.Value:0.#} mA; above "
                        + $"{MostTrip.Value:0} mA it does not save a person."
                ),
                (trip, MostTrip),
                $"Take a device of 30 mA or less. {Defer}",
                "electrics.trip"
            );
        }
    }
}
