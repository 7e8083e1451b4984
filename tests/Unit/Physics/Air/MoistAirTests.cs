using CsCheck;
using Litterfall.Physics.Air;
using Xunit;

namespace Litterfall.UnitTests.Physics.Air;

/// <summary>Functions of moist air undo one another.</summary>
public sealed class MoistAirTests
{
    private static readonly Gen<double> Celsius = Gen.Double[-10.0, 60.0];
    private static readonly Gen<double> Humidity = Gen.Double[0.001, 1.0];

    [Fact]
    public void Vapor_pressure_and_humidity_ratio_undo_one_another() =>
        Gen.Select(Celsius, Humidity, Gen.Double[60_000.0, 110_000.0])
            .Sample(
                (celsius, humidity, pascals) =>
                {
                    double vapor = humidity * MoistAir.SaturationPressure(celsius);
                    double back = MoistAir.VaporPressure(MoistAir.HumidityRatio(vapor, pascals), pascals);
                    return Math.Abs(back - vapor) <= 1e-10 * vapor;
                }
            );

    [Fact]
    public void The_dew_point_saturates() =>
        Gen.Select(Celsius, Humidity)
            .Sample(
                (celsius, humidity) =>
                {
                    double vapor = humidity * MoistAir.SaturationPressure(celsius);
                    return Math.Abs(MoistAir.SaturationPressure(MoistAir.DewPoint(vapor)) - vapor)
                        <= 1e-8 * vapor;
                }
            );

    [Fact]
    public void Bone_dry_air_has_a_dew_point_too()
    {
        Assert.True(double.IsFinite(MoistAir.DewPoint(0.0)));
        Assert.True(double.IsFinite(MoistAir.DewPoint(1e-9)));
    }

    /// <summary>The table is the equation to 1e-9, and its slope is its own derivative.</summary>
    [Fact]
    public void The_table_is_the_equation() =>
        Gen.Double[-19.9, 79.9]
            .Sample(celsius =>
            {
                var (pascals, slope) = SaturationTable.At(celsius);
                double step = 1e-4;
                double rise =
                    (SaturationTable.At(celsius + step).Pascals - SaturationTable.At(celsius - step).Pascals)
                    / (2.0 * step);
                return Math.Abs(pascals / MoistAir.SaturationPressure(celsius) - 1.0) < 1e-8
                    && Math.Abs((rise / slope) - 1.0) < 1e-5;
            });
}
