using System.Diagnostics;
using System.Globalization;
using Litterfall.Bench.Parcel;
using Litterfall.Physics.Parcel;
using Litterfall.Verification.Parcel;

// 500 ways of 72 hours of one parcel: exact pieces against an explicit stepper of the heat content, in turns.
// Arguments: scenarios (500), rounds (15), longest step of the peer in s (300).
var scenarios = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 500;
var rounds = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 15;
var longest = args.Length > 2 ? double.Parse(args[2], CultureInfo.InvariantCulture) : 300.0;
var ways = new Ways(scenarios);
(string Name, PhaseStore[] Packs)[] parcels =
[
    ("no pack", []),
    ("0.5 kg of 21 °C", [new(0.5, 21.0, 190_000.0, 1.0)]),
    ("0.5 kg of 21 °C, 0.3 kg of 5 °C", [new(0.5, 21.0, 190_000.0, 1.0), new(0.3, 5.0, 200_000.0, 1.0)]),
];
foreach (var (name, packs) in parcels)
{
    var model = new ParcelModel(Ways.Capacity, packs);
    var ends = new double[scenarios];
    double ours = Median(rounds, () => ways.Exact(model, ends));
    Say($"{name}: exact {ours:0.00} ms, {ways.Allocated(model, ends)} bytes allocated");
    for (double step = longest; step >= 1.0; step /= 5.0)
    {
        var stepped = new double[scenarios];
        double peer = Median(step < 30.0 ? 3 : rounds, () => ways.Stepped(packs, step, stepped));
        double miss = Enumerable.Range(0, scenarios).Max(i => Math.Abs(stepped[i] - ends[i]));
        Say(
            $"  steps of {step:0.#} s: {peer:0.0} ms, {peer / ours:0.0} times, off by {miss:0.0e+0} K at most"
        );
    }
}

static double Median(int rounds, Action run)
{
    run();
    var times = new List<double>();
    for (var i = 0; i < rounds; i++)
    {
        var watch = Stopwatch.StartNew();
        run();
        times.Add(watch.Elapsed.TotalMilliseconds);
    }

    times.Sort();
    return times[rounds / 2];
}

static void Say(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
