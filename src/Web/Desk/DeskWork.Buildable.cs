using System.Collections.Immutable;
using Litterfall.Judging.Fixes;
using Litterfall.Web.Sharing;

namespace Litterfall.Web.Desk;

/// <summary>What would make the design buildable, searched behind and tried as one.</summary>
public sealed partial class DeskWork
{
    private CancellationTokenSource making = new();

    /// <summary>True while it is searched what would make the design buildable.</summary>
    public bool IsMakingBuildable { get; private set; }

    /// <summary>The changes that are tried to make it buildable, in words; empty where none are.</summary>
    public ImmutableArray<string> TriedChanges { get; private set; } = [];

    /// <summary>
    /// Searches checked changes until no stop is left that one solves, then no caution, and tries them as one;
    /// the next change ends the search. Gives one sentence where it comes to nothing.
    /// </summary>
    public async Task<string?> MakeBuildableAsync()
    {
        if (Look is not { Whole: { } whole, WholeIsOld: false } || IsMakingBuildable)
        {
            return null;
        }

        making = CancellationTokenSource.CreateLinkedTokenSource(leaving.Token);
        var cancel = making.Token;
        IsMakingBuildable = true;
        changed();
        BuildablePlan? plan = null;
        try
        {
            await Task.Run(
                () =>
                    DeskRun.SearchAsync(
                        () => plan = Buildable.Search(whole, () => Turns.OfMachine.StandBack(cancel), cancel),
                        cancel
                    ),
                cancel
            );
        }
        catch (OperationCanceledException)
        {
            return null;
        }
        finally
        {
            IsMakingBuildable = false;
            changed();
        }

        if (cancel.IsCancellationRequested)
        {
            return null;
        }

        if (plan is null)
        {
            return "No change that we can check solves what is left. Each finding says what to do.";
        }

        Try(plan.Document, $"make it buildable, {Solved(plan.Solved)}");
        TriedChanges = plan.Changes;
        changed();
        return null;
    }

    /// <summary>
    /// The design changes: what is searched for the one before ends, and what was tried beside it goes, since to
    /// apply it would take the change back.
    /// </summary>
    private void LeaveTried()
    {
        making.Cancel();
        TriedChanges = [];
        Trial?.Dispose();
        Trial = null;
    }

    private static string Solved(int count) =>
        count == 1 ? "1 finding solved" : FormattableString.Invariant($"{count} findings solved");
}
