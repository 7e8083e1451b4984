using System.Collections.Immutable;
using Litterfall.Domain.Trees;
using Litterfall.Laboratory.Column;
using Litterfall.Physics;
using Litterfall.Physics.Air;

namespace Litterfall.Laboratory.Headspace;

/// <summary>The case of <c>lab headspace</c>: from the form to the forecast's own model.</summary>
public static class HeadspaceForm
{
    private const double GramsPerKilogram = 1000.0;
    private const double SecondsPerHour = LabUnits.SecondsPerHour;
    private const double LongestHours = 87_660.0; // ten years
    private const double MostSteps = 2e7;
    private const int MostMists = 200;
    private static readonly NumberRange Coefficient = NumberRange.UpTo(1e5);
    private static readonly NumberRange Temperature = new(-15.0, 75.0);
    private static readonly NumberRange Share = NumberRange.UpTo(1.0);
    private static readonly NumberRange DayHour = new(0.0, 24.0);

    /// <summary>The checked case, or null and faults on the form.</summary>
    public static HeadspaceCase? Read(TreeForm form)
    {
        double air = Air(form);
        var (glass, soil) = Surfaces(form);
        var laws = new GivenLaws(
            [form.Number("airGlassWPerM2K", Coefficient), form.Number("airSoilWPerM2K", Coefficient)],
            [.. Enumerable.Repeat(form.Number("massTransferMPerS", NumberRange.UpTo(100.0)), 2)],
            form.Number("airChangesPerHour", NumberRange.UpTo(1e5)) / SecondsPerHour * air
        );
        var room = Room(form);
        var (lamp, watts) = Lamp(form);
        var mists = Mists(form);
        double mistCelsius = form.Number("mistC", Temperature, 20.0);
        double step = form.Number("stepSeconds", new NumberRange(1e-3, 86_400.0), 60.0);
        double hours = form.Number("hours", NumberRange.Positive(LongestHours));
        var start = Start(form);
        form.Close();
        if (hours * SecondsPerHour / step > MostSteps)
        {
            form.Refuse("stepSeconds", "that is more than 20 million steps", "longer steps or fewer hours");
        }

        if (!form.IsGood)
        {
            return null;
        }

        var model = new HeadspaceModel(
            new HeadspaceShape
            {
                DryAirKilograms = air,
                Surfaces = [glass!, soil!],
                SettlesOn = 1,
            },
            laws
        );
        return new HeadspaceCase
        {
            Model = model,
            Start = new HeadspaceState(
                0.0,
                start.Air,
                MoistAir.HumidityRatio(start.Air, start.Humidity, MoistAir.StandardPascals),
                [start.Glass, start.Soil],
                [0.0, 0.0]
            ),
            Room = room,
            Lamp = lamp,
            LampWatts = watts,
            Mists = mists,
            MistCelsius = mistCelsius,
            StepSeconds = step,
            Hours = hours,
        };
    }

    /// <summary>Mass of dry air, kg: given, or of the volume at 25 °C.</summary>
    private static double Air(TreeForm form)
    {
        double volume =
            form.Has("volumeM3") || !form.Has("dryAirKg")
                ? form.Number("volumeM3", new NumberRange(1e-6, 1e4))
                : double.NaN;
        double ofVolume =
            MoistAir.StandardPascals
            * volume
            / (MoistAir.DryAirGasConstant * (25.0 + Constants.ZeroCelsiusKelvin));
        return form.Has("dryAirKg") ? form.Number("dryAirKg", new NumberRange(1e-6, 1e4)) : ofVolume;
    }

    private static (HeadspaceSurface? Glass, HeadspaceSurface? Soil) Surfaces(TreeForm form)
    {
        var area = new NumberRange(1e-6, 1e4);
        var heat = new NumberRange(1e-3, 1e12);
        double glassArea = form.Number("glassAreaM2", area);
        double soilArea = form.Number("soilAreaM2", area);
        double glassHeat = form.Number("glassHeatCapacityJPerK", heat);
        double soilHeat = form.Number("soilHeatCapacityJPerK", heat);
        double glassRoom = form.Number("glassRoomWPerM2K", Coefficient);
        double soilRoom = form.Number("soilRoomWPerM2K", Coefficient);

        // Two surfaces joined through one radiant node: twice the conductance on each side.
        double radiant = 2.0 * form.Number("soilGlassWPerM2K", Coefficient) * soilArea;
        double toSoil = form.Number("mistToSoil", Share, 0.7);
        double wet = 0.005;
        double drips = 0.050;
        double dripSeconds = 600.0;
        if (form.OptionalObject("film", "a film") is { } film)
        {
            wet = film.Number("wetKgPerM2", new NumberRange(1e-9, 100.0), wet);
            drips = film.Number("dripAboveKgPerM2", NumberRange.UpTo(1e6), drips);
            dripSeconds = film.Number("dripSeconds", new NumberRange(1e-3, 1e12), dripSeconds);
            film.Close();
        }

        if (!form.IsGood)
        {
            return (null, null);
        }

        return (
            new HeadspaceSurface
            {
                Name = "glass",
                AreaSquareMeters = glassArea,
                CapacityJoulesPerKelvin = [glassHeat],
                OutwardWattsPerKelvin = [glassRoom * glassArea],
                RadiantWattsPerKelvin = radiant,
                Film = new FilmRule(wet * glassArea, drips * glassArea, dripSeconds, 1),
                MistShare = 1.0 - toSoil,
            },
            new HeadspaceSurface
            {
                Name = "soil",
                AreaSquareMeters = soilArea,
                CapacityJoulesPerKelvin = [soilHeat],
                OutwardWattsPerKelvin = [soilRoom * soilArea],
                RadiantWattsPerKelvin = radiant,
                HasSupply = true,
                MistShare = toSoil,
            }
        );
    }

    private static Func<double, RoomPoint> Room(TreeForm outer)
    {
        if (outer.Object("room", "a room") is not { } form)
        {
            return _ => default;
        }

        double mean = form.Number("meanC", new NumberRange(-10.0, 60.0));
        double swing = form.Number("amplitudeK", NumberRange.UpTo(15.0), 0.0);
        double phase = form.Number("phaseHour", NumberRange.Within(24.0), 9.0);
        double ratio = form.Number("humidityRatio", NumberRange.UpTo(0.2));
        form.Close();
        return seconds => new RoomPoint(
            mean + (swing * Math.Sin(2.0 * Math.PI * ((seconds / SecondsPerHour) - phase) / 24.0)),
            ratio
        );
    }

    private static (DailySpan When, (double, double, double) Watts) Lamp(TreeForm outer)
    {
        if (outer.OptionalObject("lamp", "a lamp") is not { } form)
        {
            return (default, default);
        }

        double on = form.Number("onHour", DayHour);
        double off = form.Number("offHour", DayHour);
        var power = NumberRange.UpTo(1e6);
        var watts = (
            form.Number("airW", power, 0.0),
            form.Number("glassW", power, 0.0),
            form.Number("soilW", power, 0.0)
        );
        form.Close();
        return (new DailySpan(on, off >= on ? off : off + 24.0), watts);
    }

    private static ImmutableArray<(DailySpan, double)> Mists(TreeForm form)
    {
        var mists = ImmutableArray.CreateBuilder<(DailySpan, double)>();
        foreach (var one in form.OptionalObjects("mist", "a mist", MostMists))
        {
            double hour = one.Number("hour", DayHour);
            double seconds = one.Number("seconds", NumberRange.UpTo(86_400.0));
            double grams = one.Number("gramsPerSecond", NumberRange.UpTo(1e6));
            one.Close();
            mists.Add((new DailySpan(hour, hour + (seconds / SecondsPerHour)), grams / GramsPerKilogram));
        }

        return mists.ToImmutable();
    }

    private static (double Air, double Glass, double Soil, double Humidity) Start(TreeForm outer)
    {
        if (outer.Object("start", "a start") is not { } form)
        {
            return default;
        }

        double air = form.Number("airC", Temperature);
        double glass = form.Number("glassC", Temperature, air);
        double soil = form.Number("soilC", Temperature, air);
        double humidity = form.Number("humidityPercent", NumberRange.UpTo(100.0)) / 100.0;
        form.Close();
        return (air, glass, soil, humidity);
    }
}
