using System.Collections.Immutable;
using System.Numerics;

namespace Litterfall.Documents.Perspective;

/// <summary>Turns meshes into parts of a picture: light and dark are painted into their corners.</summary>
internal static class Bake
{
    private static readonly Vector3 Moon = new(0.3f, 0.36f, 0.46f);
    private static readonly Vector3 Warm = new(1.015f, 1f, 0.965f);

    /// <summary>A body, with its ink line around it.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="mesh">The body.</param>
    /// <param name="light">How light a place is, about 1.</param>
    public static IEnumerable<ScenePart> Body(string name, Mesh mesh, Func<Vector3, float> light)
    {
        if (mesh.Points.Count == 0)
        {
            yield break;
        }

        var lit = ImmutableArray.CreateBuilder<uint>(mesh.Points.Count);
        var dark = ImmutableArray.CreateBuilder<uint>(mesh.Points.Count);
        for (var i = 0; i < mesh.Points.Count; i++)
        {
            var here = light(mesh.Points[i]);
            lit.Add(
                Hue.Word(
                    Vector3.Clamp(
                        mesh.Colors[i] * here * (here > 1 ? Warm : Vector3.One),
                        Vector3.Zero,
                        Vector3.One
                    )
                )
            );
            dark.Add(Hue.Word(Night(mesh.Colors[i])));
        }

        yield return Part(PartKind.Solid, name, mesh) with
        {
            Lit = lit.MoveToImmutable(),
            Dark = dark.MoveToImmutable(),
        };
        if (mesh.HullPoints.Count > 0)
        {
            yield return new ScenePart(PartKind.Hull, $"{name} outline")
            {
                Points = [.. mesh.HullPoints],
                Triangles = [.. mesh.HullTriangles],
                Lit = [.. Enumerable.Repeat(Hue.Word(Hue.Of(0x33403A)), mesh.HullPoints.Count)],
                Dark = [.. Enumerable.Repeat(Hue.Word(Hue.Of(0x0F1416)), mesh.HullPoints.Count)],
                Edges = [],
                LitInks = [],
                DarkInks = [],
            };
        }
    }

    /// <summary>What shines while the lamps burn.</summary>
    public static ScenePart Lamp(string name, Mesh mesh) =>
        Part(PartKind.Solid, name, mesh) with
        {
            Lit = [.. mesh.Colors.Select(c => Hue.Word(c))],
            Dark = [.. mesh.Colors.Select(c => Hue.Word(c * 0.36f))],
        };

    /// <summary>Glass, fog or water.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="mesh">The film.</param>
    /// <param name="inDark">How much of it is left in the dark, share.</param>
    public static ScenePart Film(string name, Mesh mesh, float inDark = 1) =>
        Part(PartKind.Film, name, mesh) with
        {
            Lit = [.. mesh.Colors.Select((c, i) => Hue.Word(c, mesh.Alphas[i]))],
            Dark = [.. mesh.Colors.Select((c, i) => Hue.Word(Night(c) * 1.25f, mesh.Alphas[i] * inDark))],
        };

    private static ScenePart Part(PartKind kind, string name, Mesh mesh) =>
        new(kind, name)
        {
            Points = [.. mesh.Points],
            Triangles = [.. mesh.Triangles],
            Edges = [.. mesh.Edges],
            Lit = [],
            Dark = [],
            LitInks = [.. mesh.Inks.Select(k => Hue.Word(new(k.X, k.Y, k.Z), k.W))],
            DarkInks = [.. mesh.Inks.Select(k => Hue.Word(Night(new(k.X, k.Y, k.Z)) * 0.8f, k.W))],
        };

    /// <summary>A color in the dark: less of it, toward blue-gray.</summary>
    private static Vector3 Night(Vector3 color)
    {
        var grey = Vector3.Dot(color, new(0.3f, 0.59f, 0.11f));
        return (Vector3.Lerp(color, new(grey), 0.5f) * Moon) + new Vector3(0.02f, 0.03f, 0.045f);
    }
}
