using Litterfall.Documents.Drawings;
using Litterfall.Planning;

namespace Litterfall.Documents.Views;

/// <summary>The three views of a design, each at the largest usual scale that fits its room.</summary>
public sealed class DesignViews
{
    private readonly Scene scene;

    /// <summary>Places everything once.</summary>
    public DesignViews(DesignNumbers numbers) => scene = new Scene(numbers);

    internal Scene Scene => scene;

    /// <summary>Cut open from front to back.</summary>
    public Drawing Section((double Width, double Height) room, Parts parts = Parts.All) =>
        SectionView.Draw(scene, parts, room);

    /// <summary>From above.</summary>
    public Drawing Plan((double Width, double Height) room) => PlanView.Draw(scene, room);

    /// <summary>From the front.</summary>
    public Drawing Front((double Width, double Height) room) => FrontView.Draw(scene, room);
}
