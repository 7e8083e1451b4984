using System.Numerics;
using Litterfall.Forecasting.Light;
using Litterfall.Quantities.Placing;

namespace Litterfall.Documents.Perspective;

/// <summary>
/// How light each place of the box is, from the computed light at a grid of places; without lamps a little
/// lighter near the top.
/// </summary>
internal sealed class SceneLight
{
    private const int CellsX = 7;
    private const int CellsY = 5;
    private const int CellsZ = 6;
    private const float Darkest = 0.68f;
    private const float Lightest = 1.16f;

    /// <summary>
    /// The eye sees differences far smaller than they are; this keeps shade readable in print.
    /// </summary>
    private const double EyePower = 0.42;

    private const double ReferenceShare = 0.8;
    private readonly Vector3 size;
    private readonly float[]? shares;

    /// <summary>The light of a box.</summary>
    /// <param name="light">What is computed; null without lamps.</param>
    /// <param name="terrain">Its ground.</param>
    public SceneLight(LightFigures? light, Terrain terrain)
    {
        size = new((float)terrain.Length, (float)terrain.DepthOfBox, (float)terrain.Height);
        if (light is null)
        {
            return;
        }

        var places = new List<(double X, double Y, double Z)>();
        for (var k = 0; k < CellsZ; k++)
        {
            for (var j = 0; j < CellsY; j++)
            {
                for (var i = 0; i < CellsX; i++)
                {
                    places.Add(
                        (
                            size.X * (0.04 + (0.92 * i / (CellsX - 1))),
                            size.Y * (0.04 + (0.92 * j / (CellsY - 1))),
                            size.Z * (0.03 + (0.94 * k / (CellsZ - 1)))
                        )
                    );
                }
            }
        }

        var found = Filled([.. light.Along(places)]);
        var bright = found.Where(v => v > 0).Order().ToArray();
        if (bright.Length == 0)
        {
            return;
        }

        var reference = bright[(int)(ReferenceShare * (bright.Length - 1))];
        shares =
        [
            .. found.Select(v =>
                Math.Clamp((float)Math.Pow(v / reference, EyePower) * 1.08f, Darkest, Lightest)
            ),
        ];
    }

    /// <summary>A place inside wood or stone, where light is 0, is as light as the one above it.</summary>
    private static double[] Filled(double[] values)
    {
        const int Floor = CellsX * CellsY;
        for (var i = values.Length - Floor - 1; i >= 0; i--)
        {
            values[i] = values[i] > 0 ? values[i] : values[i + Floor];
        }

        return values;
    }

    /// <summary>How light a place is, about 1.</summary>
    /// <param name="at">The place; outside the box the nearest inside counts.</param>
    public float At(Vector3 at)
    {
        if (shares is null)
        {
            return 0.94f + (0.14f * Math.Clamp(at.Z / size.Z, 0, 1));
        }

        var (i, x) = Cell(at.X / size.X, CellsX);
        var (j, y) = Cell(at.Y / size.Y, CellsY);
        var (k, z) = Cell(at.Z / size.Z, CellsZ);
        float Row(int b, int c)
        {
            var first = i + (CellsX * (b + (CellsY * c)));
            return shares[first] + (x * (shares[first + 1] - shares[first]));
        }

        var low = Row(j, k) + (y * (Row(j + 1, k) - Row(j, k)));
        var high = Row(j, k + 1) + (y * (Row(j + 1, k + 1) - Row(j, k + 1)));
        return low + (z * (high - low));
    }

    private static (int First, float Beyond) Cell(float share, int cells)
    {
        var at = Math.Clamp((share - 0.03f) / 0.94f, 0, 1) * (cells - 1);
        var first = Math.Min((int)at, cells - 2);
        return (first, at - first);
    }
}
