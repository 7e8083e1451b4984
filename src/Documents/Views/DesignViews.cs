using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Light;

namespace Litterfall.Documents.Views;

/// <summary>
/// The three views of a design, each at the largest usual scale that fits its room. A view once drawn at a
/// scale is kept, because several papers show the same one.
/// </summary>
public sealed class DesignViews
{
    private readonly Scene scene;
    private readonly Dictionary<(string View, Parts Parts, double Scale), Drawing> drawn = [];

    /// <summary>Places everything once.</summary>
    /// <param name="numbers">The design with its numbers.</param>
    /// <param name="onScreen">
    /// For a screen: fills its room at any scale; a narrow one has its names on one side.
    /// </param>
    public DesignViews(DesignNumbers numbers, bool onScreen = false) =>
        scene = new Scene(numbers) { OnScreen = onScreen };

    internal Scene Scene => scene;

    /// <summary>Cut open from front to back.</summary>
    public Drawing Section((double Width, double Height) room, Parts parts = Parts.All)
    {
        var naming = SectionView.NamingOf(scene, room);
        var scale = SectionView.Fitting(scene, room, naming);
        return Kept(($"section {naming}", parts, scale), () => SectionView.Draw(scene, parts, scale, naming));
    }

    /// <summary>Cut open, as it stands at an hour of the forecast.</summary>
    public Drawing Section((double Width, double Height) room, Moment moment)
    {
        var naming = SectionView.NamingOf(scene, room);
        return Legible.Of(SectionView.Draw(scene, SectionView.Fitting(scene, room, naming), moment, naming));
    }

    /// <summary>The section without names and figures, for a list.</summary>
    public Drawing Small((double Width, double Height) room) =>
        SectionView.Draw(scene, Parts.All, SectionView.Fitting(scene, room, Naming.None), Naming.None);

    /// <summary>What can be taken hold of in the section of a room.</summary>
    public ImmutableArray<Grip> SectionGrips((double Width, double Height) room)
    {
        var naming = SectionView.NamingOf(scene, room);
        return SectionView.Grips(scene, SectionView.Fitting(scene, room, naming), naming);
    }

    /// <summary>What can be taken hold of in the plan of a room.</summary>
    public ImmutableArray<Grip> PlanGrips((double Width, double Height) room) =>
        PlanView.Grips(scene, PlanView.Fitting(scene, room));

    /// <summary>What can be taken hold of in the front view of a room.</summary>
    public ImmutableArray<Grip> FrontGrips((double Width, double Height) room) =>
        FrontView.Grips(scene, FrontView.Fitting(scene, room));

    /// <summary>Where the inside of the box lies in a drawing of a room.</summary>
    /// <param name="view">section, plan, front or light.</param>
    /// <param name="room">Room on the screen.</param>
    /// <param name="light">The light, for its map.</param>
    public DrawnFrame Frame(string view, (double Width, double Height) room, LightFigures? light)
    {
        var naming = SectionView.NamingOf(scene, room);
        return view switch
        {
            "plan" => PlanView.Frame(scene, PlanView.Fitting(scene, room)),
            "front" => FrontView.Frame(scene, FrontView.Fitting(scene, room)),
            "light" when light is not null => LightPlanView.Frame(
                scene,
                light,
                LightPlanView.Fitting(scene, room)
            ),
            _ => SectionView.Frame(scene, SectionView.Fitting(scene, room, naming), naming),
        };
    }

    /// <summary>From above.</summary>
    public Drawing Plan((double Width, double Height) room)
    {
        var scale = PlanView.Fitting(scene, room);
        return Kept(("plan", Parts.All, scale), () => PlanView.Draw(scene, scale));
    }

    /// <summary>From the front.</summary>
    public Drawing Front((double Width, double Height) room)
    {
        var scale = FrontView.Fitting(scene, room);
        return Kept(("front", Parts.All, scale), () => FrontView.Draw(scene, scale));
    }

    /// <summary>Light on the ground from above; null without lamps.</summary>
    public Drawing? LightPlan((double Width, double Height) room)
    {
        if (scene.Numbers.Light is not { } light)
        {
            return null;
        }

        var scale = LightPlanView.Fitting(scene, room);
        return Kept(("light plan", Parts.All, scale), () => LightPlanView.Draw(scene, light, scale));
    }

    /// <summary>A map of light, also one of the design before, over this box as it is now.</summary>
    /// <param name="room">Room on the screen.</param>
    /// <param name="light">The light.</param>
    public Drawing LightPlan((double Width, double Height) room, LightFigures light) =>
        Legible.Of(LightPlanView.Draw(scene, light, LightPlanView.Fitting(scene, room)));

    /// <summary>What can be taken hold of in a map of light.</summary>
    /// <param name="room">Room on the screen.</param>
    /// <param name="light">The light.</param>
    public ImmutableArray<Grip> LightGrips((double Width, double Height) room, LightFigures light) =>
        LightPlanView.Grips(scene, light, LightPlanView.Fitting(scene, room));

    /// <summary>Light from the lid down, cut from front to back; null without lamps.</summary>
    public Drawing? LightSection((double Width, double Height) room)
    {
        if (scene.Numbers.Light is not { } light)
        {
            return null;
        }

        var scale = LightSectionView.Fitting(scene, light, room);
        return Kept(("light section", Parts.All, scale), () => LightSectionView.Draw(scene, light, scale));
    }

    private Drawing Kept((string View, Parts, double) key, Func<Drawing> draw)
    {
        if (!drawn.TryGetValue(key, out var drawing))
        {
            drawing = Legible.Of(draw());
            drawing =
                scene.OnScreen || key.View.StartsWith("light", StringComparison.Ordinal)
                    ? drawing
                    : Legible.Whole(drawing);
            drawn[key] = drawing;
        }

        return drawing;
    }
}
