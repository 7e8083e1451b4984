using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Levers;

/// <summary>How a box is set in one season.</summary>
/// <param name="Season">When, e.g. "in July".</param>
/// <param name="OpenShare">Open share of the vents as built.</param>
/// <param name="MistSeconds">Length of each misting, s, in the order of the design.</param>
/// <param name="Days">What the box then shows.</param>
/// <param name="IsBalanced">True when as much is misted as leaves, within a tenth.</param>
/// <param name="IsDampEnough">True when its mean humidity and its dips suit the animals.</param>
public sealed record SeasonSetting(
    string Season,
    double OpenShare,
    ImmutableArray<double> MistSeconds,
    ClimateDays Days,
    bool IsBalanced,
    bool IsDampEnough
)
{
    /// <summary>True where it mists otherwise than the design.</summary>
    /// <param name="misting">The misting of the design.</param>
    public bool IsOther(Misting misting) =>
        misting.Times.Where((t, i) => Math.Abs(t.For.Si - MistSeconds[i]) >= 0.5).Any();

    /// <summary>What leaves the nozzles a day, m³.</summary>
    /// <param name="design">The design.</param>
    public double Cubic(CheckedDesign design)
    {
        var fill = MistingDay.Fill(design)?.Si ?? 0;
        var misting = design.Design.Misting!;
        return misting.Nozzles * misting.Each.Si * MistSeconds.Sum(s => Math.Max(0, s - fill));
    }

    /// <summary>What it does to the water in the floor.</summary>
    public string Level =>
        IsBalanced ? "the level stays"
        : Days.Misted > Days.Vented ? "the level rises"
        : "the floor dries";
}

/// <summary>
/// Settings for each season that differs: the vents as open as humidity allows, and mist that balances
/// what the
/// air then takes, so that the level in the drainage layer stays. Each was run with those very settings.
/// </summary>
public sealed record SettingsCard
{
    private const double LeastHumidity = 0.75;
    private const double Dip = 0.6;
    private const double LongestDipHours = 4;
    private const double Balance = 0.1;
    private const int Rounds = 4;
    private const double KilogramsPerCubicMeter = 1000;
    private static readonly double[] Shares = [1.0, 0.75, 0.5, 0.25];
    private static readonly MistLever Mist = new();
    private static readonly VentLever Vents = new();

    /// <summary>True when the vents can be covered in part.</summary>
    public required bool HasVents { get; init; }

    /// <summary>The seasons.</summary>
    public required ImmutableArray<SeasonSetting> Settings { get; init; }

    /// <summary>The card; null without a misting system or where the climate is not computed.</summary>
    public static SettingsCard? Of(DesignNumbers numbers)
    {
        var design = numbers.Design;
        if (numbers.Climate?.Computed is not { } climate || Mist.Value(design.Design) is not > 0)
        {
            return null;
        }

        var hasVents = Vents.Value(design.Design) is > 0;
        var wanted = StockedSpecies
            .Of(design)
            .Select(s => s.Species.LeastHumidity?.Si ?? 0)
            .Append(LeastHumidity)
            .Max();
        return new SettingsCard
        {
            HasVents = hasVents,
            Settings =
            [
                .. climate.Seasons.Select(season => Set(numbers, season, hasVents ? Shares : [1.0], wanted)),
            ],
        };
    }

    /// <summary>The most open vents that keep it damp, else the least open.</summary>
    private static SeasonSetting Set(
        DesignNumbers numbers,
        ClimateSeason season,
        double[] shares,
        double wanted
    )
    {
        SeasonSetting? last = null;
        foreach (var share in shares)
        {
            var design = share < 1 ? Vents.Turned(numbers.Design, share) ?? numbers.Design : numbers.Design;
            last = Balanced(numbers, design, season, share, wanted);
            if (last.IsDampEnough)
            {
                return last;
            }
        }

        return last!;
    }

    /// <summary>Mist in whole seconds that brings what the air takes.</summary>
    private static SeasonSetting Balanced(
        DesignNumbers numbers,
        CheckedDesign design,
        ClimateSeason season,
        double share,
        double wanted
    )
    {
        var factor = 1.0;
        var (now, days) = (design, season.Days);
        var misting = design.Design.Misting!;
        var fill = MistingDay.Fill(design)?.Si ?? 0;
        var flow = misting.Nozzles * misting.Each.Si * KilogramsPerCubicMeter;
        for (var round = 0; round < Rounds; round++)
        {
            now = Mist.Turned(design, factor) ?? design;
            days = BoxClimate.Shortly(new BoxSetup(now, numbers.Stages.Setup), season.First) ?? season.Days;
            var off = days.Vented / Math.Max(1e-6, days.Misted);
            if (round == Rounds - 1 || Math.Abs(off - 1) < (round == 0 ? Balance : 0.03))
            {
                break;
            }

            // What fills the hose is lost to each misting, so only the seconds that spray are scaled.
            var sprays = now.Design.Misting!.Times.Sum(t => Math.Max(0, t.For.Si - fill));
            var seconds = sprays > 0 ? sprays * Math.Clamp(off, 0.2, 4) : days.Vented / Math.Max(1e-9, flow);
            factor = Math.Clamp(
                (seconds + misting.Times.Count * fill) / misting.Times.Sum(t => t.For.Si),
                Mist.Ends.Least,
                Mist.Ends.Most
            );
        }

        return new SeasonSetting(
            season.Name,
            share,
            [.. now.Design.Misting!.Times.Select(t => t.For.Si)],
            days,
            Math.Abs(days.Vented - days.Misted) <= Balance * days.Misted,
            days.Humidity.Mean >= wanted && days.HoursDrier(Dip) <= LongestDipHours
        );
    }
}
