using Litterfall.Physics.Light;
using Xunit;

namespace Litterfall.UnitTests.Physics.Light;

/// <summary>The way to the nearest shade, beside straight lines counted over all pairs of cells.</summary>
public sealed class ShadeReachTests
{
    private const int Columns = 12;
    private const int Rows = 9;
    private static readonly (double X, double Y) Cell = (0.05, 0.04);

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(42)]
    public void It_is_the_straight_way_or_up_to_a_twelfth_more(int seed)
    {
        var random = new Random(seed);
        bool[] isDark = [.. Cells().Select(_ => random.NextDouble() < 0.08)];
        isDark[random.Next(isDark.Length)] = true;
        bool[] isOpen = [.. isDark.Select(_ => random.NextDouble() < 0.7)];
        double straight = Cells()
            .Where(i => isOpen[i])
            .Max(i => Cells().Where(j => isDark[j]).Min(j => Straight(i, j)));
        double way = ShadeReach.Meters(isDark, isOpen, Columns, Cell);
        Assert.InRange(way, straight - 1e-12, (1.09 * straight) + 1e-12);
    }

    [Fact]
    public void Without_shade_it_is_the_diagonal()
    {
        bool[] none = new bool[Columns * Rows];
        bool[] all = [.. none.Select(_ => true)];
        Assert.Equal(
            Math.Sqrt(Math.Pow(Columns * Cell.X, 2) + Math.Pow(Rows * Cell.Y, 2)),
            ShadeReach.Meters(none, all, Columns, Cell),
            12
        );
        Assert.Equal(0.0, ShadeReach.Meters(all, all, Columns, Cell));
    }

    private static IEnumerable<int> Cells() => Enumerable.Range(0, Columns * Rows);

    private static double Straight(int i, int j) =>
        Math.Sqrt(
            Math.Pow(((i % Columns) - (j % Columns)) * Cell.X, 2)
                + Math.Pow(((i / Columns) - (j / Columns)) * Cell.Y, 2)
        );
}
