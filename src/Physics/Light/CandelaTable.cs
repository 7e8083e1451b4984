using System.Collections.Immutable;

namespace Litterfall.Physics.Light;

/// <summary>
/// Luminous intensity of a luminaire by direction, far away from it (type C): linear in both angles, 0
/// outside the
/// vertical range. The vertical angle counts from straight down, the horizontal one counter-clockwise seen
/// from above.
/// </summary>
public sealed class CandelaTable
{
    private const double Degree = Math.PI / 180.0;
    private readonly double[] vertical;
    private readonly double[] horizontal;
    private readonly double[] candela;
    private readonly double fold;
    private readonly bool isBackFirst;

    private CandelaTable(double[] vertical, double[] horizontal, double[] candela)
    {
        this.vertical = vertical;
        this.horizontal = horizontal;
        this.candela = candela;
        isBackFirst = horizontal[0] == 90.0;
        fold = horizontal.Length == 1 ? 0.0 : horizontal[^1];
        Lumens = Flux();
    }

    /// <summary>Vertical angles, °, rising from 0 or 90.</summary>
    public ImmutableArray<double> VerticalDegrees => [.. vertical];

    /// <summary>Horizontal angles as stored, °, rising.</summary>
    public ImmutableArray<double> HorizontalDegrees => [.. horizontal];

    /// <summary>Flux, lm: the exact integral of the table.</summary>
    public double Lumens { get; }

    /// <summary>Largest intensity, cd.</summary>
    public double Most => candela.Max();

    /// <summary>A table.</summary>
    /// <param name="verticalDegrees">Strictly rising within 0 to 180, two or more, °.</param>
    /// <param name="horizontalDegrees">
    /// 0 alone (all round), 0 to 90 (four quarters alike), 0 to 180 (two halves alike), 90 to 270 (the same
    /// about the other plane), or 0 to 360; strictly rising, °.
    /// </param>
    /// <param name="candela">One vertical sweep after the other, cd, 0 or more.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">Shapes or angles do not fit.</exception>
    public static CandelaTable Of(
        ReadOnlySpan<double> verticalDegrees,
        ReadOnlySpan<double> horizontalDegrees,
        ReadOnlySpan<double> candela
    )
    {
        bool isLegal =
            verticalDegrees.Length >= 2
            && horizontalDegrees.Length >= 1
            && candela.Length == verticalDegrees.Length * horizontalDegrees.Length
            && IsRising(verticalDegrees)
            && IsRising(horizontalDegrees)
            && verticalDegrees[0] >= 0.0
            && verticalDegrees[^1] <= 180.0
            && IsLegal(horizontalDegrees);
        return isLegal
            ? new CandelaTable([.. verticalDegrees], [.. horizontalDegrees], [.. candela])
            : throw new ArgumentException("Angles or number of intensities do not fit.", nameof(candela));
    }

    /// <summary>True for first and last angles whose symmetry is known.</summary>
    public static bool IsLegal(ReadOnlySpan<double> horizontalDegrees) =>
        (horizontalDegrees[0], horizontalDegrees[^1], horizontalDegrees.Length) switch
        {
            (0.0, _, 1) => true,
            (0.0, 90.0 or 180.0 or 360.0, _) => true,
            (90.0, 270.0, _) => true,
            _ => false,
        };

    /// <summary>Intensity, cd.</summary>
    /// <param name="verticalDegrees">From straight down, 0 to 180, °.</param>
    /// <param name="horizontalDegrees">Counter-clockwise, any, °.</param>
    public double At(double verticalDegrees, double horizontalDegrees)
    {
        if (verticalDegrees < vertical[0] || verticalDegrees > vertical[^1])
        {
            return 0.0;
        }

        var (v, vs) = Find(vertical, verticalDegrees);
        if (horizontal.Length == 1)
        {
            return Sweep(0, v, vs);
        }

        var (h, hs) = Find(horizontal, Fold(horizontalDegrees));
        return ((1.0 - hs) * Sweep(h, v, vs)) + (hs * Sweep(h + 1, v, vs));
    }

    /// <summary>Intensity of a luminaire turned about the vertical, cd.</summary>
    /// <param name="ray">Direction of length 1, away from the luminaire.</param>
    /// <param name="turnDegrees">Angle of its 0° plane from +x, counter-clockwise, °.</param>
    public double Toward(Point3 ray, double turnDegrees)
    {
        double down = Math.Acos(Math.Clamp(-ray.Z, -1.0, 1.0)) / Degree;
        return horizontal.Length == 1 || (ray.X == 0.0 && ray.Y == 0.0)
            ? At(down, 0.0)
            : At(down, (Math.Atan2(ray.Y, ray.X) / Degree) - turnDegrees);
    }

    /// <summary>The same with every intensity times a factor.</summary>
    /// <param name="factor">0 or more.</param>
    public CandelaTable Times(double factor) =>
        new(vertical, horizontal, [.. candela.Select(c => c * factor)]);

    /// <summary>
    /// Flux of the part between straight down and an angle, as a share of all; rises from 0 to 1.
    /// </summary>
    /// <param name="verticalDegrees">The angle, °.</param>
    public double ShareBelow(double verticalDegrees)
    {
        double sum = 0.0;
        for (int h = 0; h < horizontal.Length; h++)
        {
            sum += Sector(h) * Ring(h, verticalDegrees);
        }

        return Lumens > 0.0 ? sum / Lumens : 0.0;
    }

    private double Flux()
    {
        double sum = 0.0;
        for (int h = 0; h < horizontal.Length; h++)
        {
            sum += Sector(h) * Ring(h, 180.0);
        }

        return sum;
    }

    /// <summary>∫ I sinθ dθ of one sweep, I linear in θ: exact.</summary>
    private double Ring(int h, double untilDegrees)
    {
        double sum = 0.0;
        for (int v = 0; v + 1 < vertical.Length && vertical[v] < untilDegrees; v++)
        {
            double a = vertical[v] * Degree;
            double whole = vertical[v + 1] * Degree;
            double b = Math.Min(whole, untilDegrees * Degree);
            double first = candela[(h * vertical.Length) + v];
            double slope = (candela[(h * vertical.Length) + v + 1] - first) / (whole - a);
            double last = first + (slope * (b - a));
            sum += -(last * Math.Cos(b)) + (first * Math.Cos(a)) + (slope * (Math.Sin(b) - Math.Sin(a)));
        }

        return sum;
    }

    /// <summary>
    /// Horizontal angle that one stored sweep stands for, all its images together, radians.
    /// </summary>
    private double Sector(int h)
    {
        if (horizontal.Length == 1)
        {
            return 2.0 * Math.PI;
        }

        double before = h > 0 ? horizontal[h] - horizontal[h - 1] : 0.0;
        double after = h + 1 < horizontal.Length ? horizontal[h + 1] - horizontal[h] : 0.0;
        return 0.5 * (before + after) * 360.0 / (horizontal[^1] - horizontal[0]) * Degree;
    }

    private double Fold(double degrees)
    {
        double turned = degrees - (360.0 * Math.Floor(degrees / 360.0));
        if (isBackFirst)
        {
            return turned < 90.0 ? 180.0 - turned
                : turned > 270.0 ? 540.0 - turned
                : turned;
        }

        if (fold < 360.0 && turned > 180.0)
        {
            turned = 360.0 - turned;
        }

        return fold == 90.0 && turned > 90.0 ? 180.0 - turned : turned;
    }

    private double Sweep(int h, int v, double share)
    {
        int at = (h * vertical.Length) + v;
        return ((1.0 - share) * candela[at]) + (share * candela[at + 1]);
    }

    private static (int Index, double Share) Find(double[] angles, double angle)
    {
        int at = Array.BinarySearch(angles, angle);
        int low = Math.Clamp(at >= 0 ? at : ~at - 1, 0, angles.Length - 2);
        return (low, Math.Clamp((angle - angles[low]) / (angles[low + 1] - angles[low]), 0.0, 1.0));
    }

    private static bool IsRising(ReadOnlySpan<double> angles)
    {
        for (int i = 1; i < angles.Length; i++)
        {
            if (!(angles[i] > angles[i - 1]))
            {
                return false;
            }
        }

        return true;
    }
}
