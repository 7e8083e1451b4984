using System.Collections.Immutable;
using CsCheck;
using Litterfall.Physics.Air;
using Xunit;

namespace Litterfall.UnitTests.Physics.Air;

/// <summary>What holds for any set of openings.</summary>
public sealed class OpeningSetTests
{
    private static readonly Gen<AirOpening> Upright = Gen.Select(
        Gen.Double[1e-5, 0.05],
        Gen.Double[0.0, 0.6],
        Gen.Double[0.0, 0.05],
        Gen.Double[0.0, 10.0],
        (area, height, extent, viscous) => new AirOpening(area, height, extent, false, viscous, 0.6)
    );

    private static readonly Gen<AirOpening> Level = Gen.Select(
        Gen.Double[1e-4, 0.2],
        Gen.Double[0.0, 10.0],
        (area, viscous) => new AirOpening(area, 0.6, 0.0, true, viscous, 0.6)
    );

    private static readonly Gen<ImmutableArray<AirOpening>> Sets = Gen.Select(
        Upright.Array[0, 4],
        Level.Array[0, 2],
        (upright, level) => (ImmutableArray<AirOpening>)[.. upright, .. level]
    );

    private static readonly Gen<double> Lighter = Gen.Double[-0.08, 0.08];

    [Fact]
    public void Exchange_is_finite_and_never_negative() =>
        Gen.Select(Sets, Lighter)
            .Sample(
                (set, lighter) => new OpeningSet(set).Exchange(1.19 - lighter, 1.19, 0.0) is >= 0.0 and < 1.0
            );

    /// <summary>Fans and draughts join as the root of squares, so a fan never lets less through.</summary>
    [Fact]
    public void A_fan_adds() =>
        Gen.Select(Sets, Lighter, Gen.Double[0.0, 0.01])
            .Sample(
                (set, lighter, fan) =>
                {
                    var openings = new OpeningSet(set);
                    return openings.Exchange(1.19 - lighter, 1.19, fan)
                        >= openings.Exchange(1.19 - lighter, 1.19, 0.0);
                }
            );

    /// <summary>More mesh, less air.</summary>
    [Fact]
    public void Resistance_never_lets_more_through_a_stack() =>
        Gen.Select(Upright, Upright, Lighter, Gen.Double[0.1, 5.0])
            .Sample(
                (a, b, lighter, more) =>
                {
                    double Through(double extra) =>
                        new OpeningSet([
                            a with
                            {
                                Resistance = a.Resistance + extra,
                            },
                            b with
                            {
                                Resistance = b.Resistance + extra,
                            },
                        ]).Buoyant(1.19 - lighter, 1.19);
                    return Through(more) <= Through(0.0) * (1.0 + 1e-6) + 1e-12;
                }
            );

    /// <summary>A stack works the same upside down: warm inside or warm outside.</summary>
    [Fact]
    public void Upright_openings_do_not_care_which_side_is_warmer() =>
        Gen.Select(Upright.Array[1, 4], Lighter)
            .Sample(
                (upright, lighter) =>
                {
                    var openings = new OpeningSet([.. upright]);
                    double warm = openings.Buoyant(1.19 - (0.5 * lighter), 1.19 + (0.5 * lighter));
                    double cold = openings.Buoyant(1.19 + (0.5 * lighter), 1.19 - (0.5 * lighter));
                    return Math.Abs(warm - cold) <= (1e-6 * warm) + 1e-8;
                }
            );

    /// <summary>A heavy box under a level opening keeps its air: nothing but draught passes.</summary>
    [Fact]
    public void Heavier_air_below_a_level_opening_stays() =>
        Gen.Select(Level, Gen.Double[0.001, 0.08])
            .Sample((level, heavier) => new OpeningSet([level]).Buoyant(1.19 + heavier, 1.19) == 0.0);

    /// <summary>
    /// The table of a forecast is within 1 % of the openings it stands for, where air moves at all.
    /// </summary>
    [Fact]
    public void The_table_is_the_openings() =>
        Gen.Select(Sets, Lighter)
            .Sample(
                (set, lighter) =>
                {
                    var openings = new OpeningSet(set);
                    double exact = openings.Exchange(1.19 - (0.5 * lighter), 1.19 + (0.5 * lighter), 0.0);
                    double table = openings.Tabulated()(1.19 - (0.5 * lighter), 1.19 + (0.5 * lighter), 0.0);
                    return Math.Abs(table - exact) <= (0.01 * exact) + 1e-6;
                }
            );

    [Fact]
    public void A_closed_box_exchanges_nothing() =>
        Assert.Equal(0.0, new OpeningSet([]).Exchange(1.1, 1.2, 0.0));
}
