using System.Numerics;

namespace Litterfall.Documents.Perspective;

/// <summary>Where a picture is looked at from.</summary>
/// <param name="Eye">The eye, m.</param>
/// <param name="Target">What it looks at.</param>
/// <param name="FieldDegrees">How much it sees from top to bottom.</param>
public sealed record Camera(Vector3 Eye, Vector3 Target, float FieldDegrees)
{
    /// <summary>Usual view: a little from the right, a little from above.</summary>
    public const float UsualTurn = 24;

    /// <summary>How far from above, degrees.</summary>
    public const float UsualRise = 13;

    /// <summary>A long lens bends a box little.</summary>
    public const float UsualField = 26;

    private const float Margin = 0.93f;

    /// <summary>A camera that has a whole scene in its picture.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="aspect">Width over height of the picture.</param>
    /// <param name="turnDegrees">From the front, to the right; its usual side where left out.</param>
    /// <param name="riseDegrees">From level, up.</param>
    /// <param name="zoom">How many times nearer than the whole box needs.</param>
    public static Camera Fit(
        BoxScene scene,
        float aspect,
        float? turnDegrees = null,
        float riseDegrees = UsualRise,
        float zoom = 1
    )
    {
        var (turnSin, turnCos) = MathF.SinCos(float.DegreesToRadians(turnDegrees ?? scene.Turn));
        var (riseSin, riseCos) = MathF.SinCos(float.DegreesToRadians(riseDegrees));
        var away = new Vector3(turnSin * riseCos, -turnCos * riseCos, riseSin);
        var level = new Vector3(turnCos, turnSin, 0);
        var rising = Vector3.Cross(away, level);
        var corners = Mesh.Corners(scene.Low, scene.High);
        var tall = MathF.Tan(float.DegreesToRadians(UsualField) / 2) * Margin;
        var wide = tall * aspect;
        var target = (scene.Low + scene.High) / 2;
        var far = 1f;
        for (var pass = 0; pass < 8; pass++)
        {
            far = corners.Max(c =>
                Math.Max(
                    Vector3.Dot(c - target, away) + (MathF.Abs(Vector3.Dot(c - target, level)) / wide),
                    Vector3.Dot(c - target, away) + (MathF.Abs(Vector3.Dot(c - target, rising)) / tall)
                )
            );
            var across = corners
                .Select(c => Vector3.Dot(c - target, level) / (far - Vector3.Dot(c - target, away)))
                .ToArray();
            var upward = corners
                .Select(c => Vector3.Dot(c - target, rising) / (far - Vector3.Dot(c - target, away)))
                .ToArray();
            target +=
                (level * ((across.Max() + across.Min()) / 2 * far))
                + (rising * ((upward.Max() + upward.Min()) / 2 * far));
        }

        return new Camera(target + (away * (far / zoom)), target, UsualField);
    }

    private readonly Vector3 right = Across(Eye - Target);
    private readonly Vector3 up = Vector3.Cross(Vector3.Normalize(Eye - Target), Across(Eye - Target));
    private readonly Vector3 back = Vector3.Normalize(Eye - Target);
    private readonly float reach = 0.5f / MathF.Tan(float.DegreesToRadians(FieldDegrees) / 2);

    /// <summary>
    /// Where a point is seen: from the left and from the top of a picture, in its units, and one over its
    /// distance along the view; 0 or less for one behind the eye.
    /// </summary>
    /// <param name="at">The point, m.</param>
    /// <param name="width">Width of the picture.</param>
    /// <param name="height">Height of the picture.</param>
    public (float X, float Y, float Nearness) Project(Vector3 at, float width, float height)
    {
        var from = at - Eye;
        var far = -Vector3.Dot(from, back);
        var scale = height * reach / far;
        return (
            (width / 2) + (scale * Vector3.Dot(from, right)),
            (height / 2) - (scale * Vector3.Dot(from, up)),
            1 / far
        );
    }

    /// <summary>Level, to the right of a view that looks against a direction.</summary>
    private static Vector3 Across(Vector3 back) => Vector3.Normalize(Vector3.Cross(Vector3.UnitZ, back));
}
