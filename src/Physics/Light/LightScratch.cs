namespace Litterfall.Physics.Light;

/// <summary>Room that views of lamps use again and again; for one thread.</summary>
internal sealed class LightScratch
{
    private ShadowOutline[] shadows = [];
    private Canopy[] leaves = [];

    /// <summary>Room for all that stands in a way.</summary>
    public (ShadowOutline[] Shadows, Canopy[] Leaves) For(MirrorPath path)
    {
        if (shadows.Length < path.Blocks.Length)
        {
            shadows = new ShadowOutline[path.Blocks.Length];
        }

        if (leaves.Length < path.Canopies.Length)
        {
            leaves = new Canopy[path.Canopies.Length];
        }

        return (shadows, leaves);
    }
}
