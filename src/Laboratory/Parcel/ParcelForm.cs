using System.Collections.Immutable;
using Litterfall.Domain.Trees;
using Litterfall.Physics.Air;
using Litterfall.Physics.Parcel;

namespace Litterfall.Laboratory.Parcel;

/// <summary>Reads a case of <c>lab parcel</c>.</summary>
public static class ParcelForm
{
    /// <summary>Ten years, as the other parts.</summary>
    private const double MostHours = 87_660.0;
    private const double SecondsPerHour = 3600.0;
    private const double MetersPerCm = 0.01;
    private const double MetersPerMm = 0.001;
    private const double JoulesPerKilojoule = 1000.0;
    private const double KilogramsPerGram = 0.001;
    private static readonly ImmutableArray<string> Kinds = ["phaseChange", "heat", "iron"];
    private static readonly NumberRange Side = new(1.0, 1000.0);
    private static readonly NumberRange Celsius = new(-100.0, 150.0);
    private static readonly NumberRange PackHours = new(0.5, 1000.0);
    private static readonly NumberRange Hours = NumberRange.Positive(MostHours);

    /// <summary>The checked case, or null and faults on the form.</summary>
    /// <param name="form">The form.</param>
    public static ParcelCase? Read(TreeForm form)
    {
        var shell = Shell(form);
        double kilograms = form.Number("contentsKgWater", new NumberRange(0.001, 10_000.0));
        double start = form.Number("startC", Celsius);
        var (times, values) = form.Points("ambient", Celsius, MostHours);
        var packs = form.OptionalObjects("packs", "a pack", ParcelModel.MostPacks);
        var stores = ImmutableArray.CreateBuilder<PhaseStore>();
        var heats = ImmutableArray.CreateBuilder<TimeCurve>();
        var iron = ImmutableArray.CreateBuilder<IronPack>();
        foreach (var pack in packs)
        {
            Kind(pack);
            Phase(pack, stores);
            Heat(pack, heats, iron);
            pack.Close();
        }

        double hours = form.Number("hours", Hours);
        var band = Band(form);
        var air = ParcelAirForm.Read(form, iron.ToImmutable());
        form.Close();
        return form.IsGood
            ? new ParcelCase(shell, kilograms * MoistAir.LiquidHeatCapacity, start, hours)
            {
                Ambient = new TimeCurve([.. times.Select(h => h * SecondsPerHour)], [.. values]),
                Packs = stores.ToImmutable(),
                Heat = heats.Count > 0 ? TimeCurve.Sum([.. heats]) : TimeCurve.Zero,
                Band = band,
                Air = air,
            }
            : null;
    }

    private static CartonShell Shell(TreeForm form)
    {
        const string Sides = "three numbers: inside length, width and height in cm";
        var inside = form.Numbers("insideCm", Side, 3);
        if (form.IsGood && inside.Length != 3)
        {
            form.Refuse(
                "insideCm",
                FormattableString.Invariant($"insideCm has {inside.Length} numbers"),
                Sides
            );
        }

        double wall = form.Number("wallMm", NumberRange.UpTo(500.0));
        double conductivity = form.Number("wallWPerMK", new NumberRange(1e-4, 500.0));
        double films = form.Number("filmsM2KPerW", NumberRange.UpTo(100.0));
        if (wall == 0.0 && films == 0.0)
        {
            form.Refuse(
                "wallMm",
                "neither wall nor films resist the heat",
                "a wall above 0 mm, or films above 0"
            );
        }

        return inside.Length == 3
            ? new CartonShell(
                inside[0] * MetersPerCm,
                inside[1] * MetersPerCm,
                inside[2] * MetersPerCm,
                wall * MetersPerMm,
                conductivity,
                films
            )
            : default;
    }

    private static void Kind(TreeForm pack)
    {
        int kinds = Kinds.Count(pack.Has);
        if (kinds != 1)
        {
            pack.Refuse(
                kinds == 0 ? "the pack is of no kind" : "the pack is of several kinds at once",
                $"one of {string.Join(", ", Kinds)}"
            );
        }
    }

    private static void Phase(TreeForm pack, ImmutableArray<PhaseStore>.Builder stores)
    {
        if (pack.OptionalObject("phaseChange", "a phase-change pack") is { } phase)
        {
            stores.Add(
                new PhaseStore(
                    phase.Number("kg", NumberRange.Positive(1000.0)),
                    phase.Number("meltC", Celsius),
                    JoulesPerKilojoule * phase.Number("latentKJPerKg", NumberRange.Positive(5000.0)),
                    phase.Number("liquidFraction", NumberRange.UpTo(1.0))
                )
            );
            phase.Close();
        }
    }

    private static void Heat(
        TreeForm pack,
        ImmutableArray<TimeCurve>.Builder heats,
        ImmutableArray<IronPack>.Builder iron
    )
    {
        if (pack.OptionalObject("heat", "a heat pack") is { } heat)
        {
            double watts = heat.Number("watts", NumberRange.UpTo(10_000.0));
            heats.Add(TimeCurve.Block(watts, 0.0, SecondsPerHour * heat.Number("hours", Hours)));
            heat.Close();
        }

        if (pack.OptionalObject("iron", "an iron pack") is { } rust)
        {
            double kilograms = KilogramsPerGram * rust.Number("grams", NumberRange.Positive(10_000.0));
            var one = new IronPack(kilograms, SecondsPerHour * rust.Number("hours", PackHours));
            iron.Add(one);
            heats.Add(one.Power(0.0));
            rust.Close();
        }
    }

    private static (double, double)? Band(TreeForm form)
    {
        if (!form.Has("bandC"))
        {
            form.Ignore("bandC");
            return null;
        }

        var band = form.Numbers("bandC", Celsius, 2);
        if (form.IsGood && (band.Length != 2 || band[0] > band[1]))
        {
            form.Refuse("bandC", "bandC is no band", "two numbers, the lower first");
        }

        return band.Length == 2 ? (band[0], band[1]) : null;
    }
}
