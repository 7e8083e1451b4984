using System.Diagnostics;
using Litterfall.App.Files;
using Litterfall.Domain.DesignFile;
using Litterfall.Store;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Litterfall.Web.Sharing;

// People at desks on one machine: each drags a layer for two seconds and rests for three. Told are the times
// until
// the drawing and until the month of air and floor are there, and the list of fifty designs.
const int Rounds = 3;
const int Rest = 9;
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
for (var i = 0; i < Math.Max(50, people); i++)
{
    ids.Add((await store.AddAsync($"design {i}", document.Text, "bench")).Id);
}

await store.DesignsAsync();
var watch = Stopwatch.StartNew();
await store.DesignsAsync();
Console.WriteLine($"list of 50 designs: {watch.Elapsed.TotalMilliseconds:0.0} ms");
foreach (var count in people == 0 ? [] : new[] { 1, people })
{
    var drawing = new List<double>();
    var month = new List<double>();
    await Task.WhenAll(
        Enumerable.Range(0, count).Select(i => Task.Run(() => SitAsync(ids[i], drawing, month, i)))
    );
    var before = Environment.CpuUsage.TotalTime;
    await Task.Delay(1000);
    var after = (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
    Console.WriteLine(
        FormattableString.Invariant(
            $"{count} at desks: drawing {Told(drawing)}; month {Told(month)}; in the second after all left "
        ) + FormattableString.Invariant($"{after:0} ms of work, {Turns.OfMachine.Waiting} waiting")
    );
    var lost = 0;
    foreach (var id in ids.Take(count))
    {
        var saved = await store.VersionsAsync(id);
        lost += saved.Count(v => v.Note == "bench") < Rounds ? 1 : 0;
    }

    Console.WriteLine($"{lost} of {count} desks lost a change");
}

foreach (var sample in new[] { "ld-201-flat", "ld-202-waiting-room", "tall-raised-floor" })
{
    await TypeAsync(sample);
}

await MemoryAsync();
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
    for (var round = 0; round < Rounds; round++)
    {
        for (var step = 0; step < 16; step++)
        {
            var depth = FormattableString.Invariant($"{4.1 + (0.1 * step) + (0.01 * round)} cm");
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

// Numbers typed one after the other: from the change until its findings, until all changes that rules know
// are
// checked, and until levers are searched as well.
async Task TypeAsync(string sample)
{
    var path = Path.Combine(args.Length > 1 ? args[1] : "samples", $"{sample}.viv.yaml");
    var typed = DesignReader.Read("desk", await File.ReadAllTextAsync(path)).Value!;
    typed = DesignEdits.Remove(typed, "workshop").Value ?? typed;
    var id = (await store.AddAsync(sample, typed.Text, "bench")).Id;
    var begun = Stopwatch.StartNew();
    var (findings, first, all) = (new List<double>(), new List<double>(), new List<double>());
    var (isNew, isFirst) = (false, false);
    DeskWork? work = null;
    work = (await DeskWork.OpenAsync(store, library, id, () =>
        {
            if (work is not { Look.WholeIsOld: false })
            {
                return;
            }

            if (isNew)
            {
                isNew = false;
                findings.Add(begun.Elapsed.TotalMilliseconds);
            }

            if (isFirst && !work.Look.Fixes.IsEmpty)
            {
                isFirst = false;
                first.Add(begun.Elapsed.TotalMilliseconds);
            }
        }))!;
    await work.Settled;
    for (var i = 0; i < 8; i++)
    {
        begun.Restart();
        (isNew, isFirst) = (true, true);
        var air = FormattableString.Invariant($"{21 + (0.05 * i):0.##} C");
        await work.ChangeAsync(d => DesignEdits.Set(d, "room.temperature", air), "bench");
        await work.Settled;
        all.Add(begun.Elapsed.TotalMilliseconds);
    }

    Console.WriteLine(
        $"{sample}, typed: findings {Told(findings)}; first fix {Told(first)}; all fixes and levers "
            + $"{Told(all)}"
    );
    work.Dispose();
}

// Open desks at rest, all computed: what each holds above the first.
async Task MemoryAsync()
{
    var open = new List<DeskWork>();
    var (first, last) = (0L, 0L);
    for (var i = 0; i <= Rest; i++)
    {
        var work = (await DeskWork.OpenAsync(store, library, ids[i], () => { }))!;
        await work.Settled;
        open.Add(work);
        last = GC.GetTotalMemory(forceFullCollection: i is 0 or Rest);
        first = i == 0 ? last : first;
    }

    var each = (last - first) / (double)Rest / 1024 / 1024;
    Console.WriteLine(FormattableString.Invariant($"each desk above the first holds {each:0.0} MB"));
    open.ForEach(w => w.Dispose());
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
