using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Life;
using Litterfall.Forecasting.Light;
using Litterfall.Forecasting.Water;

namespace Litterfall.Forecasting.Tracing;

/// <summary>Runs of the models that one number of the report needs, and no others.</summary>
internal sealed class NumberRun
{
    private const StringComparison Same = StringComparison.OrdinalIgnoreCase;
    private readonly DesignNumbers numbers;
    private readonly string part;
    private readonly string rest;

    private NumberRun(DesignNumbers numbers, string part, string rest)
    {
        this.numbers = numbers;
        this.part = part;
        this.rest = rest;
    }

    /// <summary>Parts of the report that come out of models.</summary>
    private static readonly string[] Parts = ["headspace", "water", "light", "crew"];

    /// <summary>Numbers of the water that need no year of the floor.</summary>
    private static readonly string[] OfADay =
    [
        "litresPerCmLevel",
        "usableLitres",
        "capillaryRiseMm",
        "mistMlPerDay",
        "ventedMlPerDay",
        "gainMlPerDay",
        "drainEveryDays",
    ];

    /// <summary>What life rests on besides its own rates; each takes the air and the floor with it.</summary>
    private static readonly string[] Deep = ["room.temperature", "misting.each", "headspace.lampHeat"];

    /// <summary>The runs of a number; null where no model makes it.</summary>
    /// <param name="numbers">The design, computed.</param>
    /// <param name="key">Key of the number.</param>
    public static NumberRun? Of(DesignNumbers numbers, string key)
    {
        var plain = key.Trim().TrimStart('$', '/', '.');
        var end = plain.IndexOfAny(['.', '/', '[']);
        return end > 0 && Parts.Contains(plain[..end], StringComparer.OrdinalIgnoreCase)
            ? new(numbers, plain[..end].ToLowerInvariant(), plain[(end + 1)..])
            : null;
    }

    private bool IsBand =>
        rest.EndsWith("Low", StringComparison.OrdinalIgnoreCase)
        || rest.EndsWith("High", StringComparison.OrdinalIgnoreCase);

    private bool IsOfADay => OfADay.Any(k => rest.StartsWith(k, StringComparison.OrdinalIgnoreCase));

    private bool IsOfHeat =>
        rest.EndsWith("takenInsidePercent", Same) || rest.EndsWith("heatInsideWatts", Same);

    /// <summary>Numbers of the life that five years must tell.</summary>
    private bool IsOfYears =>
        rest.StartsWith("reseed", Same)
        || rest.StartsWith("litter", Same)
        || rest.StartsWith("eatenUp", Same)
        || rest.StartsWith("ledger", Same);

    private bool IsSeason => rest.StartsWith("seasons", StringComparison.OrdinalIgnoreCase);

    /// <summary>True where an input is worth a run for this number.</summary>
    /// <param name="input">The input.</param>
    public bool Reaches(VariedFigure input) =>
        part != "crew" || IsDeep(input.Key, input.Path) || IsOfLife(input);

    private static bool IsDeep(string key, string path) => Deep.Contains(key) || Deep.Contains(path);

    private static bool IsOfLife(VariedFigure input) =>
        input.Key.Length > 0
            ? input.Key.StartsWith("life.", StringComparison.Ordinal)
                || input.Key.StartsWith("floorLife.", StringComparison.Ordinal)
        : input.Path.Length > 0
            ? input.Path.StartsWith("crew", StringComparison.Ordinal)
                || input.Path.StartsWith("animals", StringComparison.Ordinal)
                || input.Path.StartsWith("floor.litter", StringComparison.Ordinal)
        : true;

    /// <summary>The number of a changed design over few days; null where there is none.</summary>
    /// <param name="design">The design.</param>
    /// <param name="key">Key of the coefficient that is changed.</param>
    public double? Briefly(CheckedDesign? design, string key) => Run(design, key, true);

    /// <summary>The number of a changed design as the report has it.</summary>
    /// <param name="design">The design.</param>
    /// <param name="key">Key of the coefficient that is changed.</param>
    public double? InFull(CheckedDesign? design, string key) => Run(design, key, false);

    private double? Run(CheckedDesign? design, string key, bool isBrief)
    {
        if (design is null)
        {
            return null;
        }

        var setup = new BoxSetup(design, numbers.Stages.Setup);
        var node = part switch
        {
            "light" => LightReport.Write(
                isBrief && !IsOfHeat
                    ? LightFigures.Briefly(design, setup.Box, setup.Layers)
                    : LightFigures.Of(design, setup.Box, setup.Layers, setup.Shares)
            ),
            "crew" => Life(setup, key, isBrief && !IsOfYears),
            _ => AirAndWater(setup, isBrief && !IsBand && !IsSeason),
        };
        return ReportPath.Find(node, rest) is ReportNumber number ? number.Number : null;
    }

    private ReportNode AirAndWater(BoxSetup setup, bool isBrief)
    {
        var climate = isBrief ? ClimateFigures.Briefly(setup) : Climate(setup);
        if (part == "headspace")
        {
            return ClimateReport.Write(climate);
        }

        var balance = WaterBalance.Of(setup.Design, setup.Headspace, setup.Layers, climate);
        var forecast = IsOfADay ? null : WaterForecast.From(setup, balance);
        return WaterReport.Write(FloorWater.From(setup, climate, forecast, IsBand));
    }

    private ClimateFigures? Climate(BoxSetup setup)
    {
        if (setup.Design.Design.Headspace is not null)
        {
            return ClimateFigures.Held(setup.Design, setup.Box);
        }

        return BoxClimate.From(setup) is { } all
            ? ClimateFigures.From(
                IsBand ? all
                    : IsSeason ? all.WithoutBand()
                    : all.MonthAlone(),
                setup
            )
            : null;
    }

    /// <summary>
    /// The life of a floor on the air and water computed once; anew where these are what is asked.
    /// </summary>
    private ReportNode Life(BoxSetup setup, string key, bool isBrief)
    {
        var design = setup.Design;
        var life = IsDeepChange(design, key)
            ? new DesignNumbers(design).Upto(Reach.WholeWithoutBands).Life
            : FloorCourse.Of(
                new LifeInputs(
                    design,
                    setup.Box,
                    setup.Layers,
                    numbers.Sealants,
                    numbers.Water,
                    numbers.Climate
                ),
                isBrief
            );
        return LifeReport.Write(life, []);
    }

    private bool IsDeepChange(CheckedDesign design, string key) =>
        Deep.Contains(key)
        || (
            !ReferenceEquals(design.Document, numbers.Design.Document)
            && (
                design.Design.Room != numbers.Design.Design.Room
                || design.Design.Misting != numbers.Design.Design.Misting
            )
        );
}
