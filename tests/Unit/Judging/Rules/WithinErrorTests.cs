using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Judging.Rules;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>
/// A limit missed by less than the numbers are good for is a note that says so: 0.5 K, 2 % of humidity, 5 %
/// of the water of a day, a centimeter of a plant (own choices).
/// </summary>
public sealed class WithinErrorTests
{
    private const string Words = "within the error";

    [Theory]
    [InlineData(0.4, true)]
    [InlineData(0.5, true)]
    [InlineData(-0.5, true)]
    [InlineData(0.6, false)]
    [InlineData(-0.6, false)]
    public void Half_a_kelvin_is_near(double kelvins, bool isNear) =>
        Assert.Equal(isNear, ModelError.IsWarmthNear(kelvins));

    [Theory]
    [InlineData(0.89, true)]
    [InlineData(0.92, true)]
    [InlineData(0.87, false)]
    [InlineData(0.93, false)]
    public void Two_percent_of_humidity_are_near(double share, bool isNear)
    {
        var limit = Figure.Choice("posed", 90, Unit.Percent, "posed");
        Assert.Equal(isNear, ModelError.IsHumidityNear(share, limit));
    }

    /// <summary>The limit itself is found by halves, so that no number of the library stands here.</summary>
    [Fact]
    public void A_room_half_a_kelvin_too_hot_is_a_note()
    {
        double avoid = Avoid();
        Told("room-too-hot", Room(Celsius(avoid + 0.4)), Severity.Note, true);
        Told("room-too-hot", Room(Celsius(avoid + 0.6)), Severity.Caution, false);
        Assert.Null(Room(Celsius(avoid - 0.1)).Finding("room-too-hot"));
    }

    private static double Avoid()
    {
        double low = 15;
        double high = 45;
        while (high - low > 0.001)
        {
            double middle = (low + high) / 2;
            (low, high) = Room(Celsius(middle)).Finding("room-too-hot") is null
                ? (middle, high)
                : (low, middle);
        }

        return high;
    }

    private static string Celsius(double celsius) => FormattableString.Invariant($"{celsius:0.000} C");

    private static PosedDesign Room(string warm) =>
        RuleCheck.Pose($"room: {{ temperature: {warm}, humidity: 50 % }}\nFROGS");

    private static void Told(string slug, PosedDesign design, Severity severity, bool isNear)
    {
        var finding = RuleCheck.Trips(slug, severity, design);
        Assert.Equal(isNear, finding.Text.Contains(Words, StringComparison.Ordinal));
    }
}
