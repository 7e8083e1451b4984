namespace Litterfall.Domain.Checking;

/// <summary>Whether drain, sill, lid and holes lie in the box they are for.</summary>
internal static class OpeningChecks
{
    private const double Slack = 1e-9;
    private const double LargestDrain = 0.1;

    /// <summary>What is wrong with them, each at its place.</summary>
    /// <param name="design">The design.</param>
    public static IEnumerable<(string Path, string Message, string Expected)> Faults(Design design)
    {
        if ((design.Box.Inside ?? design.Box.Outside) is not { } edges)
        {
            return [];
        }

        var size = new Size(
            edges.Length.Min(e => e.Si),
            edges.Depth.Min(e => e.Si),
            edges.Height.Min(e => e.Si)
        );
        return [.. Sill(design, size), .. Drain(design, size), .. Lid(design, size), .. Holes(design, size)];
    }

    private sealed record Size(double Length, double Depth, double Height)
    {
        public double Along(Side side) => side is Side.Left or Side.Right ? Depth : Length;
    }

    private static IEnumerable<(string Path, string Message, string Expected)> Sill(Design design, Size box)
    {
        if (design.Box.Sill is { } sill && sill.Si >= box.Height)
        {
            yield return ("box.sill", "the sill is as high as the box", "a sill below the upper edge");
        }
    }

    private static IEnumerable<(string Path, string Message, string Expected)> Drain(Design design, Size box)
    {
        if (design.Drain is not { } drain)
        {
            yield break;
        }

        var side = drain.Side ?? Side.Back;
        if (side == Side.Top)
        {
            yield return ("drain.side", "water does not leave by the top", "front, back, left or right");
        }
        else if (drain.Along is { } along && (along.Si < 0 || along.Si > box.Along(side) + Slack))
        {
            yield return (
                "drain.along",
                FormattableString.Invariant($"that side is {box.Along(side) * 100:0.#} cm long"),
                "a place within it, from its left or front end"
            );
        }

        if (drain.Diameter is { } hole && (hole.Si <= 0 || hole.Si > LargestDrain))
        {
            yield return (
                "drain.diameter",
                "no drain of a box has such a hole",
                FormattableString.Invariant($"above 0 and up to {LargestDrain * 1000:0} mm")
            );
        }

        if (drain.Height is { } height && height.Si > box.Height)
        {
            yield return ("drain.height", "the outlet is above the box", "a height inside the box");
        }
    }

    private static IEnumerable<(string Path, string Message, string Expected)> Lid(Design design, Size box)
    {
        if (design.Lid is not { } lid)
        {
            yield break;
        }

        var strips = (lid.Hinged?.Si ?? 0) + (lid.Strip?.Si ?? 0);
        if (lid.Hinged is { Si: <= 0 } || strips > box.Depth)
        {
            yield return (
                lid.Hinged is null ? "lid.strip" : "lid.hinged",
                "strip and folding part are deeper than the box",
                "less than its depth together"
            );
        }
    }

    private static IEnumerable<(string Path, string Message, string Expected)> Holes(Design design, Size box)
    {
        for (var i = 0; i < design.Vents.Count; i++)
        {
            var vent = design.Vents[i];
            if (vent.Diameter is not null && (vent.Length is not null || vent.Width is not null))
            {
                yield return (
                    FormattableString.Invariant($"vents[{i}].diameter"),
                    "the vent is round and has a length",
                    "diameter, or length and width"
                );
            }
        }

        for (var i = 0; i < design.Passages.Count; i++)
        {
            var passage = design.Passages[i];
            var path = FormattableString.Invariant($"passages[{i}]");
            var side = passage.In == PassagePart.Wall ? passage.Side ?? Side.Back : Side.Back;
            if (passage.Side == Side.Top)
            {
                yield return ($"{path}.side", "the top is no wall", "in: lid, or a wall");
            }
            else if (
                passage.Along?.Si > box.Along(side) + Slack
                || passage.Height?.Si > box.Height + Slack
            )
            {
                yield return (path, "the hole is beyond its wall", "a place within it");
            }
        }
    }
}
