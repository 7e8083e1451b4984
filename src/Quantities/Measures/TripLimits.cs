using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Measures;

/// <summary>
/// At which current a device must cut the power to protect a person: the practice of two regions. Local code
/// and a licensed electrician decide.
/// </summary>
public static class TripLimits
{
    /// <summary>A class A device may trip from here, mA.</summary>
    public const double Least = 4;

    /// <summary>European practice: a residual-current device of 30 mA or less.</summary>
    public static Figure Europe { get; } =
        Figure.Given(
            "largest trip current",
            0.03,
            Unit.Milliampere,
            new Citation(
                "iec-60364-4-41",
                "recalled: additional protection by residual-current devices of 30 mA at most; some codes "
                    + "ask for less",
                Provenance.Recalled
            )
        );

    /// <summary>Practice of the United States: a class A ground-fault device trips at 4 to 6 mA.</summary>
    public static Figure UnitedStates { get; } =
        Figure.Given(
            "largest trip current of a class A ground-fault device",
            0.006,
            Unit.Milliampere,
            new Citation(
                "ul-943",
                "recalled: class A trips at 4 to 6 mA and protects people; 30 mA devices protect equipment",
                Provenance.Recalled
            )
        );

    /// <summary>True for a reader of the United States: the box was typed in inches or feet.</summary>
    /// <param name="design">The design.</param>
    public static bool IsUnitedStates(Design design) => Imperial.IsUsed(design);

    /// <summary>What to feed the parts through, both regions in words, the reader's own first.</summary>
    /// <param name="isUnitedStates">True for a reader of the United States.</param>
    public static string Feed(bool isUnitedStates) =>
        isUnitedStates
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"Feed every part through a class A ground-fault device, which trips at {Least:0} to "
                    + $"{UnitedStates.Value:0} mA; {Europe.Value:0} mA devices are the European "
                    + $"residual-current class and protect equipment in the US."
            )
            : string.Create(
                CultureInfo.InvariantCulture,
                $"Feed every part through a residual-current (ground-fault) device of {Europe.Value:0} mA or "
                    + $"less; in the US a class A device, which trips at {Least:0} to "
                    + $"{UnitedStates.Value:0} mA, protects people."
            );
}
