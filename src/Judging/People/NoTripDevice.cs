using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Measures;

namespace Litterfall.Judging.People;

/// <summary>Electricity beside water needs a device that trips.</summary>
internal static class NoTripDevice
{
    public static readonly Rule Rule = new(
        "no-trip-device",
        Protects.Person,
        FormattableString.Invariant(
            $"lamps, misting or heating run and no ground-fault (residual-current) device is entered, or one "
        )
            + FormattableString.Invariant($"that trips above {TripLimits.Europe.Value:0} mA; in a design in ")
            + FormattableString.Invariant($"inches a caution above {TripLimits.UnitedStates.Value:0} mA"),
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) => Device(design.Document),
    };

    private const string Defer = "The local code and a licensed electrician decide.";

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (!Devices.Any(n))
        {
            yield break;
        }

        bool isUnitedStates = TripLimits.IsUnitedStates(n.Design.Design);
        var most = isUnitedStates ? TripLimits.UnitedStates : TripLimits.Europe;
        var typed = n.Design.Design.Electrics?.Trip;
        if (typed is null)
        {
            yield return Rule.Found(
                Severity.Caution,
                $"{Devices.Listed(n)} run beside water, and no ground-fault (residual-current) device is "
                    + "entered.",
                (null, most),
                $"{TripLimits.Feed(isUnitedStates)} Give every cable a drip loop, and enter both. {Defer}",
                "electrics.trip"
            );
            yield break;
        }

        var trip = n.Design.Figure("electrics.trip", "trip current", typed.Value, Unit.Milliampere);
        if (trip.Si <= most.Si + 1e-9)
        {
            yield break;
        }

        bool isFar = trip.Si > TripLimits.Europe.Si + 1e-9;
        yield return Rule.Found(
            isFar ? Severity.Stop : Severity.Caution,
            isFar
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"The ground-fault device trips at {trip.Value:0.#} mA; above "
                        + $"{TripLimits.Europe.Value:0} mA it is not made to save a person."
                )
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"The ground-fault device trips at {trip.Value:0.#} mA. In the US class A devices, "
                        + $"which trip at {TripLimits.Least:0} to {most.Value:0} mA, protect people; "
                        + $"{TripLimits.Europe.Value:0} mA is the European class, there used for equipment."
                ),
            (trip, isFar ? TripLimits.Europe : most),
            $"{TripLimits.Feed(isUnitedStates)} {Defer}",
            "electrics.trip"
        );
    }

    /// <summary>A device, and the drip loops that go with it where they are not entered.</summary>
    private static DesignFix? Device(DesignDocument document)
    {
        var isUnitedStates = TripLimits.IsUnitedStates(document.Design);
        var milliamperes = isUnitedStates
            ? (TripLimits.Least + TripLimits.UnitedStates.Value) / 2
            : TripLimits.Europe.Value;
        var with = DesignEdits.Set(
            document,
            "electrics.trip",
            FormattableString.Invariant($"{milliamperes:0.#} mA")
        );
        var words = isUnitedStates
            ? FormattableString.Invariant(
                $"a class A ground-fault device, which trips at {TripLimits.Least:0} to "
            ) + FormattableString.Invariant($"{TripLimits.UnitedStates.Value:0} mA")
            : FormattableString.Invariant($"a residual-current device of {TripLimits.Europe.Value:0} mA");
        return document.Design.Electrics is { DripLoops: true } || with.Value is not { } so
            ? DesignFix.From(words, with)
            : DesignFix.From(
                $"{words}, and a drip loop in every cable",
                DesignEdits.Set(so, "electrics.dripLoops", "true")
            );
    }
}
