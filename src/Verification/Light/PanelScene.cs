using System.Collections.Immutable;
using Litterfall.Physics.Light;

namespace Litterfall.Verification.Light;

/// <summary>
/// The panel and the box that the worked examples share: 0.60 × 0.45 × 0.45 m, panel 0.40 × 0.10 m, 2000 lm.
/// </summary>
internal static class PanelScene
{
    /// <summary>Facing down at z = 0.50, x 0.10 to 0.50, y 0.175 to 0.275.</summary>
    public static readonly Luminaire Panel = Luminaire.Rectangle(
        new Point3(0.30, 0.225, 0.50),
        (0.40, 0.10),
        2000.0
    );

    /// <summary>Clear float glass, 4 mm: n = 1.52, K = 5 1/m.</summary>
    public static readonly PaneOptics Clear = PaneOptics.Single(0.004, 1.52, 5.0);

    /// <summary>No walls: five faces that are not there.</summary>
    public static readonly ImmutableArray<FaceFinish> None =
    [
        FaceFinish.Open,
        FaceFinish.Open,
        FaceFinish.Open,
        FaceFinish.Open,
        FaceFinish.Open,
    ];

    /// <summary>Five black faces.</summary>
    public static readonly ImmutableArray<FaceFinish> Black =
    [
        FaceFinish.Black,
        FaceFinish.Black,
        FaceFinish.Black,
        FaceFinish.Black,
        FaceFinish.Black,
    ];

    /// <summary>Three glass sides, a back and a floor.</summary>
    public static ImmutableArray<FaceFinish> Glass(FaceFinish back, FaceFinish floor) =>
        [FaceFinish.Glass(Clear), FaceFinish.Glass(Clear), FaceFinish.Glass(Clear), back, floor];

    /// <summary>The box with faces and a lid.</summary>
    public static LightScene Box(ImmutableArray<FaceFinish> faces, PaneOptics? lid = null)
    {
        var scene = new LightScene
        {
            Length = 0.60,
            Depth = 0.45,
            Height = 0.45,
            Faces = faces,
        };
        return scene with { Lid = [scene.WholeLid(lid is null ? LidKind.Open : LidKind.Pane, lid)] };
    }

    /// <summary>Open space of 4 × 4 m about the axis of a lamp, its corner at -2, -2.</summary>
    public static LightScene Space()
    {
        var scene = new LightScene
        {
            Length = 4.0,
            Depth = 4.0,
            Height = 2.0,
            Faces = None,
        };
        return scene with { Lid = [scene.WholeLid(LidKind.Open)] };
    }

    /// <summary>Level light at a place of a scene, lx.</summary>
    public static double Level(LightScene scene, Luminaire lamp, double x, double y, double z = 0.0) =>
        At(scene, lamp, new Receiver(new Point3(x, y, z), Point3.Up));

    /// <summary>Light at a receiver, lx.</summary>
    public static double At(LightScene scene, Luminaire lamp, Receiver receiver)
    {
        var model = new LightModel(scene, LightDetail.Fine);
        return model.At(receiver, model.Light(lamp));
    }

    /// <summary>Level light under a lamp in open space, at a distance from the point under it, lx.</summary>
    public static double Under(Luminaire lamp, double x, double y = 0.0, double z = 0.0) =>
        Level(Space(), lamp, 2.0 + x, 2.0 + y, z);
}
