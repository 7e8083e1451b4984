using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.UnitTests.Judging;

namespace Litterfall.UnitTests.Forecasting;

/// <summary>A run can be ended, and what was ended is never taken over.</summary>
public sealed class CancelTests
{
    private const string Sample = "samples/ld-201-flat.viv.yaml";

    [Fact]
    public void A_canceled_run_ends()
    {
        var design = Posed.Sample(Sample).Design;
        var stages = new DesignStages(design, null, new CancellationToken(canceled: true));
        Assert.ThrowsAny<OperationCanceledException>(() =>
            stages.Prepare(TestContext.Current.CancellationToken)
        );
        Assert.ThrowsAny<OperationCanceledException>(() => stages.Climate(Reach.Month));
    }

    [Fact]
    public void Nothing_is_taken_over_from_a_canceled_run()
    {
        var design = Posed.Sample(Sample).Design;
        using var cancel = new CancellationTokenSource();
        var half = new DesignStages(design, null, cancel.Token);
        cancel.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => half.Climate(Reach.Month));
        var next = new DesignStages(design, half);
        Assert.NotNull(next.Climate(Reach.Month));
    }

    /// <summary>A number that does not come out names the sum it was to be.</summary>
    [Fact]
    public void A_figure_is_a_finite_number()
    {
        var none = Figure.Given("floor", 0, Unit.One, Citation.OwnDerivation);
        var trouble = Assert.Throws<NotFiniteException>(() => Figure.Number(1) / none);
        Assert.Contains("1 ÷ floor", trouble.Message, StringComparison.Ordinal);
        Assert.Contains("floor 0", trouble.Message, StringComparison.Ordinal);
    }

    /// <summary>
    /// The dew point of dry air lies so low that only a room far below -30 °C would fog the panes.
    /// </summary>
    [Theory]
    [InlineData(10, false)]
    [InlineData(95, true)]
    public void The_room_that_clears_the_panes_is_one_people_live_in(int humidity, bool isTold)
    {
        var design = Posed.Run(
            "{ inside: { length: 60 cm, depth: 45 cm, height: 45 cm } }",
            "{ soil: { recipe: ready-rainforest, depth: 7 cm } }",
            $"headspace: {{ hold: {{ air: 24 C, humidity: {humidity} %, airChanges: 2 }} }}\n"
        );
        var clears = design.Numbers.Climate!.ClearsAboveRoom;
        Assert.Equal(isTold, clears is not null);
        Assert.True(clears is null || clears.Value > -30);
    }
}
