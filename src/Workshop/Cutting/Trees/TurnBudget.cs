namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>
/// How many turns searches may still take together: work instead of time, so that the same task ends the same
/// way on every machine.
/// </summary>
/// <param name="turns">Turns of each search that runs at the same time.</param>
internal sealed class TurnBudget(int turns)
{
    /// <summary>Turns left.</summary>
    public int Left { get; private set; } = turns;

    /// <summary>Counts turns that were taken.</summary>
    public void Take(int taken) => Left = Math.Max(0, Left - taken);
}
