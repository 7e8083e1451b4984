using System.Collections.Immutable;
using System.Numerics;
using Litterfall.Documents.Perspective;
using SkiaSharp;

namespace Litterfall.UnitTests.Documents;

/// <summary>
/// Stills: what covers what, how much, and where a camera sees it. Expected values by hand.
/// </summary>
public sealed class StillTests
{
    private const uint Red = 0xFF0000FF;
    private const uint Blue = 0xFFFF0000;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>
    /// From 2 m before the origin, 90° from top to bottom: a meter at the origin is a quarter.
    /// </summary>
    private static readonly Camera Ahead = new(new(0, -2, 0), Vector3.Zero, 90);

    /// <summary>
    /// Half of 400 points over tan 45° is 200; at 2 m half a meter is 50 to the right, and so on.
    /// </summary>
    [Fact]
    public void A_camera_sees_a_point_where_it_is()
    {
        var (x, y, near) = Ahead.Project(new(0.5f, 0, 0.25f), 400, 400);
        Assert.Equal((250f, 175f, 0.5f), (x, y, near));
        (x, y, near) = Ahead.Project(new(-1, 2, 0), 600, 400);
        Assert.Equal((250f, 200f, 0.25f), (x, y, near));
        Assert.True(Ahead.Project(new(0, -3, 0), 400, 400).Nearness < 0);
    }

    /// <summary>A right triangle of 1 m by 1 m, 2 m away: 100 × 100 / 2 points.</summary>
    [Fact]
    public void A_triangle_covers_its_area()
    {
        using var picture = Draw(
            Part(PartKind.Solid, Red, new(-0.5f, 0, -0.5f), new(0.5f, 0, -0.5f), new(-0.5f, 0, 0.5f))
        );
        Assert.InRange(Share(picture, Red) * 400 * 400, 4950, 5050);
        Assert.Equal(Red, Color(picture, 160, 240));
        Assert.NotEqual(Red, Color(picture, 240, 160));
    }

    /// <summary>Two that share an edge leave no gap and cover 100 × 100 points together.</summary>
    [Fact]
    public void Neighbors_leave_no_gap()
    {
        using var picture = Draw(Square(PartKind.Solid, Red, 0));
        Assert.InRange(Share(picture, Red) * 400 * 400, 9990, 10010);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_nearer_one_hides_the_other(bool isNearFirst)
    {
        var (near, far) = (Square(PartKind.Solid, Blue, -0.5f), Square(PartKind.Solid, Red, 0.5f));
        using var picture = Draw(isNearFirst ? [near, far] : [far, near]);
        Assert.Equal(Blue, Color(picture, 200, 200));
        Assert.Equal(0, Share(picture, Red));
    }

    /// <summary>Blue at half strength over red is 127.5 of each; what lies before it is not tinted.</summary>
    [Fact]
    public void A_film_mixes_with_what_is_behind_it()
    {
        using var picture = Draw(Square(PartKind.Film, 0x80FF0000, -0.2f), Square(PartKind.Solid, Red, 0.2f));
        var mixed = Color(picture, 200, 200);
        Assert.InRange((int)(mixed & 255), 126, 129);
        Assert.InRange((int)((mixed >> 16) & 255), 126, 129);
        using var behind = Draw(Square(PartKind.Film, 0x80FF0000, 0.2f), Square(PartKind.Solid, Red, -0.2f));
        Assert.Equal(Red, Color(behind, 200, 200));
    }

    /// <summary>A hull shows from inside only.</summary>
    [Fact]
    public void A_hull_is_seen_from_one_side()
    {
        var front = Square(PartKind.Hull, Red, 0);
        using var seen = Draw(front);
        using var turned = Draw(front with { Triangles = [.. front.Triangles.Reverse()] });
        Assert.NotEqual(Share(seen, Red) > 0.01, Share(turned, Red) > 0.01);
    }

    /// <summary>The whole box is in the picture, and fills most of its height or width.</summary>
    [Theory]
    [InlineData(1.25f, 24, 13)]
    [InlineData(0.6f, -70, 40)]
    [InlineData(2.2f, 0, 0)]
    public void A_fitted_camera_has_all_of_it(float aspect, float turn, float rise)
    {
        var scene = new BoxScene([], new(-0.05f, -0.05f, -0.02f), new(0.65f, 0.5f, 0.6f), true);
        var camera = Camera.Fit(scene, aspect, turn, rise);
        var (width, height) = (1000 * aspect, 1000f);
        var seen = new List<(float X, float Y)>();
        foreach (var x in new[] { scene.Low.X, scene.High.X })
        {
            foreach (var y in new[] { scene.Low.Y, scene.High.Y })
            {
                foreach (var z in new[] { scene.Low.Z, scene.High.Z })
                {
                    var (px, py, _) = camera.Project(new(x, y, z), width, height);
                    seen.Add((px, py));
                }
            }
        }

        Assert.All(seen, p => Assert.InRange(p.X, 0, width));
        Assert.All(seen, p => Assert.InRange(p.Y, 0, height));
        var share = Math.Max(
            (seen.Max(p => p.X) - seen.Min(p => p.X)) / width,
            (seen.Max(p => p.Y) - seen.Min(p => p.Y)) / height
        );
        Assert.InRange(share, 0.85, 0.95);
    }

    [Theory]
    [InlineData(360, 288)]
    [InlineData(1200, 700)]
    public void A_still_has_the_size_that_was_asked_for(int width, int height)
    {
        using var picture = SKBitmap.Decode(
            StillWriter.Png(Scene(Square(PartKind.Solid, Red, 0)), width, height, Ahead, Cancel)
        );
        Assert.Equal((width, height), (picture.Width, picture.Height));
    }

    [Theory]
    [InlineData(63, 100)]
    [InlineData(100, 63)]
    [InlineData(2401, 100)]
    [InlineData(100, 2401)]
    public void A_size_beyond_its_bounds_is_refused(int width, int height) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            StillWriter.Png(Scene(), width, height, Ahead, Cancel)
        );

    [Fact]
    public void A_still_that_nobody_waits_for_stops() =>
        Assert.ThrowsAny<OperationCanceledException>(() =>
            StillWriter.Png(Scene(), 400, 400, Ahead, new CancellationToken(canceled: true))
        );

    private static BoxScene Scene(params ScenePart[] parts) =>
        new([.. parts], -Vector3.One, Vector3.One, true);

    private static SKBitmap Draw(params ScenePart[] parts) =>
        SKBitmap.Decode(StillWriter.Png(Scene(parts), 400, 400, Ahead, Cancel));

    /// <summary>A square of 1 m at right angles to the view, nearer or farther than the origin.</summary>
    private static ScenePart Square(PartKind kind, uint color, float y)
    {
        // Twice as far shows half as large: the square is as large in the picture at any distance.
        var half = 0.5f * (2 + y) / 2;
        return Part(
            kind,
            color,
            new(-half, y, -half),
            new(half, y, -half),
            new(half, y, half),
            new(-half, y, half)
        );
    }

    private static ScenePart Part(PartKind kind, uint color, params Vector3[] around)
    {
        ImmutableArray<uint> colors = [.. Enumerable.Repeat(color, around.Length)];
        return new ScenePart(kind, "posed")
        {
            Points = [.. around],
            Triangles = around.Length == 3 ? [0, 1, 2] : [0, 1, 2, 0, 2, 3],
            Lit = colors,
            Dark = colors,
            Edges = [],
            LitInks = [],
            DarkInks = [],
        };
    }

    private static uint Color(SKBitmap picture, int x, int y)
    {
        var c = picture.GetPixel(x, y);
        return c.Red | ((uint)c.Green << 8) | ((uint)c.Blue << 16) | 0xFF000000;
    }

    private static double Share(SKBitmap picture, uint color)
    {
        var count = 0;
        for (var y = 0; y < picture.Height; y++)
        {
            for (var x = 0; x < picture.Width; x++)
            {
                count += Color(picture, x, y) == color ? 1 : 0;
            }
        }

        return (double)count / (picture.Width * picture.Height);
    }
}
