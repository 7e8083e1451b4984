namespace Litterfall.Domain.Checking;

/// <summary>Whether doors and shelves fit the box they are for.</summary>
internal static class PaneChecks
{
    private const double Slack = 1e-9;

    /// <summary>What is wrong with doors and shelves, each at its place.</summary>
    /// <param name="design">The design.</param>
    public static IEnumerable<(string Path, string Message, string Expected)> Faults(Design design) =>
        [.. DoorFaults(design), .. ShelfFaults(design)];

    private static IEnumerable<(string Path, string Message, string Expected)> DoorFaults(Design design)
    {
        if (design.Box.Doors is not { } doors)
        {
            yield break;
        }

        if (doors.Kind is null)
        {
            var told = new (string Key, bool IsThere)[]
            {
                ("material", doors.Material is not null),
                ("thickness", doors.Thickness is not null),
                ("height", doors.Height is not null),
                ("overlap", doors.Overlap is not null),
                ("play", doors.Play is not null),
                ("rated", doors.Rated is not null),
            };
            if (told.FirstOrDefault(t => t.IsThere) is { IsThere: true } first)
            {
                yield return (
                    $"box.doors.{first.Key}",
                    "the kind of the doors is not told",
                    "kind: sliding, hinged or lift-out beside it"
                );
            }

            yield break;
        }

        if (design.Box.Opening != Opening.Front)
        {
            yield return ("box.doors.kind", "this box opens on top", "opening: front beside the doors");
        }

        if (doors is { Kind: DoorKind.LiftOut, Count: > 1 })
        {
            yield return ("box.doors.count", "a lift-out front is one pane", "count: 1");
        }

        if (doors is { Kind: DoorKind.Sliding, Count: 1 })
        {
            yield return ("box.doors.count", "one pane cannot slide past another", "2 panes or more");
        }

        if (doors.Thickness is { Si: <= 0 })
        {
            yield return ("box.doors.thickness", "this is zero", "a thickness above 0");
        }

        if (doors.Kind != DoorKind.Sliding && (doors.Overlap is not null || doors.Play is not null))
        {
            yield return (
                doors.Overlap is not null ? "box.doors.overlap" : "box.doors.play",
                "only sliding panes overlap and have tracks",
                "kind: sliding, or gap for the others"
            );
        }
    }

    private static IEnumerable<(string Path, string Message, string Expected)> ShelfFaults(Design design)
    {
        if ((design.Box.Inside ?? design.Box.Outside) is not { } edges)
        {
            yield break;
        }

        for (var i = 0; i < design.Shelves.Count; i++)
        {
            var shelf = design.Shelves[i];
            var path = FormattableString.Invariant($"shelves[{i}]");
            if (shelf.Depth.Si <= 0 || shelf.Thickness.Si <= 0 || shelf.Length is { Si: <= 0 })
            {
                yield return (path, "the shelf has no size", "depth and thickness above 0");
            }

            if (shelf.Load.Si < 0)
            {
                yield return ($"{path}.load", "this load lifts the shelf", "0 kg or more");
            }

            if (
                shelf.Depth.Si > edges.Depth.Min(e => e.Si) + Slack
                || shelf.Length?.Si > edges.Length.Min(e => e.Si) + Slack
                || shelf.At?.Z?.Si > edges.Height.Min(e => e.Si) + Slack
            )
            {
                yield return (path, "the shelf is larger than the box", "a shelf inside the box");
            }
        }
    }
}
