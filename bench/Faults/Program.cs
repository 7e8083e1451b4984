using System.Diagnostics;
using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Running.Diagnosis.Finding;
using Litterfall.UnitTests.Running.Diagnosis;

// Stated chances of fault-finding against how often they come true over invented tanks.
// Arguments: tanks (400), seed (1), file for the plot (none), folder of the catalog (catalog).
var tanks = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 400;
var seed = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 1;
var folder = args.Length > 3 ? args[3] : "catalog";
var catalog = CatalogReader.Read([
    .. Directory
        .EnumerateFiles(folder, "*.json", SearchOption.AllDirectories)
        .Order(StringComparer.Ordinal)
        .Select(f => new CatalogFile(f, File.ReadAllText(f))),
]);
var invented = new InventedTanks(catalog, seed);
var reliability = new Reliability();
var times = new List<double>();
for (var i = 0; i < tanks; i++)
{
    var (truth, asked) = invented.Next();
    var watch = Stopwatch.StartNew();
    reliability.Add(truth, FaultFinder.Find(asked));
    times.Add(watch.Elapsed.TotalMilliseconds);
}

times.Sort();
Console.Write(reliability.Table());
Console.WriteLine(
    string.Create(
        CultureInfo.InvariantCulture,
        $"{tanks} tanks: first {100.0 * reliability.First / tanks:0} %, among three "
            + $"{100.0 * reliability.FirstThree / tanks:0} %, mean miss "
            + $"{100 * reliability.MeanMiss:0.0} points, Brier "
            + $"{reliability.Brier / tanks:0.000}, median {times[tanks / 2]:0} ms"
    )
);
if (args.Length > 2 && args[2].Length > 0)
{
    File.WriteAllText(args[2], reliability.Plot());
}
