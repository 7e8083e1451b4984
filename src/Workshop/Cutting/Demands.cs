namespace Litterfall.Workshop.Cutting;

/// <summary>Which demand each cut part is for.</summary>
internal static class Demands
{
    private const int MostOfUnlimited = 100_000;

    /// <summary>Demands of each kind of part, in the order of the task.</summary>
    /// <param name="grid">The task.</param>
    public static Queue<int>[] Queues(GridTask grid) =>
        [
            .. grid.Parts.Select(p => new Queue<int>(
                p.Demands.SelectMany(d => Enumerable.Repeat(d.Demand, Math.Min(d.Count, MostOfUnlimited)))
            )),
        ];
}
