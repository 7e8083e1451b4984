namespace Litterfall.UnitTests.Domain.Photometry;

/// <summary>
/// A made-up luminaire: intensities by a rule, so that any direction has an expected value.
/// </summary>
/// <param name="Vertical">Angles from straight down, °.</param>
/// <param name="Horizontal">Planes of the whole turn, °: 0 up to 360, both with the same values.</param>
/// <param name="Symmetry">
/// 0 none, 1 all round, 2 about the 0° plane, 3 about the 90° plane, 4 both: the numbers of EULUMDAT.
/// </param>
internal sealed record LampModel(double[] Vertical, double[] Horizontal, int Symmetry)
{
    public double Peak { get; init; } = 1000.0;

    public double Along { get; init; }

    public double Across { get; init; }

    /// <summary>Intensity at a node of the table, rounded as files print it.</summary>
    public double At(double down, double around)
    {
        double r = around * Math.PI / 180.0;
        double turn = Symmetry switch
        {
            1 => 0.0,
            2 => 0.3 * Math.Cos(r),
            3 => 0.3 * Math.Sin(r),
            4 => 0.3 * Math.Cos(2.0 * r),
            _ => (0.25 * Math.Cos(r)) + (0.15 * Math.Sin(r)),
        };
        double fall = Math.Max(0.0, Math.Cos(0.5 * down * Math.PI / 180.0));
        return Math.Round(Peak * fall * fall * (1.0 + (turn * Math.Sin(down * Math.PI / 180.0))), 2);
    }

    /// <summary>A random one; planes even, so that every symmetry has its nodes.</summary>
    public static LampModel Random(Random random, int symmetry)
    {
        double[] steps = [2.5, 5.0, 10.0, 15.0];
        double step = steps[random.Next(steps.Length)];
        double last = random.Next(2) == 0 ? 90.0 : 180.0;
        double[] turns = [15.0, 22.5, 30.0, 45.0, 90.0];
        double turn = turns[random.Next(turns.Length)];
        return new LampModel(Angles(step, last), symmetry == 1 ? [0.0] : Angles(turn, 360.0), symmetry)
        {
            Peak = 50 + random.Next(2000),
            Along = Math.Round(random.NextDouble(), 3),
            Across = Math.Round(random.NextDouble(), 3),
        };
    }

    private static double[] Angles(double step, double last) =>
        [.. Enumerable.Range(0, (int)Math.Round(last / step) + 1).Select(i => i * step)];
}
