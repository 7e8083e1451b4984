using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>What plans that are not cut yet take from each lot.</summary>
internal sealed class SetAside
{
    private readonly Dictionary<string, int> sheets = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> lengths = new(StringComparer.Ordinal);

    private SetAside() { }

    /// <summary>Reads the plans.</summary>
    /// <param name="jobs">Plans, in any state.</param>
    public static SetAside Read(IEnumerable<CuttingJob> jobs)
    {
        var all = new SetAside();
        foreach (var job in jobs.Where(j => j.State == CuttingJobState.Planned))
        {
            var lots = job.Sources.Where(s => s.Lot is not null).ToDictionary(s => s.Stock, s => s.Lot!);
            foreach (var sheet in job.Plan.Sheets.Where(s => lots.ContainsKey(s.Stock)))
            {
                var lot = lots[sheet.Stock];
                all.sheets[lot] = all.sheets.GetValueOrDefault(lot) + 1;
                all.lengths[lot] = all.lengths.GetValueOrDefault(lot) + sheet.UsedLength;
            }
        }

        return all;
    }

    /// <summary>Sheets of a lot that are spoken for.</summary>
    public int Sheets(string lot) => sheets.GetValueOrDefault(lot);

    /// <summary>Millimeters of a roll that are spoken for.</summary>
    public double Length(string lot) => lengths.GetValueOrDefault(lot);
}
