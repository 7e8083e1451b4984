using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Light;
using Litterfall.Quantities.Placing;

namespace Litterfall.Forecasting.Light;

/// <summary>The light of a plant at its leaves.</summary>
internal static class PlantLights
{
    private static readonly Point3 Forward = new(0.0, -1.0, 0.0);

    /// <summary>Six faces of a small cube; up first.</summary>
    private static readonly Point3[] Cube =
    [
        Point3.Up,
        new(0.0, 0.0, -1.0),
        new(1.0, 0.0, 0.0),
        new(-1.0, 0.0, 0.0),
        new(0.0, 1.0, 0.0),
        Forward,
    ];

    private static readonly Figure Moss = Life(
        4.2,
        "trunk bryophytes of a cloud forest, 4.17",
        "bryophyte-light-studies"
    );

    private static readonly Figure Fern = Life(1.7, "ferns of light shade, 1.7", "bannister-wildish-1982");

    private static readonly Figure Foliage = Life(
        8.0,
        "hardiest foliage plants survive twelve months at 50 to 100 foot-candles, 8 to 16",
        "foliage-light-extension"
    );

    /// <summary>The light of a plant of a design.</summary>
    /// <param name="light">The computed light.</param>
    /// <param name="i">Place of the plant.</param>
    public static PlantLight Of(ComputedLight light, int i)
    {
        var spot = light.Box.Plants[i];
        var species = light.Design.Entry<PlantEntry>(FormattableString.Invariant($"plants[{i}].plant"));
        var at = Leaf(light.Box, spot);
        var (facing, words) = Facing(light, spot, at);
        Receiver[] receivers =
        [
            new(at, facing ?? Point3.Up),
            .. Cube.Select(normal => new Receiver(at, normal)),
        ];
        var (sums, thin, thick) = light.At(receivers, light.Box.Crowns[i]);
        double AllRound(Func<LightField.Sums, double> part) => sums.Skip(1).Average(part);
        double photons = facing is null ? AllRound(s => s.Micromoles) : sums[0].Micromoles;
        double daily = facing is null ? AllRound(s => s.Daily) : sums[0].Daily;
        double lux = facing is null ? AllRound(s => s.Lux) : sums[0].Lux;
        (double, double) leaves =
            sums[0].Micromoles > 0.0
                ? (thick.Micromoles / sums[0].Micromoles, thin.Micromoles / sums[0].Micromoles)
                : (1.0, 1.0);
        string name = $"light on the leaves of {spot.Name}";
        var compensation = Compensation(species, spot);
        return new PlantLight(spot, species)
        {
            LeafHeight = Figure
                .Computed(
                    "foot + half of its height today",
                    at.Z + light.Box.Ground,
                    Unit.Centimeter.Dimension,
                    light.Box.With.Used.AsSpan()
                )
                .As($"height of the leaves of {spot.Name}", Unit.Centimeter),
            Facing = words,
            Photons = light.Band(name, Unit.Micromole, photons * 1e-6, leaves),
            Daily = light.Band($"{name} a day", Unit.MolePerDay, daily / 86400.0, leaves),
            Lux = light.Computed($"illuminance of the leaves of {spot.Name}", Unit.Lux, lux),
            Level = light.Computed(
                $"light on a level leaf of {spot.Name}",
                Unit.Micromole,
                sums[1].Micromoles * 1e-6
            ),
            AllRound = light.Computed(
                $"mean light of six faces at {spot.Name}",
                Unit.Micromole,
                AllRound(s => s.Micromoles) * 1e-6
            ),
            Band =
                species.LeastDailyLight is { } low && species.LargestDailyLight is { } high
                    ? (low, high)
                    : null,
            ColorBand =
                species.LeastColorLight is { } from && species.LargestColorLight is { } to
                    ? (from, to)
                    : null,
            Compensation = compensation,
            Survival = species.SurvivalDailyLight ?? OverTheDay(compensation, photons, daily),
        };
    }

    /// <summary>Where its leaves are: half of its height over the foot, out of wood and stone.</summary>
    private static Point3 Leaf(LightBox box, PlantSpot spot)
    {
        var foot = box.Foot(spot);
        double lift = spot.Form switch
        {
            PlantForm.Mat => box.With.Light.MatHeight.UseSi(),
            _ => spot.Mounted ? 0.0 : 0.5 * box.Across(spot),
        };
        var at = foot with { Z = Math.Min(foot.Z + lift, box.Scene.Height - (2.0 * LightPolicy.Free)) };
        foreach (var block in box.Scene.Blocks)
        {
            if (block.Extent.Contains(at))
            {
                at = at with { Z = Math.Min(block.Extent.To.Z + 0.005, box.Scene.Height - LightPolicy.Free) };
            }
        }

        return at;
    }

    /// <summary>Where its leaves face; null for all ways.</summary>
    private static (Point3? Normal, string Words) Facing(ComputedLight light, PlantSpot spot, Point3 at) =>
        light.Design.Design.Plants[spot.Number - 1].Leaves switch
        {
            LeafFacing.Up => (Point3.Up, "facing up"),
            LeafFacing.Front => (Forward, "facing the front"),
            LeafFacing.Back => (new Point3(0.0, 1.0, 0.0), "facing the back"),
            LeafFacing.Left => (new Point3(-1.0, 0.0, 0.0), "facing left"),
            LeafFacing.Right => (new Point3(1.0, 0.0, 0.0), "facing right"),
            LeafFacing.All => (null, "mean of all ways"),
            _ => spot.Form == PlantForm.Climber && NearestWall(light, at) is { } wall
                ? wall
                : (Point3.Up, "facing up"),
        };

    /// <summary>A climber lies on the nearest wall that bears it: its leaves face away from there.</summary>
    private static (Point3? Normal, string Words)? NearestWall(ComputedLight light, Point3 at)
    {
        var scene = light.Box.Scene;
        (double Off, Side Side, Point3 Normal, string Words)[] walls =
        [
            (at.X, Side.Left, new Point3(1.0, 0.0, 0.0), "on the left wall"),
            (scene.Length - at.X, Side.Right, new Point3(-1.0, 0.0, 0.0), "on the right wall"),
            (scene.Depth - at.Y, Side.Back, Forward, "on the back wall"),
        ];
        var covered = Terrain.Covered(light.Design.Design);
        var near = walls.Where(w => covered.Contains(w.Side)).OrderBy(w => w.Off).ToList();
        return near.Count > 0 && near[0].Off < 0.12 ? (near[0].Normal, near[0].Words) : null;
    }

    private static Figure Compensation(PlantEntry species, PlantSpot spot) =>
        species.Habit?.Text.Contains("moss", StringComparison.Ordinal) == true ? Moss
        : spot.Form == PlantForm.Fronds ? Fern
        : Foliage;

    /// <summary>A light over the hours the lamps burn, one hour of ramp as half an hour.</summary>
    private static Figure OverTheDay(Figure light, double photons, double daily) =>
        Figure
            .Computed(
                "light at which its kind just lives x hours at full light",
                photons > 0.0 ? light.Si * daily / 86400.0 / (photons * 1e-6) : light.Si,
                Unit.MolePerDay.Dimension,
                light
            )
            .As("light of a day at which its kind just lives", Unit.MolePerDay);

    private static Figure Life(double micromoles, string place, string source) =>
        Figure.Given(
            "light at which its kind just lives",
            Unit.Micromole.ToSiValue(micromoles),
            Unit.Micromole,
            new Citation(source, place, Provenance.Read)
        );
}
