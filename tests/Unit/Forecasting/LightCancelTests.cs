using System.Globalization;
using Litterfall.Domain.Keys;
using Litterfall.Forecasting;
using Litterfall.UnitTests.Judging;

namespace Litterfall.UnitTests.Forecasting;

/// <summary>Light of the largest box with the most lamps ends when nobody waits for it any more.</summary>
public sealed class LightCancelTests
{
    /// <summary>Work after the end was asked for that nobody notices; a second is promised.</summary>
    private const double MostMilliseconds = 150;

    private static readonly double[] Shares = [0.1, 0.4, 0.7];

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>
    /// At a tenth, four and seven tenths of its work: what the processor does from then on to the end. Other
    /// tests of this process count, too, so that the best of three is taken.
    /// </summary>
    [Fact]
    public void Light_ends_within_moments_of_work()
    {
        var whole = Work(CancellationToken.None, out _);
        foreach (double share in Shares)
        {
            double best = double.PositiveInfinity;
            for (int i = 0; i < 3 && best > MostMilliseconds; i++)
            {
                best = Math.Min(best, After(share * whole));
            }

            Assert.True(
                best <= MostMilliseconds,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{best:0} ms of work after the end at {share:0.0} of {whole:0} ms"
                )
            );
        }
    }

    [Fact]
    public void Of_an_ended_run_no_light_is_computed()
    {
        var ended = new CancellationToken(canceled: true);
        Assert.ThrowsAny<OperationCanceledException>(() => Stages(ended).Light);
        Assert.ThrowsAny<OperationCanceledException>(() => Stages(ended).Climate(Reach.Month));
    }

    /// <summary>What is computed belongs to whoever shows it: its run may have ended since.</summary>
    [Fact]
    public void Light_outlives_its_run()
    {
        var design = Posed.Sample("samples/ld-201-flat.viv.yaml").Design;
        using var run = new CancellationTokenSource();
        var light = new DesignStages(design, null, run.Token).Light!;
        var before = light.Along([(0.2, 0.2, 0.3)]);
        run.Cancel();
        Assert.Equal(before, light.Along([(0.2, 0.2, 0.3)]));
    }

    /// <summary>Milliseconds of the processor from the end of the run to its last step.</summary>
    private static double After(double milliseconds)
    {
        using var run = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        var begun = Environment.CpuUsage.TotalTime;
        double asked = double.NaN;
        using var watch = new Timer(
            _ =>
            {
                double now = Spent(begun);
                if (double.IsNaN(asked) && now >= milliseconds)
                {
                    asked = now;
                    run.Cancel();
                }
            },
            null,
            1,
            1
        );
        double all = Work(run.Token, out bool isEnded);
        return isEnded ? all - asked : 0.0;
    }

    private static double Work(CancellationToken cancel, out bool isEnded)
    {
        var begun = Environment.CpuUsage.TotalTime;
        isEnded = false;
        try
        {
            Assert.NotNull(Stages(cancel).Light);
        }
        catch (OperationCanceledException)
        {
            isEnded = true;
        }

        return Spent(begun);
    }

    private static double Spent(TimeSpan begun) => (Environment.CpuUsage.TotalTime - begun).TotalMilliseconds;

    private static DesignStages Stages(CancellationToken cancel) =>
        new(Posed.Text(Large).Design, null, cancel);

    private static string Large =>
        "litterfall: 1\nname: large\n"
        + "box: { outside: { length: 3 m, depth: 2 m, height: 3 m }, glass: { walls: 12 mm, base: 12 mm }, "
        + "opening: top }\n"
        + "background: { material: cork-tile, thickness: 2 cm, sides: [back, left, right] }\n"
        + "floor: { drainage: { material: expanded-clay-8-16, depth: 6 cm }, "
        + "soil: { recipe: standard-rainforest, front: 4 cm, back: 19 cm } }\n"
        + "lid: { material: glass, thickness: 8 mm, gap: 2 mm }\n"
        + "room: { temperature: 22 C, swing: 2 K, humidity: 50 % }\n"
        + Many("lamps", PlausibleCounts.Lamps, i =>
            $"{{ lamp: led-bar-6500k, lumens: 2000, watts: 18, at: {{ x: {20 + (17 * i)} cm, y: 100 cm }} }}"
        )
        + Many("hardscape", PlausibleCounts.Pieces, i =>
            $"{{ material: slate, mass: 300 g, at: {{ x: {15 + (27 * (i % 10))} cm, "
            + $"y: {15 + (27 * (i / 10))} cm }} }}"
        );

    private static string Many(string key, int count, Func<int, string> one) =>
        $"{key}: [ {string.Join(", ", Enumerable.Range(0, count).Select(one))} ]\n";
}
