using System.Diagnostics;
using Litterfall.App.Files;
using Litterfall.Domain.DesignFile;
using Litterfall.Store;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;

// People at desks on one machine: each drags a layer for two seconds and rests for three. Told are the times
// until
// the drawing and until the month of air and floor are there, and the list of fifty designs.
var people = args.Length > 0 ? int.Parse(args[0], System.Globalization.CultureInfo.InvariantCulture) : 20;
var folder = Directory.CreateTempSubdirectory("litterfall-desk").FullName;
var store = new BenchStore(
    StoreFile.Contexts(Path.Combine(folder, "bench.db")),
    new("bench", "bench"),
    TimeProvider.System
);
await store.OpenAsync();
var library = new BenchLibrary(new BenchOptions(Shop.Embedded(), [], "bench"), store);
var text = await File.ReadAllTextAsync(
    Path.Combine(args.Length > 1 ? args[1] : "samples", "ld-201-flat.viv.yaml")
);
var document = DesignEdits.Remove(DesignReader.Read("desk", text).Value!, "workshop").Value
    ?? DesignReader.Read("desk", text).Value!;
var ids = new List<Guid>();
for (var i = 0; i < 50; i++)
{
    ids.Add((await store.AddAsync($"design {i}", document.Text, "bench")).Id);
}

await store.DesignsAsync();
var watch = Stopwatch.StartNew();
await store.DesignsAsync();
Console.WriteLine($"list of 50 designs: {watch.Elapsed.TotalMilliseconds:0.0} ms");
foreach (var count in new[] { 1, people })
{
    var drawing = new List<double>();
    var month = new List<double>();
    await Task.WhenAll(
        Enumerable.Range(0, count).Select(i => Task.Run(() => SitAsync(ids[i], drawing, month, i)))
    );
    Console.WriteLine($"{count} at desks: drawing {Told(drawing)}; month {Told(month)}");
}

Directory.Delete(folder, recursive: true);

async Task SitAsync(Guid id, List<double> drawing, List<double> month, int seed)
{
    var begun = Stopwatch.StartNew();
    var waiting = false;
    DeskWork? work = null;
    work = await DeskWork.OpenAsync(store, library, id, () =>
    {
        if (work is { Look.MonthIsOld: false } && waiting)
        {
            waiting = false;
            lock (month)
            {
                month.Add(begun.Elapsed.TotalMilliseconds);
            }
        }
    });
    await Task.Delay(1000 + (seed * 137 % 3000));
    for (var round = 0; round < 3; round++)
    {
        for (var step = 0; step < 16; step++)
        {
            var depth = FormattableString.Invariant($"{4 + (0.1 * step)} cm");
            begun.Restart();
            waiting = true;
            work!.Pass(d => DesignEdits.Set(d, "floor.drainage.depth", depth));
            _ = Litterfall.Documents.Svg.SvgWriter.Write(work.Look.Views!.Section((185, 170)), "desk");
            lock (drawing)
            {
                drawing.Add(begun.Elapsed.TotalMilliseconds);
            }

            await Task.Delay(125);
        }

        await work!.DropAsync("bench");
        await Task.Delay(3000);
    }

    work!.Dispose();
}

static string Told(List<double> times)
{
    times.Sort();
    return times.Count == 0
        ? "none"
        : FormattableString.Invariant(
            $"median {times[times.Count / 2]:0} ms, 95 % {times[times.Count * 95 / 100]:0} ms ({times.Count})"
        );
}
