using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Photometry;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Light;

namespace Litterfall.Forecasting.Light;

/// <summary>
/// A lamp of a design as it shines: where, how much, when, and how many photons its light holds.
/// </summary>
internal sealed class LampSource
{
    private readonly CheckedDesign design;
    private readonly int place;
    private readonly LightBox box;
    private readonly ModelCoefficients with;

    private LampSource(CheckedDesign design, int place, LightBox box)
    {
        with = box.With;
        this.design = design;
        this.place = place;
        this.box = box;
        Kind = design.Find<LampEntry>($"{Path}.lamp");
        Lamp = design.Design.Lamps[place];
        File = Lamp.File is { } file ? design.Files.Lamps.GetValueOrDefault(file) : null;
        Bare = Flux();
        Output =
            Kind?.OutputRatio is { } ratio && File is null
                ? (Bare * ratio).As($"light of lamp {place + 1} out of its hood", Unit.Lumen)
                : Bare;
        Left = FluxLeft();
        Lumens = (Output * Left).As($"light of lamp {place + 1} today", Unit.Lumen);
        Photons = PhotonsPerLumen();
        FullSeconds = Full();
        Luminaires = Place();
    }

    /// <summary>Its key in the design.</summary>
    public string Path => FormattableString.Invariant($"lamps[{place}]");

    /// <summary>What the design says.</summary>
    public Lamp Lamp { get; }

    /// <summary>Its kind; null where the catalog has none.</summary>
    public LampEntry? Kind { get; }

    /// <summary>Its measured file; null without.</summary>
    public LampFile? File { get; }

    /// <summary>Flux of the lamp as it is sold.</summary>
    private Figure Bare { get; }

    /// <summary>Flux out of its hood.</summary>
    private Figure Output { get; }

    /// <summary>Share of the flux left at its age.</summary>
    public Figure Left { get; }

    /// <summary>Flux that leaves it today.</summary>
    public Figure Lumens { get; }

    /// <summary>Photons of each lumen.</summary>
    public Figure Photons { get; }

    /// <summary>Time at full light with the same sum of a day.</summary>
    public Figure FullSeconds { get; }

    /// <summary>What shines, with today's flux.</summary>
    public ImmutableArray<Luminaire> Luminaires { get; }

    /// <summary>What is known of it.</summary>
    public LampKnowledge Knowledge =>
        new(File is not null, Lamp.Spectrum is not null, Lamp.Photons is not null);

    /// <summary>The lamps of a design.</summary>
    public static ImmutableArray<LampSource> Of(CheckedDesign design, LightBox box) =>
        [.. design.Design.Lamps.Select((_, i) => new LampSource(design, i, box))];

    private string Words => FormattableString.Invariant($"lamp {place + 1}");

    private Figure Flux()
    {
        if (Lamp.Lumens is { } typed)
        {
            return design.Figure($"{Path}.lumens", $"light of {Words}", typed, Unit.Lumen);
        }

        if (File is { } file)
        {
            return Figure.Given(
                $"light of {Words}",
                CandelaTable
                    .Of(file.VerticalDegrees.AsSpan(), file.HorizontalDegrees.AsSpan(), file.Candela.AsSpan())
                    .Lumens,
                Unit.Lumen,
                new Citation(
                    "design",
                    $"{Path}.file: {Lamp.File}, its intensities summed over all directions",
                    Provenance.Measured
                )
            );
        }

        if (Lamp.Watts is { } watts && Kind?.Efficacy is { } efficacy)
        {
            return (design.Figure($"{Path}.watts", $"power of {Words}", watts, Unit.Watt) * efficacy).As(
                $"light of {Words}",
                Unit.Lumen
            );
        }

        return Kind?.UsualFlux
            ?? (with.Light.LumensPerWatt.Figure * Power).As($"light of {Words}", Unit.Lumen);
    }

    /// <summary>Power: typed, its kind's, or the usual.</summary>
    private Figure Power =>
        Lamp.Watts is { } watts
            ? design.Figure($"{Path}.watts", $"power of {Words}", watts, Unit.Watt)
            : Kind?.Power ?? with.Light.LampWatts.Figure;

    /// <summary>Height over the lid.</summary>
    public Figure Above =>
        Lamp.Above is { } typed
            ? design.Figure($"{Path}.above", $"height of {Words} above the lid", typed, Unit.Centimeter)
            : with.Light.Above.Figure;

    private Figure FluxLeft()
    {
        if (Lamp.Age is not { } age)
        {
            return Figure.Choice($"light left of {Words}", 1, Unit.One, "a new lamp; enter its age");
        }

        var burnt = design.Figure($"{Path}.age", $"hours burnt of {Words}", age, Unit.Hour);
        if (Kind?.LifeToSeventyPercent is { } life)
        {
            return Figure
                .Computed(
                    "0.7 ^ (hours burnt ÷ hours to 70 %)",
                    DailyLight.FluxLeft(burnt.Si, life.Si),
                    Dimension.None,
                    burnt,
                    life
                )
                .As($"light left of {Words}", Unit.Percent);
        }

        return Kind?.Maintenance
            ?? Figure.Choice(
                $"light left of {Words}",
                1,
                Unit.One,
                "the library does not say how this kind ages"
            );
    }

    private Figure PhotonsPerLumen()
    {
        var name = $"photons of a kilolumen of {Words}";
        if (Lamp.Photons is { } photons)
        {
            return (
                design.Figure($"{Path}.photons", $"photons of {Words}", photons, Unit.MicromolePerSecond)
                / Bare
            ).As(name, Unit.MicromolePerKilolumen);
        }

        if (Lamp.Spectrum is { } spectrum && design.Files.Spectra.GetValueOrDefault(spectrum) is { } table)
        {
            double k = Spectrum.MicromolesPerKilolumen(table.Nanometers.AsSpan(), table.Values.AsSpan());
            if (double.IsFinite(k))
            {
                return Figure.Given(
                    name,
                    Unit.MicromolePerKilolumen.ToSiValue(k),
                    Unit.MicromolePerKilolumen,
                    new Citation(
                        "design",
                        $"{Path}.spectrum: {spectrum}, with V(λ) of CIE 1924",
                        Provenance.Measured
                    )
                );
            }
        }

        return Kind?.PhotonsPerFlux ?? with.Light.Photons.Figure;
    }

    /// <summary>Time it goes on, s after midnight; time on and each ramp, s.</summary>
    public (double On, double For, double Ramp) Clock
    {
        get
        {
            double on = Lamp.On?.ToTimeSpan().TotalSeconds ?? with.Headspace.LampOn.UseSi();
            double off = Lamp.Off?.ToTimeSpan().TotalSeconds ?? with.Headspace.LampOff.UseSi();
            return (on, DailyLight.OnSeconds(on, off), Lamp.Ramp?.Si ?? 0.0);
        }
    }

    private static string Clocked(Coefficient hour) =>
        TimeOnly
            .FromTimeSpan(TimeSpan.FromHours(hour.Number))
            .ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture);

    private Figure Full()
    {
        bool isTyped = Lamp.On is not null && Lamp.Off is not null;
        var hours = isTyped
            ? Figure.Given(
                $"hours of {Words}",
                Clock.For,
                Unit.Hour,
                new Citation("design", $"{Path}.on and {Path}.off", Provenance.Entered)
            )
            : Figure
                .Computed(
                    $"{Clocked(with.Headspace.LampOn)} to {Clocked(with.Headspace.LampOff)} where no times "
                        + "are entered",
                    Clock.For,
                    Unit.Hour.Dimension,
                    with.Headspace.LampOn.Figure,
                    with.Headspace.LampOff.Figure
                )
                .As($"hours of {Words}", Unit.Hour);
        if (Lamp.Ramp is not { } ramp)
        {
            return hours;
        }

        var typed = design.Figure($"{Path}.ramp", $"dawn and dusk of {Words}", ramp, Unit.Minute);
        return Figure
            .Computed(
                "hours less one ramp: dawn and dusk count half each",
                DailyLight.FullSeconds(hours.Si, typed.Si),
                hours.Dimension,
                hours,
                typed
            )
            .As($"hours of {Words} at full light", Unit.Hour);
    }

    private ImmutableArray<Luminaire> Place()
    {
        var scene = box.Scene;
        double thick = design.Design.Lid?.Thickness?.Si ?? 0.0;
        double above = Math.Max(Above.Si, 0.001);
        double x = Lamp.At?.X.Si ?? (0.5 * box.Terrain.Length);
        double y = Lamp.At?.Y.Si ?? (0.5 * box.Terrain.DepthOfBox);
        var center = new Point3(x - box.Origin.X, y - box.Origin.Y, scene.Height + thick + above);
        double turn = (Lamp.Turn?.Si ?? 0.0) * 180.0 / Math.PI;
        if (File is { } file)
        {
            var measured = PlacedLamp.Measured(file, center, turn);
            double flux = measured.Sum(m => m.Lumens);
            return flux <= 0.0 ? [] : [.. measured.Select(m => Times(m, Lumens.Si / flux))];
        }

        string shape = Kind?.Shape?.Text ?? "rectangle";
        double exponent =
            Lamp.Beam is { } beam ? Luminaire.BeamExponent(beam.Si * 180.0 / Math.PI)
            : shape == "spot" ? Luminaire.BeamExponent(with.Light.SpotBeam.Use())
            : 1.0;
        double across = Lamp.Width?.Si
            ?? Kind?.Diameter?.Si
            ?? Kind?.Width?.Si
            ?? with.Light.LampWidth.UseSi();
        if (shape is "spot" or "disc in dome")
        {
            return [Luminaire.Disc(center, 0.5 * across, Lumens.Si) with { Exponent = exponent }];
        }

        if (shape == "line in hood")
        {
            across = Lamp.Width?.Si ?? with.Light.Hood.UseSi();
        }

        double along = Lamp.Length?.Si ?? Along(turn);
        var lamp = new Luminaire
        {
            Shape = LuminousShape.Rectangle,
            Center = center,
            Lumens = Lumens.Si,
            Exponent = exponent,
        };
        return PlacedLamp.Rectangle(lamp, (along, across), turn);
    }

    /// <summary>Length of the kind, but no longer than fits the box where it is not typed.</summary>
    private double Along(double turn)
    {
        double across = Math.Abs(Math.Sin(turn * Math.PI / 180.0));
        double room = across < 0.5 ? box.Terrain.Length : box.Terrain.DepthOfBox;
        double most = Math.Max(room - with.Light.BarInset.UseSi(), 0.05);
        return Math.Min(Kind?.Length?.Si ?? most, most);
    }

    private static Luminaire Times(Luminaire lamp, double factor) =>
        lamp with
        {
            Lumens = lamp.Lumens * factor,
            Table = lamp.Table?.Times(factor),
        };
}
