using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Climate;

/// <summary>
/// What the climate of a box rests on, as figures: room, box, openings, lid, glass, lamps, mist, plants,
/// ground,
/// and the coefficients that its models took.
/// </summary>
internal sealed class ClimateInputs
{
    private static readonly Unit LiterPerMinute = new(
        "L/min",
        Unit.Liter.ToSi / Unit.Minute.ToSi,
        Unit.Liter.Dimension / Unit.Minute.Dimension
    );

    private readonly CheckedDesign design;
    private readonly List<Figure> all = [];

    private ClimateInputs(CheckedDesign design) => this.design = design;

    /// <summary>The inputs of a run.</summary>
    /// <param name="design">The design.</param>
    /// <param name="of">Its sizes, its layers, and the air over them.</param>
    /// <param name="run">The run.</param>
    public static ImmutableArray<Figure> Of(
        CheckedDesign design,
        (BoxGeometry Box, ImmutableArray<FloorLayer> Layers, AirSpace Air) of,
        BoxRun run
    )
    {
        var inputs = new ClimateInputs(design);
        inputs.AddRoom();
        inputs.Add(of.Air.Volume, of.Box.Walls, of.Box.Base, of.Box.BackgroundThickness);
        inputs.Panel("box.material");
        inputs.Panel("background.material");
        inputs.AddVents();
        inputs.AddLid();
        inputs.AddLamps();
        inputs.Add(MistingDay.Water(design));
        inputs.AddFittings();
        inputs.AddPlants();
        inputs.Add(WaterBasins.Area(design, of.Box), WaterBasins.Water(design, of.Box));
        foreach (
            var layer in of.Layers.Where(l =>
                l.Kind is LayerKind.Soil or LayerKind.Moss or LayerKind.Litter or LayerKind.Drainage
            )
        )
        {
            inputs.Add(layer.Depth, layer.Kind == LayerKind.Litter ? layer.DryMass : null);
        }

        inputs.Add([.. run.Floor.Curves]);
        inputs.Add([.. run.With.Used]);
        return [.. inputs.all];
    }

    private void Add(params ReadOnlySpan<Figure?> figures)
    {
        foreach (var figure in figures)
        {
            if (figure is not null && !all.Contains(figure))
            {
                all.Add(figure);
            }
        }
    }

    private void Typed<T>(string path, string name, Typed<T>? typed, Unit unit)
        where T : struct, IQuantity<T>
    {
        if (typed is { } value)
        {
            Add(design.Figure(path, name, value, unit));
        }
    }

    private void Panel(string path)
    {
        var panel = design.Find<PanelEntry>(path);
        Add(panel?.Density, panel?.ThermalConductivity);
    }

    private void Mesh(string path)
    {
        var mesh = design.Find<MeshEntry>(path);
        Add(mesh?.Aperture, mesh?.WireDiameter);
    }

    private void AddRoom()
    {
        var room = design.Design.Room;
        Typed("room.temperature", "temperature of the room", room?.Temperature, Unit.Celsius);
        Typed("room.humidity", "humidity of the room", room?.Humidity, Unit.Percent);
        Typed("room.swing", "swing of the room", room?.Swing, Unit.Kelvin);
        AddAir("room.weekend", "on weekends", room?.Weekend);
        var month = BoxRun.FirstDay(design).Month;
        var (key, air) = RoomClimate.Named(room?.Months)[month - 1];
        AddAir($"room.months.{key}", "in the month of planting", air);
    }

    private void AddAir(string path, string when, RoomAir? air)
    {
        Typed($"{path}.temperature", $"temperature of the room {when}", air?.Temperature, Unit.Celsius);
        Typed($"{path}.humidity", $"humidity of the room {when}", air?.Humidity, Unit.Percent);
        Typed($"{path}.swing", $"swing of the room {when}", air?.Swing, Unit.Kelvin);
    }

    private void AddVents()
    {
        for (var i = 0; i < design.Design.Vents.Count; i++)
        {
            var vent = design.Design.Vents[i];
            var path = FormattableString.Invariant($"vents[{i}]");
            var name = FormattableString.Invariant($"vent {i + 1}");
            Typed($"{path}.area", $"open area of {name}", vent.Area, Unit.SquareCentimeter);
            Typed($"{path}.length", $"length of {name}", vent.Length, Unit.Centimeter);
            Typed($"{path}.width", $"width of {name}", vent.Width, Unit.Centimeter);
            Typed($"{path}.height", $"height of {name}", vent.Height, Unit.Centimeter);
            Mesh($"{path}.mesh");
        }
    }

    private void AddLid()
    {
        var lid = design.Design.Lid;
        Typed("lid.gap", "gap of the lid", lid?.Gap, Unit.Millimeter);
        Typed("lid.thickness", "thickness of the lid", lid?.Thickness, Unit.Millimeter);
        Typed("lid.share", "share of the top that is mesh", lid?.Share, Unit.Percent);
        Mesh("lid.material");
        Panel("lid.material");

        if (design.Design.Box.Opening == Opening.Front)
        {
            Typed("box.sill", "height of the sill", design.Design.Box.Sill, Unit.Centimeter);
            Typed("box.doors.gap", "gap of the doors", design.Design.Box.Doors?.Gap, Unit.Millimeter);
        }
    }

    private void AddLamps()
    {
        for (var i = 0; i < design.Design.Lamps.Count; i++)
        {
            var lamp = design.Design.Lamps[i];
            var path = FormattableString.Invariant($"lamps[{i}]");
            var name = FormattableString.Invariant($"lamp {i + 1}");
            Typed($"{path}.watts", $"power of {name}", lamp.Watts, Unit.Watt);
            Typed($"{path}.lumens", $"light of {name}", lamp.Lumens, Unit.Lumen);
            Typed($"{path}.above", $"height of {name} above the lid", lamp.Above, Unit.Centimeter);
            if (lamp is { On: { } on, Off: { } off })
            {
                Add(
                    Clock($"time {name} goes on", on, $"{path}.on"),
                    Clock($"time {name} goes off", off, $"{path}.off")
                );
            }

            var kind = design.Find<LampEntry>($"{path}.lamp");
            Add(
                lamp.Watts is null ? kind?.Power : null,
                lamp.Lumens is null ? kind?.VisibleShare : kind?.RadiationEfficacy,
                kind?.OutputRatio,
                kind?.InfraredShare,
                kind?.DownShare
            );
        }
    }

    private static Figure Clock(string name, TimeOnly time, string path) =>
        Figure.Given(
            name,
            time.ToTimeSpan().TotalSeconds,
            Unit.Hour,
            new Citation("design", path, Provenance.Entered)
        );

    private void AddFittings()
    {
        Typed("fan.flow", "free flow of the fan", design.Design.Fan?.Flow, LiterPerMinute);
        Typed("heating.watts", "power of the heat mat", design.Design.Heating?.Watts, Unit.Watt);
        Typed("heating.target", "what its thermostat holds", design.Design.Heating?.Target, Unit.Celsius);
        for (var i = 0; i < design.Design.Hardscape.Count; i++)
        {
            Add(HardscapeSize.Mass(design, i), HardscapeSize.Volume(design, i));
        }
    }

    private void AddPlants()
    {
        for (var i = 0; i < design.Design.Plants.Count; i++)
        {
            var path = FormattableString.Invariant($"plants[{i}]");
            var plant = design.Entry<PlantEntry>($"{path}.plant");
            Add(
                design.Count(
                    $"{path}.count",
                    $"number of {plant.Name} ({i + 1})",
                    design.Design.Plants[i].Count
                ),
                plant.SmallestGrown,
                plant.LargestGrown
            );
        }
    }
}
