namespace Litterfall.Physics.Light;

/// <summary>What a part of the lid is made of.</summary>
public enum LidKind
{
    /// <summary>Nothing.</summary>
    Open,

    /// <summary>Glass or clear plastic.</summary>
    Pane,

    /// <summary>Woven mesh, wires along x and y.</summary>
    Mesh,

    /// <summary>Lets nothing through.</summary>
    Opaque,
}

/// <summary>A rectangle of the lid in the plane of its underside; m.</summary>
/// <param name="Left">Lowest x, m.</param>
/// <param name="Right">Highest x, m.</param>
/// <param name="Front">Lowest y, m.</param>
/// <param name="Back">Highest y, m.</param>
public sealed record LidPart(double Left, double Right, double Front, double Back)
{
    /// <summary>What it is made of.</summary>
    public required LidKind Kind { get; init; }

    /// <summary>The pane, where it is one.</summary>
    public PaneOptics? Pane { get; init; }

    /// <summary>Wire diameter over pitch of a mesh, 0 to 1.</summary>
    public double WireOverPitch { get; init; }

    /// <summary>Multiplies what comes through: dirt, drops.</summary>
    public double Clean { get; init; } = 1.0;

    /// <summary>True where it covers a point of the plane.</summary>
    public bool Covers(double x, double y) => x >= Left && x <= Right && y >= Front && y <= Back;

    /// <summary>Share of a ray that comes through.</summary>
    /// <param name="ray">Direction of length 1; its z is not 0.</param>
    public double Through(Point3 ray)
    {
        double down = Math.Abs(ray.Z);
        return Kind switch
        {
            LidKind.Open => Clean,
            LidKind.Pane => Clean * Pane!.Through(down),
            LidKind.Mesh => Clean * ThroughMesh(WireOverPitch, ray),
            _ => 0.0,
        };
    }

    /// <summary>Share of a ray that is thrown back; a mesh and an opening throw nothing back.</summary>
    /// <param name="cosine">Cosine of the angle to the normal, 0 to 1.</param>
    public double ThrownBack(double cosine) => Kind == LidKind.Pane ? Pane!.Back(cosine) : 0.0;

    /// <summary>
    /// Square weave: (1 − (d/p)/cos θa)(1 − (d/p)/cos θb), θa and θb the angles of the ray projected on the
    /// planes normal to each set of wires, not below 0.
    /// </summary>
    /// <param name="wireOverPitch">d/p, 0 to 1.</param>
    /// <param name="ray">Direction of any length; its z is not 0.</param>
    public static double ThroughMesh(double wireOverPitch, Point3 ray)
    {
        double z = ray.Z * ray.Z;
        double a = 1.0 - (wireOverPitch * Math.Sqrt(1.0 + (ray.X * ray.X / z)));
        double b = 1.0 - (wireOverPitch * Math.Sqrt(1.0 + (ray.Y * ray.Y / z)));
        return a > 0.0 && b > 0.0 ? a * b : 0.0;
    }
}
