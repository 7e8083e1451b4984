using System.Collections.Immutable;

namespace Litterfall.Physics.Light;

/// <summary>Sides of a box as light meets them.</summary>
public enum BoxFace
{
    /// <summary>x = 0.</summary>
    Left,

    /// <summary>x = length.</summary>
    Right,

    /// <summary>y = 0.</summary>
    Front,

    /// <summary>y = depth.</summary>
    Back,

    /// <summary>z = 0.</summary>
    Floor,

    /// <summary>z = height: the lid, or a closed ceiling.</summary>
    Top,
}

/// <summary>How a face treats light.</summary>
public enum FaceKind
{
    /// <summary>Takes all.</summary>
    Black,

    /// <summary>Is not there.</summary>
    Open,

    /// <summary>A pane with black behind it: a mirror by Fresnel.</summary>
    Glass,

    /// <summary>Throws a share back evenly in all directions (Lambert).</summary>
    Diffuse,
}

/// <summary>A face.</summary>
/// <param name="Kind">How it treats light.</param>
/// <param name="Reflectance">Share thrown back where diffuse, 0 to 1.</param>
/// <param name="Pane">The pane where it is one.</param>
public sealed record FaceFinish(FaceKind Kind, double Reflectance = 0.0, PaneOptics? Pane = null)
{
    /// <summary>A black face.</summary>
    public static readonly FaceFinish Black = new(FaceKind.Black);

    /// <summary>No face.</summary>
    public static readonly FaceFinish Open = new(FaceKind.Open);

    /// <summary>A diffuse face.</summary>
    /// <param name="reflectance">Share thrown back, 0 to 1.</param>
    public static FaceFinish Diffuse(double reflectance) => new(FaceKind.Diffuse, reflectance);

    /// <summary>A pane, black outside.</summary>
    /// <param name="pane">The pane.</param>
    public static FaceFinish Glass(PaneOptics pane) => new(FaceKind.Glass, 0.0, pane);
}

/// <summary>Something opaque with six diffuse faces.</summary>
/// <param name="Extent">Its box, m.</param>
/// <param name="Reflectance">Share thrown back, 0 to 1.</param>
public sealed record LightBlock(Box3 Extent, double Reflectance);

/// <summary>
/// Leaves spread evenly in a box or in the ellipsoid that fits into it:
/// a ray keeps exp(−G √α a s) of its light on a way s through it.
/// </summary>
/// <param name="Extent">Its box, m.</param>
/// <param name="LeafAreaPerMeter">Leaf area a of one side per volume, m²/m³.</param>
/// <remarks>
/// Monsi and Saeki 1953; the root of the absorptance stands for scattering (Goudriaan 1977); both recalled.
/// </remarks>
public sealed record Canopy(Box3 Extent, double LeafAreaPerMeter)
{
    /// <summary>Mean projection of leaves, 0 to 1; 0.5 for leaves in all directions.</summary>
    public double Projection { get; init; } = 0.5;

    /// <summary>Share of the light on a leaf that it takes, 0 to 1.</summary>
    public double Absorptance { get; init; } = 0.8;

    /// <summary>True for an ellipsoid.</summary>
    public bool IsRound { get; init; }

    /// <summary>G √α a, 1/m.</summary>
    public double Extinction => Projection * Math.Sqrt(Absorptance) * LeafAreaPerMeter;

    /// <summary>Share of the light left after a straight way.</summary>
    /// <param name="start">From, m.</param>
    /// <param name="way">To less from, m.</param>
    public double Through(Point3 start, Point3 way)
    {
        double share = Inside(start, way);
        return share <= 0.0 ? 1.0 : Math.Exp(-Extinction * share * way.Length);
    }

    private double Inside(Point3 start, Point3 way)
    {
        if (!IsRound)
        {
            var (enter, leave) = Extent.Along(start, way);
            return leave - enter;
        }

        var half = 0.5 * (Extent.To - Extent.From);
        var middle = 0.5 * (Extent.To + Extent.From);
        double sx = (start.X - middle.X) / half.X;
        double sy = (start.Y - middle.Y) / half.Y;
        double sz = (start.Z - middle.Z) / half.Z;
        double wx = way.X / half.X;
        double wy = way.Y / half.Y;
        double wz = way.Z / half.Z;
        double a = (wx * wx) + (wy * wy) + (wz * wz);
        double b = (sx * wx) + (sy * wy) + (sz * wz);
        double c = (sx * sx) + (sy * sy) + (sz * sz) - 1.0;
        double root = (b * b) - (a * c);
        if (root <= 0.0 || a <= 0.0)
        {
            return 0.0;
        }

        root = Math.Sqrt(root);
        return Math.Min(1.0, (-b + root) / a) - Math.Max(0.0, (-b - root) / a);
    }
}

/// <summary>
/// A box as light meets it: x along the front from the left, y from front to back, z up from the ground, lid
/// underside at the height; all in m.
/// </summary>
public sealed record LightScene
{
    /// <summary>Inside along x, m.</summary>
    public required double Length { get; init; }

    /// <summary>Inside along y, m.</summary>
    public required double Depth { get; init; }

    /// <summary>From the ground to the lid's underside, m.</summary>
    public required double Height { get; init; }

    /// <summary>Left, right, front, back and floor, in this order.</summary>
    public required ImmutableArray<FaceFinish> Faces { get; init; }

    /// <summary>Parts of the lid; beside them nothing comes in through the plane of the lid.</summary>
    public ImmutableArray<LidPart> Lid { get; init; } = [];

    /// <summary>Reflectance of a closed diffuse ceiling under lamps inside; null for a lid.</summary>
    public double? Ceiling { get; init; }

    /// <summary>Opaque things.</summary>
    public ImmutableArray<LightBlock> Blocks { get; init; } = [];

    /// <summary>Leaves.</summary>
    public ImmutableArray<Canopy> Canopies { get; init; } = [];

    /// <summary>A face.</summary>
    public FaceFinish Face(BoxFace face) =>
        face != BoxFace.Top ? Faces[(int)face]
        : Ceiling is { } reflectance ? FaceFinish.Diffuse(reflectance)
        : FaceFinish.Open;

    /// <summary>A lid of one kind all over.</summary>
    /// <param name="kind">What it is made of.</param>
    /// <param name="pane">The pane where it is one.</param>
    /// <param name="wireOverPitch">d/p of a mesh.</param>
    public LidPart WholeLid(LidKind kind, PaneOptics? pane = null, double wireOverPitch = 0.0) =>
        new(0.0, Length, 0.0, Depth)
        {
            Kind = kind,
            Pane = pane,
            WireOverPitch = wireOverPitch,
        };
}
