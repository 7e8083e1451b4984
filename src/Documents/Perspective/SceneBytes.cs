using System.Collections.Immutable;
using System.Numerics;
using System.Text;

namespace Litterfall.Documents.Perspective;

/// <summary>
/// Parts of a picture for a browser, little endian. Head: mark, number of parts, 1 where the lamps burn; low
/// and high corner; usual turn, rise and field of the camera in degrees. Each part: kind, 1 where it is live,
/// numbers of points, of corners of triangles and of ends of lines, length of its name; the name, filled to
/// four bytes; origin and step of its points; points (four whole numbers of 16 bits each, the last unused);
/// colors lit, colors dark; corners; ends, inks lit, inks dark.
/// </summary>
public static class SceneBytes
{
    /// <summary>First four bytes.</summary>
    public const int Mark = 0x3157464C;

    private const int Steps = 65000;
    private const int Half = 32500;

    /// <summary>The parts.</summary>
    /// <param name="scene">The scene they belong to.</param>
    /// <param name="isLiveOnly">True for the parts alone that the hour changes.</param>
    public static byte[] Write(BoxScene scene, bool isLiveOnly = false)
    {
        var parts = scene.Parts.Where(p => p.IsLive || !isLiveOnly).ToList();
        using var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream);
        writer.Write(Mark);
        writer.Write(parts.Count);
        writer.Write(scene.IsLit ? 1 : 0);
        Write(writer, scene.Low);
        Write(writer, scene.High);
        writer.Write(scene.Turn);
        writer.Write(Camera.UsualRise);
        writer.Write(Camera.UsualField);
        foreach (var part in parts)
        {
            Write(writer, part);
        }

        writer.Flush();
        return stream.ToArray();
    }

    private static void Write(BinaryWriter writer, ScenePart part)
    {
        var name = Encoding.ASCII.GetBytes(part.Name);
        writer.Write((int)part.Kind);
        writer.Write(part.IsLive ? 1 : 0);
        writer.Write(part.Points.Length);
        writer.Write(part.Triangles.Length);
        writer.Write(part.Edges.Length);
        writer.Write(name.Length);
        writer.Write(name);
        for (var fill = name.Length; fill % 4 != 0; fill++)
        {
            writer.Write((byte)0);
        }

        var (low, high) = Bounds(part);
        var step = Vector3.Max((high - low) / Steps, new(1e-9f));
        var origin = (low + high) / 2;
        Write(writer, origin);
        Write(writer, step);
        Write(writer, part.Points, origin, step);
        Write(writer, part.Lit);
        Write(writer, part.Dark);
        foreach (var corner in part.Triangles)
        {
            writer.Write(corner);
        }

        Write(writer, part.Edges, origin, step);
        Write(writer, part.LitInks);
        Write(writer, part.DarkInks);
    }

    private static (Vector3 Low, Vector3 High) Bounds(ScenePart part)
    {
        var (low, high) = (new Vector3(float.MaxValue), new Vector3(float.MinValue));
        foreach (var p in part.Points.Concat(part.Edges))
        {
            (low, high) = (Vector3.Min(low, p), Vector3.Max(high, p));
        }

        return (low, high);
    }

    private static void Write(BinaryWriter writer, Vector3 at)
    {
        writer.Write(at.X);
        writer.Write(at.Y);
        writer.Write(at.Z);
    }

    private static void Write(BinaryWriter writer, ImmutableArray<uint> colors)
    {
        foreach (var color in colors)
        {
            writer.Write(color);
        }
    }

    private static void Write(
        BinaryWriter writer,
        ImmutableArray<Vector3> points,
        Vector3 origin,
        Vector3 step
    )
    {
        foreach (var p in points)
        {
            var at = (p - origin) / step;
            writer.Write(Whole(at.X));
            writer.Write(Whole(at.Y));
            writer.Write(Whole(at.Z));
            writer.Write((short)0);
        }
    }

    private static short Whole(float steps) => (short)Math.Clamp((int)MathF.Round(steps), -Half, Half);
}
