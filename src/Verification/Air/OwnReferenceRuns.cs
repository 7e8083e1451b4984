using Litterfall.Domain.Figures;
using Litterfall.Physics.Air;
using Litterfall.Verification.Cases;

namespace Litterfall.Verification.Air;

/// <summary>
/// A lumped cube of 45 cm, two days: implicit steps of the forecast's own model with constant coefficients
/// against
/// two other programs (Radau at 1e-10 and a Runge-Kutta of 0.5 s that agree to all printed digits). R1: 8 air
/// changes an hour; R2: 0.5, with dew; R3: 4, misted 1 g/s for 60 s at 9 and 17 h. Lamp 1, 3 and 6 W to air,
/// glass and soil from 8 to 20 h; room 21 ± 2 °C, w 0.0078.
/// </summary>
public static class OwnReferenceRuns
{
    private const int HoursInAll = 48;
    private static readonly CaseSource Source = new(
        "Air",
        "Own worked example, lumped cube over two days",
        Evidence.OtherCode,
        Provenance.Recomputed
    );

    private static readonly CaseSource Order = Source with { Evidence = Evidence.OrderOfConvergence };

    // air °C, humidity %, glass °C, soil °C, film g, vented g, soil evaporation g
    private static readonly string[] Columns =
    [
        "air",
        "relative humidity",
        "glass",
        "soil",
        "film",
        "vented so far",
        "evaporated from the soil so far",
    ];

    private static readonly (int Hour, double[] Values)[] Brisk =
    [
        (1, [19.672870, 91.38445, 19.553189, 20.408978, 0.000000, 4.696502, 4.939383]),
        (3, [19.136759, 89.78224, 19.089191, 19.421671, 0.000000, 13.277616, 13.448600]),
        (6, [19.269971, 85.50817, 19.372141, 18.644771, 0.000000, 24.567714, 24.684351]),
        (9, [20.993539, 79.76983, 20.989168, 19.403370, 0.000000, 35.454420, 35.620912]),
        (10, [21.579122, 79.89564, 21.551205, 20.131557, 0.000000, 39.652083, 39.870823]),
        (12, [22.600141, 80.09298, 22.534056, 21.387228, 0.000000, 49.238850, 49.552704]),
        (15, [23.476971, 81.58939, 23.329152, 22.772002, 0.000000, 66.178709, 66.605537]),
        (18, [23.308276, 85.27538, 23.025927, 23.421927, 0.000000, 85.200841, 85.684387]),
        (20, [22.688157, 88.51909, 22.304274, 23.409500, 0.000000, 98.283747, 98.766946]),
        (24, [19.958449, 90.72195, 19.852538, 20.613008, 0.000000, 120.465985, 120.724045]),
        (30, [19.242210, 85.22389, 19.356251, 18.547001, 0.000000, 144.351492, 144.461494]),
        (36, [22.593740, 80.03052, 22.530389, 21.364711, 0.000000, 168.849487, 169.161565]),
        (42, [23.306866, 85.26071, 23.025119, 23.416975, 0.000000, 204.764947, 205.248057]),
        (48, [19.958138, 90.71855, 19.852360, 20.611914, 0.000000, 240.019649, 240.277626]),
    ];

    private static readonly (int Hour, double[] Values)[] Close =
    [
        (1, [19.848176, 99.85770, 19.687925, 20.643617, 1.127566, 0.370469, 1.892622]),
        (3, [19.367054, 99.85183, 19.248446, 19.962011, 3.667106, 1.069458, 5.083837]),
        (6, [19.490649, 99.75585, 19.489007, 19.507106, 4.858234, 2.084228, 7.300234]),
        (9, [21.277381, 97.38201, 21.091944, 20.600277, 2.338558, 3.193512, 6.031231]),
        (10, [21.924263, 97.37284, 21.701130, 21.435939, 1.507602, 3.626323, 5.702195]),
        (12, [23.042676, 97.87323, 22.755462, 22.873446, 0.789958, 4.594781, 6.088774]),
        (15, [24.070948, 98.18387, 23.674234, 24.443760, 2.143874, 6.262800, 9.240868]),
        (18, [24.035795, 98.23123, 23.505941, 25.066892, 8.448550, 8.026381, 17.305760]),
        (20, [23.464246, 98.27425, 22.849380, 24.916963, 15.639673, 9.158039, 25.559690]),
        (24, [20.499584, 99.88703, 20.241729, 21.783698, 29.689920, 10.998634, 41.149677]),
        (30, [19.541270, 99.82997, 19.523415, 19.639210, 37.833067, 13.125701, 51.322645]),
        (36, [23.058403, 98.16276, 22.762437, 22.933558, 33.337839, 15.671396, 49.720822]),
        (42, [24.039917, 98.23174, 23.508910, 25.076788, 41.240912, 19.107928, 61.180191]),
        (48, [20.500229, 99.88711, 20.242183, 21.785299, 51.076815, 22.080859, 85.068529]),
    ];

    private static readonly (int Hour, double[] Values)[] Misted =
    [
        (1, [19.724873, 97.47569, 19.574073, 20.547912, 0.000000, 2.723374, 3.067785]),
        (3, [19.232478, 96.05104, 19.138006, 19.744252, 0.000000, 7.843357, 8.119026]),
        (6, [19.382879, 91.63674, 19.436602, 19.084940, 0.000000, 14.742062, 14.963033]),
        (9, [21.132990, 85.88784, 21.063846, 19.893889, 0.000000, 21.472629, 21.756796]),
        (10, [21.564051, 96.75694, 21.383986, 20.860485, 13.738960, 24.748612, 21.005915]),
        (12, [22.713862, 96.37089, 22.461307, 22.417307, 6.705378, 32.045082, 21.387453]),
        (15, [23.780208, 92.95509, 23.452194, 23.940617, 0.277700, 44.216432, 27.184605]),
        (18, [23.610880, 96.94742, 23.147464, 24.511120, 16.948144, 56.824313, 38.524994]),
        (20, [23.065048, 97.10015, 22.518506, 24.439501, 17.126124, 65.281558, 47.099068]),
        (24, [20.222690, 98.76825, 20.002636, 21.424180, 19.823895, 79.095779, 63.334000]),
        (30, [19.352492, 98.59600, 19.340282, 19.376749, 15.180760, 95.158655, 74.665745]),
        (36, [22.785535, 96.75570, 22.507972, 22.627096, 14.383817, 114.391990, 75.428358]),
        (42, [23.670158, 96.96623, 23.189982, 24.664756, 21.041196, 140.197547, 89.998753]),
        (48, [20.231890, 98.77013, 20.009175, 21.448316, 24.535577, 162.546237, 115.497095]),
    ];

    private static readonly Run[] Runs =
    [
        new("R1", 8.0, false, Brisk, (1e-4, 1e-3, 1e-3)),
        new("R2", 0.5, false, Close, (1e-3, 5e-3, 5e-3)),
        new("R3", 4.0, true, Misted, (1e-3, 2e-2, 2e-2)),
    ];

    /// <summary>The cases.</summary>
    /// <returns>States and running totals, and how errors fall with the step.</returns>
    public static IEnumerable<VerificationCase> Cases() => States().Concat(Steps());

    private static IEnumerable<VerificationCase> States()
    {
        foreach (var run in Runs)
        {
            var minute = new Lazy<Course>(() => Course.Of(run, 60.0));
            var fine = new Lazy<Course>(() => Course.Of(run, 5.0));
            foreach (var (hour, values) in run.Rows)
            {
                for (int i = 0; i < values.Length; i++)
                {
                    int column = i;
                    yield return Source.Case(
                        $"{run.Name}, {Columns[i]} after {hour} h",
                        i == 1 ? "%"
                            : i > 3 ? "g"
                            : "°C",
                        (values[i], Tolerance(run, i, values[i])),
                        "Steps of 60 s, order two.",
                        () => minute.Value.Hours[hour][column]
                    );
                }
            }

            yield return Order.Case(
                $"{run.Name}, error of the air at steps of 5 s over that at 60 s",
                "1",
                (0.0, 0.125),
                "At least eight times smaller.",
                () => Worst(run, fine.Value) / Worst(run, minute.Value)
            );
            yield return Source.Case(
                $"{run.Name}, vapor the air gained and nobody gave",
                "kg",
                (0.0, 1e-9),
                "Each flux is computed once and booked twice.",
                () => minute.Value.BalanceErrorKilograms
            );
            yield return Source.Case(
                $"{run.Name}, heat missed over heat turned over",
                "1",
                (0.0, 1e-6),
                "Newton's passes end at 1e-5 K.",
                () => minute.Value.BalanceErrorShare
            );
        }
    }

    private static IEnumerable<VerificationCase> Steps()
    {
        yield return Order.Case(
            $"R1, error of the air at steps of 300 s over that at 150 s",
            "1",
            (4.0, 0.6),
            "Order two, 15 %.",
            () => Worst(Runs[0], Course.Of(Runs[0], 300.0)) / Worst(Runs[0], Course.Of(Runs[0], 150.0))
        );
        yield return Source.Case(
            $"R3, misted in two days with steps of 300 s",
            "g",
            (240.0, 1e-9),
            "Steps end where the mist is switched.",
            () => Course.Of(Runs[2], 300.0).Misted
        );
    }

    private static double Tolerance(Run run, int column, double value) =>
        column switch
        {
            1 => run.Bounds.Percent,
            4 => run.Bounds.Grams,
            5 => 1e-4 * value,
            6 => (1e-4 * value) + run.Bounds.Grams,
            _ => run.Bounds.Kelvin,
        };

    private static double Worst(Run run, Course course) =>
        run.Rows.Max(row => Math.Abs(course.Hours[row.Hour][0] - row.Values[0]));

    private sealed record Run(
        string Name,
        double AirChanges,
        bool IsMisted,
        (int Hour, double[] Values)[] Rows,
        (double Kelvin, double Percent, double Grams) Bounds
    );

    /// <summary>Two days of a run.</summary>
    private sealed class Course
    {
        /// <summary>The columns at each full hour.</summary>
        public Dictionary<int, double[]> Hours { get; } = [];

        /// <summary>Vapor missed, kg.</summary>
        public double BalanceErrorKilograms { get; private set; }

        /// <summary>Heat missed over heat turned over.</summary>
        public double BalanceErrorShare { get; private set; }

        /// <summary>Misted, g.</summary>
        public double Misted { get; private set; }

        public static Course Of(Run run, double stepSeconds)
        {
            var course = new Course();
            var model = LumpedBox.Cube(run.AirChanges);
            var state = model.Even(21.0, 0.70);
            double vented = 0.0;
            double evaporated = 0.0;
            var heat = default(HeatLedger);
            double turned = 0.0;
            for (int hour = 0; hour < HoursInAll; hour++)
            {
                bool isMist = run.IsMisted && hour % 24 is 9 or 17;
                foreach (double end in isMist ? (double[])[60.0, 3600.0] : [3600.0])
                {
                    var span = model.Advance(
                        state,
                        Drive(hour, isMist && end < 3600.0),
                        (hour * 3600.0) + end,
                        HeadspaceControl.Even(stepSeconds)
                    );
                    state = span.State;
                    var (glass, soil) = (span.Totals.Surfaces[0], span.Totals.Surfaces[1]);
                    vented += span.Totals.VentedKilograms;
                    evaporated += soil.SuppliedKilograms - soil.CondensedKilograms;
                    course.Misted += 1000.0 * (glass.MistedKilograms + soil.MistedKilograms);
                    course.BalanceErrorKilograms += Math.Abs(span.Totals.BalanceErrorKilograms);
                    heat += span.Totals.Heat;
                    turned += Math.Abs(span.Totals.Heat.Outside) + Math.Abs(span.Totals.Heat.Sources);
                }

                course.Hours[hour + 1] =
                [
                    state.AirCelsius,
                    100.0 * MoistAir.RelativeHumidity(state.AirCelsius, state.HumidityRatio),
                    state.Celsius[0],
                    state.Celsius[1],
                    1000.0 * state.FilmKilograms[0],
                    1000.0 * vented,
                    1000.0 * evaporated,
                ];
            }

            course.BalanceErrorShare = heat.BalanceErrorJoules / turned;
            return course;
        }

        private static HeadspaceDrive Drive(int hour, bool isMisting)
        {
            var drive = new HeadspaceDrive
            {
                Room = seconds => new RoomPoint(
                    21.0 + (2.0 * Math.Sin(2.0 * Math.PI * ((seconds / 3600.0) - 9.0) / 24.0)),
                    0.0078
                ),
                MistKilogramsPerSecond = isMisting ? 0.001 : 0.0,
                MistCelsius = 20.0,
            };
            return hour % 24 is >= 8 and < 20 ? LumpedBox.Lit(drive, 10.0) : drive;
        }
    }
}
