using System.Collections.Immutable;
using Litterfall.Documents.Views;
using Litterfall.Domain;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Physics.Coupling;

namespace Litterfall.Web.Desk;

/// <summary>The forecast hour by hour as the drawing and the ribbon show it.</summary>
public static class DeskMoment
{
    /// <summary>The hours of a design; empty where its air is held or cannot be computed.</summary>
    public static ImmutableArray<SimulationHour> Hours(DesignNumbers? numbers) =>
        numbers?.Climate?.Computed?.Days.Course ?? [];

    /// <summary>The box at an hour; null where nothing is computed.</summary>
    /// <param name="numbers">The design with its month.</param>
    /// <param name="hour">Index of the hour.</param>
    public static Moment? Of(DesignNumbers? numbers, int hour)
    {
        var hours = Hours(numbers);
        if (hours.IsEmpty || numbers!.Climate!.Computed is not { } climate)
        {
            return null;
        }

        var now = hours[Math.Clamp(hour, 0, hours.Length - 1)];
        return new Moment(now.LevelMeters, Wetness(climate.Run, now))
        {
            FrontFogs = Fogs(climate, now, "front"),
            BackFogs = Fogs(climate, now, "back"),
            IsLit = IsLit(numbers, now.Hour),
            IsDay = (((now.Hour % 24) + 24) % 24) is >= 7 and < 20,
            Fogs =
            [
                .. new[] { Side.Front, Side.Back, Side.Left, Side.Right }.Select(side =>
                    (side, FogOf(climate, now, side.ToString().ToLowerInvariant()))
                ),
            ],
        };
    }

    /// <summary>True while any lamp of the design burns.</summary>
    public static bool IsLit(DesignNumbers numbers, double hour)
    {
        var clock = ((hour % 24) + 24) % 24 * 3600;
        return numbers.Design.Design.Lamps.Any(l =>
        {
            var on = l.On?.ToTimeSpan().TotalSeconds ?? 8 * 3600;
            var off = l.Off?.ToTimeSpan().TotalSeconds ?? 20 * 3600;
            return off > on ? clock >= on && clock < off : clock >= on || clock < off;
        });
    }

    private static bool Fogs(BoxClimate climate, SimulationHour now, string pane) =>
        FogOf(climate, now, pane) > 0.25;

    /// <summary>Share of the hour in which a pane was fogged; 0 for one that is not computed.</summary>
    private static double FogOf(BoxClimate climate, SimulationHour now, string pane)
    {
        var found = climate.Run.Surfaces.Panes.FirstOrDefault(p => p.Name == pane);
        return found.Name == pane ? now.Fogged[found.Place] : 0;
    }

    private static ImmutableArray<(double, double)> Wetness(BoxRun run, SimulationHour now)
    {
        var columns = run.Floor.Columns;
        var moss = run.Floor.MossMeters[0];
        var pores = run.Floor.Soil.SaturatedWaterContent;
        var list = ImmutableArray.CreateBuilder<(double, double)>();
        for (var node = 0; node < now.WaterContent.Length && node < columns.Nodes; node++)
        {
            var depth = columns.DepthMeters[node * columns.Zones] - moss;
            if (depth >= -1e-9 && depth <= run.Floor.SoilMeters[0] + 1e-9 && pores > 0)
            {
                list.Add(
                    (
                        Math.Clamp(depth / run.Floor.SoilMeters[0], 0, 1),
                        Math.Clamp(now.WaterContent[node] / pores, 0, 1)
                    )
                );
            }
        }

        return list.ToImmutable();
    }
}
