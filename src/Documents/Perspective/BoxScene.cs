using System.Collections.Immutable;
using System.Numerics;

namespace Litterfall.Documents.Perspective;

/// <summary>How a part of a picture is drawn.</summary>
public enum PartKind
{
    /// <summary>Hides what is behind it.</summary>
    Solid,

    /// <summary>Seen from inside only: the ink line around round bodies.</summary>
    Hull,

    /// <summary>Lets through what is behind it: glass, fog, water.</summary>
    Film,
}

/// <summary>
/// A part of a picture: triangles with a color at each corner while the lamps burn and another in the dark,
/// and thin lines. Points in meters inside the box: x along the front, y from front to back, z up.
/// </summary>
/// <param name="Kind">How it is drawn.</param>
/// <param name="Name">What it is, such as "floor" or "front pane".</param>
public sealed record ScenePart(PartKind Kind, string Name)
{
    /// <summary>Corners.</summary>
    public required ImmutableArray<Vector3> Points { get; init; }

    /// <summary>Colors of the corners while the lamps burn, 0xAABBGGRR.</summary>
    public required ImmutableArray<uint> Lit { get; init; }

    /// <summary>Colors in the dark.</summary>
    public required ImmutableArray<uint> Dark { get; init; }

    /// <summary>Three corners for each triangle, turning left seen from outside.</summary>
    public required ImmutableArray<int> Triangles { get; init; }

    /// <summary>Two ends for each thin line.</summary>
    public required ImmutableArray<Vector3> Edges { get; init; }

    /// <summary>Colors of the ends while the lamps burn.</summary>
    public required ImmutableArray<uint> LitInks { get; init; }

    /// <summary>Colors of the ends in the dark.</summary>
    public required ImmutableArray<uint> DarkInks { get; init; }

    /// <summary>True where it changes with the hour: water, fog, wet soil.</summary>
    public bool IsLive { get; init; }
}

/// <summary>The finished box as a picture in space.</summary>
/// <param name="Parts">Its parts.</param>
/// <param name="Low">Least corner of what must be in the picture, m.</param>
/// <param name="High">Largest corner.</param>
/// <param name="IsLit">True while its lamps burn, or the room is light and there are none.</param>
public sealed record BoxScene(ImmutableArray<ScenePart> Parts, Vector3 Low, Vector3 High, bool IsLit)
{
    /// <summary>Where it is usually seen from: degrees from the front to the right.</summary>
    public float Turn { get; init; } = Camera.UsualTurn;

    /// <summary>Triangles of all parts.</summary>
    public int TriangleCount => Parts.Sum(p => p.Triangles.Length / 3);
}
