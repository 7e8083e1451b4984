using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Climate;

namespace Litterfall.Running.Correcting;

/// <summary>An input that nobody measured, with what is known of it before any reading.</summary>
public sealed record UncertainInput
{
    /// <summary>Key, for code.</summary>
    public required string Key { get; init; }

    /// <summary>Name in plain words.</summary>
    public required string Name { get; init; }

    /// <summary>Unit of what is told.</summary>
    public required string Unit { get; init; }

    /// <summary>What is told for a factor of 1; 1 where the input itself is told.</summary>
    public double Scale { get; init; } = 1;

    /// <summary>Least that is expected, 5 of 100 times less.</summary>
    public required double Low { get; init; }

    /// <summary>Most that is expected, 5 of 100 times more.</summary>
    public required double High { get; init; }

    /// <summary>True for a factor, which is normal in its logarithm.</summary>
    public required bool IsFactor { get; init; }

    /// <summary>Puts a value into a change.</summary>
    public required Func<ClimateChange, double, ClimateChange> Put { get; init; }

    // The standard normal number below which 95 of 100 lie.
    private const double Ninety = 1.6448536269514722;

    /// <summary>The value for a standard normal number.</summary>
    public double Value(double standard) =>
        IsFactor
            ? Math.Sqrt(Low * High) * Math.Exp(standard * Math.Log(High / Low) / (2 * Ninety))
            : (0.5 * (Low + High)) + (standard * (High - Low) / (2 * Ninety));
}

/// <summary>The inputs that readings of a tank may correct.</summary>
public static class UncertainInputs
{
    /// <summary>Those that count for a design, in a fixed order.</summary>
    /// <param name="design">The design.</param>
    /// <param name="hasReservoir">True where it has a drainage layer.</param>
    public static ImmutableArray<UncertainInput> From(CheckedDesign design, bool hasReservoir)
    {
        var inputs = ImmutableArray.CreateBuilder<UncertainInput>();
        if (design.Design.Headspace is { Hold: { } hold })
        {
            inputs.Add(Held(3600 * hold.AirChanges.Si));
        }
        else
        {
            inputs.Add(Known(0, "vents", "air the vents exchange", (c, v) => c with { AirFlow = v }));
            inputs.Add(Known(1, "convection", "air moving inside", (c, v) => c with { Convection = v }));
            if (design.Design.Lamps.Count > 0)
            {
                inputs.Add(Known(2, "lampHeat", "heat of the lamps", (c, v) => c with { LampHeat = v }));
            }
        }

        inputs.Add(Known(RoomAt, "room", "room warmer than typed", (c, v) => c with { RoomKelvin = v }));
        inputs.Add(Known(4, "roomVapor", "moisture of the room's air", (c, v) => c with { RoomVapor = v }));
        if (design.Design.Misting is { } misting)
        {
            var each = Unit.MilliliterPerMinute.FromSi(misting.Each.Si);
            var known = Known(5, "nozzle", "nozzle output", (c, v) => c with { Mist = v });
            inputs.Add(each > 0 ? known with { Scale = each, Unit = "mL/min" } : known);
        }

        AddSoil(inputs, design.Design.Start is null);
        if (hasReservoir)
        {
            inputs.Add(Pores);
        }

        return inputs.ToImmutable();
    }

    private static void AddSoil(ImmutableArray<UncertainInput>.Builder inputs, bool isFresh)
    {
        inputs.Add(
            Known(6, "conductivity", "how fast the mix drains", (c, v) =>
                c with
                {
                    Soil = c.Soil with { Conductivity = v },
                }
            )
        );
        inputs.Add(
            Known(7, "alpha", "coarseness of the mix", (c, v) => c with { Soil = c.Soil with { Alpha = v } })
        );
        if (isFresh)
        {
            inputs.Add(
                Known(8, "squeeze", "water in the fresh mix, over the usual", (c, v) =>
                    c with
                    {
                        Soil = c.Soil with { Squeeze = v },
                    }
                )
            );
        }
    }

    private static UncertainInput Known(
        int at,
        string key,
        string name,
        Func<ClimateChange, double, ClimateChange> put
    )
    {
        var range = ClimateEnsemble.Inputs[at];
        return new()
        {
            Key = key,
            Name = name,
            Unit =
                range.IsFactor ? Times
                : at == RoomAt ? "K"
                : "m3/m3",
            Low = range.Low,
            High = range.High,
            IsFactor = range.IsFactor,
            Put = put,
        };
    }

    private const string Times = "times as designed";
    private const int RoomAt = 3;

    private static UncertainInput Held(double perHour) =>
        new()
        {
            Key = "heldAir",
            Name = "air changes",
            Unit = "per hour",
            Scale = perHour,
            Low = CorrectionPolicy.HeldAirLow.Value,
            High = CorrectionPolicy.HeldAirHigh.Value,
            IsFactor = true,
            Put = (c, v) => c with { HeldAir = v },
        };

    private static readonly UncertainInput Pores = new()
    {
        Key = "pores",
        Name = "room for water in the drainage layer",
        Unit = Times,
        Low = CorrectionPolicy.PoresLow.Value,
        High = CorrectionPolicy.PoresHigh.Value,
        IsFactor = true,
        Put = (c, v) => c with { Soil = c.Soil with { DrainagePores = v } },
    };
}
