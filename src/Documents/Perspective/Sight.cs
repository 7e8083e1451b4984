using System.Numerics;

namespace Litterfall.Documents.Perspective;

/// <summary>
/// A scene as a camera sees it: what hides, then lines on it, then films from the farthest on.
/// </summary>
internal sealed class Sight
{
    private readonly List<(Seen A, Seen B, Seen C)> solids = [];
    private readonly List<(Seen A, Seen B)> lines = [];
    private readonly List<(float Near, Seen A, Seen B, Seen C)> films = [];
    private readonly List<(Seen A, Seen B)> rims = [];

    private Sight() { }

    /// <summary>What a camera sees of a scene.</summary>
    public static Sight Of(BoxScene scene, Camera camera, (int Width, int Height) size)
    {
        var sight = new Sight();
        Seen See(Vector3 at, uint color)
        {
            var (x, y, near) = camera.Project(at, size.Width, size.Height);
            return new(x, y, near, color);
        }

        foreach (var part in scene.Parts)
        {
            var colors = scene.IsLit ? part.Lit : part.Dark;
            var inks = scene.IsLit ? part.LitInks : part.DarkInks;
            var points = new Seen[part.Points.Length];
            for (var i = 0; i < points.Length; i++)
            {
                points[i] = See(part.Points[i], colors[i]);
            }

            sight.Take(part, points);
            var edges = part.Kind == PartKind.Film ? sight.rims : sight.lines;
            for (var i = 0; i + 1 < part.Edges.Length; i += 2)
            {
                edges.Add((See(part.Edges[i], inks[i]), See(part.Edges[i + 1], inks[i + 1])));
            }
        }

        sight.films.Sort((a, b) => a.Near.CompareTo(b.Near));
        return sight;
    }

    /// <summary>Draws all into some rows.</summary>
    /// <param name="raster">The rows.</param>
    /// <param name="line">Width of thin lines.</param>
    /// <param name="lift">How much nearer lines count than they are.</param>
    public void Draw(Raster raster, float line, float lift)
    {
        foreach (var (a, b, c) in solids)
        {
            raster.Solid(a, b, c);
        }

        // Below one point a line is drawn one point wide and fainter, as a pen of that width would be.
        var faint = Math.Min(1, line);
        foreach (var (a, b) in lines)
        {
            raster.Line(Faint(a, faint), Faint(b, faint), Math.Max(1, line), lift);
        }

        foreach (var (_, a, b, c) in films)
        {
            raster.Film(a, b, c);
        }

        foreach (var (a, b) in rims)
        {
            raster.Line(Faint(a, faint), Faint(b, faint), Math.Max(1, line), lift);
        }
    }

    private static Seen Faint(in Seen end, float share) =>
        share >= 1
            ? end
            : end with
            {
                Color = (end.Color & 0xFFFFFF) | ((uint)((end.Color >> 24) * share) << 24),
            };

    private void Take(ScenePart part, Seen[] points)
    {
        for (var i = 0; i + 2 < part.Triangles.Length; i += 3)
        {
            var (a, b, c) = (
                points[part.Triangles[i]],
                points[part.Triangles[i + 1]],
                points[part.Triangles[i + 2]]
            );
            switch (part.Kind)
            {
                case PartKind.Film:
                    films.Add(((a.Nearness + b.Nearness + c.Nearness) / 3, a, b, c));
                    break;
                case PartKind.Solid:
                case PartKind.Hull when Raster.Turn(a, b, c) > 0:
                    solids.Add((a, b, c));
                    break;
            }
        }
    }
}
