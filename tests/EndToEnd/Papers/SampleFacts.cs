namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>
/// What follows by hand from the values typed in a sample: the frame of the plan and the rows of depths, from
/// left to right front left, front right, back left, back right.
/// </summary>
/// <param name="Length">Length of the frame in millimeters: outside, or inside without glass.</param>
/// <param name="Depth">Depth of the same frame.</param>
/// <param name="Rows">Rows of depths as printed.</param>
/// <param name="Soil">Settled soil at the four corners in the unit of the sheet.</param>
internal sealed record SampleFacts(double Length, double Depth, string[] Rows, double[] Soil)
{
    private const double Inch = 25.4;

    /// <summary>Own hand arithmetic from the typed values; an inch is 25.4 mm.</summary>
    private static readonly Dictionary<string, SampleFacts> Known = new()
    {
        // No glass, so inside. Steps of 6 cm (left) and 8 to 12 cm (right), and nothing else on the floor.
        ["arid-no-drainage"] = new(
            898,
            448,
            ["soil 6.0 8.0 6.0 12.0", "top over base 6.0 8.0 6.0 12.0"],
            [6, 8, 6, 12]
        )
        {
            IsInside = true,
        },
        // 4 + 6 + 3; poured 6 / 0.85 = 7.06.
        ["breeding-tank"] = new(
            400,
            400,
            [
                "drainage 4.0 4.0 4.0 4.0",
                "soil 6.0 6.0 6.0 6.0",
                "soil, as poured 7.1 7.1 7.1 7.1",
                "litter 3.0 3.0 3.0 3.0",
                "top over base 13.0 13.0 13.0 13.0",
            ],
            [6, 6, 6, 6]
        ),
        // Smallest of 19 3/4, 19 11/16, 19 3/4 and of 9 3/4, 9 13/16, plus two walls of 1/8; 1 1/2 + 1 + 1.
        ["converted-inch-tank"] = new(
            (19.6875 + 0.25) * Inch,
            (9.75 + 0.25) * Inch,
            [
                "drainage 1 1/2 1 1/2 1 1/2 1 1/2",
                "soil 1 1 1 1",
                "litter 1 1 1 1",
                "top over base 3 1/2 3 1/2 3 1/2 3 1/2",
            ],
            [1, 1, 1, 1]
        ),
        // 4 + 4 + 1 + 3 in front, 4 + 9 + 1 + 3 behind; poured 4 / 0.85 = 4.71 and 9 / 0.85 = 10.59.
        ["ld-201-flat"] = new(
            600,
            450,
            [
                "drainage 4.0 4.0 4.0 4.0",
                "soil 4.0 4.0 9.0 9.0",
                "soil, as poured 4.7 4.7 10.6 10.6",
                "moss 1.0 1.0 1.0 1.0",
                "litter 3.0 3.0 3.0 3.0",
                "top over base 12.0 12.0 17.0 17.0",
            ],
            [4, 4, 9, 9]
        ),
        // 24 × 18 in. 5 + 5 + 1 + 3 in front, 5 + 9 + 1 + 3 behind; poured 5 / 0.85 = 5.88.
        ["ld-202-waiting-room"] = new(
            24 * Inch,
            18 * Inch,
            [
                "drainage 5.0 5.0 5.0 5.0",
                "soil 5.0 5.0 9.0 9.0",
                "soil, as poured 5.9 5.9 10.6 10.6",
                "moss 1.0 1.0 1.0 1.0",
                "litter 3.0 3.0 3.0 3.0",
                "top over base 14.0 14.0 18.0 18.0",
            ],
            [5, 5, 9, 9]
        ),
        // 5 + 5 + 1.5 + 4 in front, 5 + 11 + 1.5 + 4 behind.
        ["ld-203-museum-foyer"] = new(
            900,
            600,
            [
                "drainage 5.0 5.0 5.0 5.0",
                "soil 5.0 5.0 11.0 11.0",
                "moss 1.5 1.5 1.5 1.5",
                "litter 4.0 4.0 4.0 4.0",
                "top over base 15.5 15.5 21.5 21.5",
            ],
            [5, 5, 11, 11]
        ),
        // 4 + 4 + 1 + 3 in front, 4 + 7 + 1 + 3 behind.
        ["ld-204-shop-kits"] = new(
            300,
            300,
            [
                "drainage 4.0 4.0 4.0 4.0",
                "soil 4.0 4.0 7.0 7.0",
                "moss 1.0 1.0 1.0 1.0",
                "litter 3.0 3.0 3.0 3.0",
                "top over base 12.0 12.0 15.0 15.0",
            ],
            [4, 4, 7, 7]
        ),
        // The smallest of 36, 35 15/16, 36 in. 2 + 2 + 1 1/4 in front, 2 + 4 1/2 + 1 1/4 behind.
        ["ld-205-attic"] = new(
            35.9375 * Inch,
            18 * Inch,
            [
                "drainage 2 2 2 2",
                "soil 2 2 4 1/2 4 1/2",
                "litter 1 1/4 1 1/4 1 1/4 1 1/4",
                "top over base 5 1/4 5 1/4 7 3/4 7 3/4",
            ],
            [2, 2, 4.5, 4.5]
        ),
        // 4 + 7; poured 7 / 0.85 = 8.24.
        ["t-17-old-show-tank"] = new(
            450,
            450,
            [
                "drainage 4.0 4.0 4.0 4.0",
                "soil 7.0 7.0 7.0 7.0",
                "soil, as poured 8.2 8.2 8.2 8.2",
                "top over base 11.0 11.0 11.0 11.0",
            ],
            [7, 7, 7, 7]
        ),
        // 6 + 6 + 2 + 3 in front, 6 + 10 + 2 + 3 behind.
        ["tall-raised-floor"] = new(
            450,
            450,
            [
                "drainage 6.0 6.0 6.0 6.0",
                "soil 6.0 6.0 10.0 10.0",
                "moss 2.0 2.0 2.0 2.0",
                "litter 3.0 3.0 3.0 3.0",
                "top over base 17.0 17.0 21.0 21.0",
            ],
            [6, 6, 10, 10]
        ),
        // Steps of 8, 6 and 9 cm from left to right: 4 + 8 + 1 + 3 and 4 + 9 + 1 + 3; poured 8 / 0.85 = 9.41.
        ["wide-sliding-doors"] = new(
            1200,
            600,
            [
                "drainage 4.0 4.0 4.0 4.0",
                "soil 8.0 9.0 8.0 9.0",
                "soil, as poured 9.4 10.6 9.4 10.6",
                "moss 1.0 1.0 1.0 1.0",
                "litter 3.0 3.0 3.0 3.0",
                "top over base 16.0 17.0 16.0 17.0",
            ],
            [8, 9, 8, 9]
        ),
    };

    /// <summary>True when the frame is the one inside the walls.</summary>
    public bool IsInside { get; private init; }

    /// <summary>True when the depths of the floor were typed in inches.</summary>
    public bool Inches => Rows.Any(r => r.Contains('/', StringComparison.Ordinal));

    public static SampleFacts Of(string sample) => Known[Path.GetFileName(sample).Split('.')[0]];
}
