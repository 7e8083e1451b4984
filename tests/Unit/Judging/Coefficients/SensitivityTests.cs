using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Tracing;
using Litterfall.Judging;
using Xunit;

namespace Litterfall.UnitTests.Judging.Coefficients;

/// <summary>What a simulated number rests on, by weight.</summary>
public sealed class SensitivityTests
{
    private static readonly Lazy<DesignResult> Run = new(() =>
        DesignRun.Execute(PosedModels.Air[0].Design())
    );

    private static Sensitivity? Of(string key) =>
        Sensitivity.Of(
            Run.Value.Numbers,
            key,
            Assert.IsType<ReportNumber>(ReportPath.Find(Run.Value.Report, key)),
            TestContext.Current.CancellationToken
        );

    [Fact]
    public void Numbers_of_shape_have_an_equation_and_no_weights() =>
        Assert.Null(Of("geometry.headspaceLitres"));

    /// <summary>
    /// A box follows its room: by the balance of heat its air rises by a kelvin with the room, less what
    /// lamps
    /// and evaporation give, which hardly change. So the room's kelvin weighs most.
    /// </summary>
    [Fact]
    public void The_room_weighs_most_in_the_mean_temperature()
    {
        var weights = Of("headspace.airCMean")!;
        var first = weights.Rows[0];
        Assert.StartsWith("temperature of the room", first.Input.Name, StringComparison.Ordinal);
        Assert.InRange(first.ResultHigh!.Value - first.ResultLow!.Value, 1.0, 2.2);
    }

    [Fact]
    public void Shares_fall_and_sum_to_all()
    {
        var weights = Of("headspace.humidityPercentMean")!;
        Assert.Equal(
            weights.Rows.Select(r => r.SharePercent),
            weights.Rows.Select(r => r.SharePercent).OrderDescending()
        );
        Assert.Equal(100.0, weights.Rows.Sum(r => r.SharePercent) + weights.RestPercent, 1e-6);
        Assert.InRange(weights.Rows.Length, 2, Sensitivity.MostRows);
    }

    [Fact]
    public void Openings_lid_glass_lamps_room_and_coefficients_are_inputs()
    {
        var figure = Run.Value.Numbers.Climate!.AirMax.Value;
        string[] names = [.. figure.Inputs.Select(i => i.Name!)];
        string[] wanted =
        [
            "open area of vent 1",
            "thickness of the lid",
            "wall thickness",
            "power of lamp 1",
            "temperature of the room",
            "emissivity of glass",
            "factor on the air exchanged",
            "convection at walls, laminar: factor on (ΔT/H)^¼",
        ];
        Assert.Empty(wanted.Except(names));
        Assert.Equal(Provenance.Recalled, figure.Trust);
    }
}
