using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Light;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Light;

/// <summary>Where the light of a lamp ends, as shares of what it sends out.</summary>
/// <param name="Ground">On the ground.</param>
/// <param name="Walls">On backgrounds, and what panes take, by side.</param>
/// <param name="Lid">What the lid takes.</param>
/// <param name="Leaves">On crowns.</param>
/// <param name="Wood">On wood and stone.</param>
internal sealed record LampShares(
    double Ground,
    ImmutableDictionary<Side, double> Walls,
    double Lid,
    double Leaves,
    double Wood
)
{
    private static readonly (Side Side, BoxFace Face)[] Sides =
    [
        (Side.Left, BoxFace.Left),
        (Side.Right, BoxFace.Right),
        (Side.Front, BoxFace.Front),
        (Side.Back, BoxFace.Back),
    ];

    /// <summary>Shares, and which coefficients they were traced with.</summary>
    /// <param name="Lamps">Shares of each lamp.</param>
    /// <param name="Keys">Keys of the coefficients.</param>
    public sealed record Traced(Lit[] Lamps, ImmutableHashSet<string> Keys);

    /// <summary>Light and, of a glowing wire, infrared of a lamp.</summary>
    /// <param name="Light">Where its light ends.</param>
    /// <param name="Infrared">Where its infrared ends; null where the lid stops it.</param>
    public sealed record Lit(LampShares Light, LampShares? Infrared);

    /// <summary>
    /// Share taken inside: ground, leaves, wood, backgrounds, and about half of what panes and lid take.
    /// </summary>
    public double Inside { get; private init; }

    /// <summary>Shares of nothing, where the heat of lamps is not asked for.</summary>
    /// <param name="design">The design.</param>
    public static Lit[] Untraced(CheckedDesign design) =>
        [
            .. design.Design.Lamps.Select(_ => new Lit(
                new LampShares(0, ImmutableDictionary<Side, double>.Empty, 0, 0, 0),
                null
            )),
        ];

    /// <summary>The shares of each lamp of a design; none where there is no air in the box.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="layers">Its layers.</param>
    /// <param name="cancel">Ends it between rays.</param>
    public static Traced Of(
        CheckedDesign design,
        BoxGeometry box,
        ImmutableArray<FloorLayer> layers,
        CancellationToken cancel = default
    )
    {
        var with = ModelCoefficients.Of(design);
        Lit[] lamps = LightBox.Of(design, box, layers, with) is { } light
            ? [.. LampSource.Of(design, light).Select(lamp => Trace(light.Scene, lamp, with, cancel))]
            : [];
        return new(lamps, [.. with.All.Where(c => c.IsUsed).Select(c => c.Key)]);
    }

    private static Lit Trace(
        LightScene scene,
        LampSource lamp,
        ModelCoefficients with,
        CancellationToken cancel
    ) =>
        new(
            Trace(scene, lamp.Luminaires, with.Light, cancel),
            lamp.Kind?.Shape?.Text == "spot"
                ? Trace(ForInfrared(scene, with), lamp.Luminaires, with.Light, cancel)
                : null
        );

    /// <summary>Panes take more of the infrared of a glowing wire than of light.</summary>
    private static LightScene ForInfrared(LightScene scene, ModelCoefficients with)
    {
        var pane = PaneOptics.Single(
            with.Surface.UsualWall.UseSi(),
            with.Light.GlassIndex.Use(),
            with.Light.SolarExtinction.UseSi()
        );
        return scene with
        {
            Lid = [.. scene.Lid.Select(p => p.Kind == LidKind.Pane ? p with { Pane = pane } : p)],
        };
    }

    private static LampShares Trace(
        LightScene scene,
        ImmutableArray<Luminaire> lamps,
        LightCoefficients with,
        CancellationToken cancel
    )
    {
        double flux = lamps.Sum(l => l.Lumens);
        double[] sums = new double[8];
        foreach (var lamp in lamps)
        {
            var ends = LightTracer.Of(scene, lamp, Math.Max(1, LightPolicy.Rays / lamps.Length), cancel);
            double share = flux > 0.0 ? lamp.Lumens / flux : 0.0;
            for (int i = 0; i < Sides.Length; i++)
            {
                sums[i] += share * ends.On(Sides[i].Face);
            }

            sums[4] += share * ends.On(BoxFace.Floor);
            sums[5] += share * ends.Lid;
            sums[6] += share * ends.Canopies.Sum();
            sums[7] += share * ends.Blocks.Sum();
        }

        double half = with.PaneInside.UseSi();
        double walls = Sides
            .Select((s, i) => sums[i] * (scene.Face(s.Face).Kind == FaceKind.Glass ? half : 1.0))
            .Sum();
        return new LampShares(
            sums[4],
            Sides.Select((s, i) => (s.Side, Share: sums[i])).ToImmutableDictionary(s => s.Side, s => s.Share),
            sums[5],
            sums[6],
            sums[7]
        )
        {
            Inside = sums[4] + sums[6] + sums[7] + walls + (half * sums[5]),
        };
    }
}
