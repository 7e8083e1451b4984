using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Cultures;
using Litterfall.Domain.Stock;

namespace Litterfall.Workshop.Demo;

/// <summary>
/// Three shelves with cultures: nineteen springtail cups of four lines, six isopod tubs of two, fly cups
/// started twice a week but for one week of fairs. Line C was discarded for mites the day before.
/// </summary>
/// <param name="book">Where they go.</param>
/// <param name="stock">Lots and lines.</param>
internal sealed class DemoCultures(DemoBook book, DemoStock stock)
{
    private const string Springtails = "folsomia-candida";
    private const string Isopods = "trichorhina-tomentosa";
    private const string Flies = "drosophila-melanogaster";
    private const string Door = "door";
    private const string Back = "back";
    private const string Warm = "warm";
    private const int Museum = 203;
    private readonly Dictionary<string, int> places = new(StringComparer.Ordinal);

    /// <summary>Writes cultures; returns shelves and the animals that eat flies.</summary>
    public (ImmutableArray<CultureShelf> Shelves, ImmutableArray<FedGroup> Fed) Write()
    {
        Line(Springtails, "A", Door, 5, 1);
        Line(Springtails, "B", Back, 5, 1);
        Discard(Line(Springtails, "C", Back, 5, 0));
        Line(Springtails, "D", Door, 4, 0);
        Line(Isopods, "A", Door, 4, 1);
        Line(Isopods, "B", Back, 2, 0);
        FlyCups();
        return (Shelves(), Fed());
    }

    /// <summary>A mother and what was split off her, each a cup with its lot.</summary>
    /// <param name="of">The animal.</param>
    /// <param name="line">The line.</param>
    /// <param name="shelf">Where they stand.</param>
    /// <param name="cups">How many.</param>
    /// <param name="museum">How many of them were started for the museum.</param>
    private List<Culture> Line(string of, string line, string shelf, int cups, int museum)
    {
        var isTub = of == Isopods;
        var cultures = new List<Culture>();
        for (var i = 0; i < cups; i++)
        {
            var since = Day(isTub ? -150 + (i * 8) : -48 + (i * 4));
            var culture = Stand(
                new Culture
                {
                    Number = "",
                    Species = of,
                    Line = line,
                    Mother = i == 0 ? null : cultures[0].Number,
                    Since = since,
                    Liters = isTub ? 0.475 : 0.2375,
                    StartedWith = isTub ? 40 : 250,
                    Shelf = shelf,
                },
                i >= cups - museum ? Museum : null
            );
            cultures.Add(Tended(culture, i));
        }

        var mother = cultures[0];
        cultures[0] = mother with
        {
            Splits =
            [
                .. cultures.Skip(1).Select(c => new CultureSplit(c.Since, c.Number, 0.2, DemoShop.Builder)),
            ],
        };
        foreach (var daughter in cultures.Skip(1))
        {
            stock.Line(mother.Number, MovementKind.Used, 0.2, daughter.Since, daughter.Number, "split");
            stock.Line(
                mother.Number,
                MovementKind.Counted,
                0.2,
                daughter.Since,
                null,
                "filled up with fresh substrate"
            );
        }

        book.NewCultures.AddRange(cultures);
        return cultures;
    }

    /// <summary>Fed on Tuesdays and Fridays; the first of each line is counted.</summary>
    private Culture Tended(Culture culture, int i)
    {
        var days = Enumerable.Range(0, 3).SelectMany(w => new[] { Day(-2 - (7 * w)), Day(-6 - (7 * w)) });
        var count = culture.Species == Isopods ? 190 : 1050;
        return culture with
        {
            Feedings =
            [
                .. days.Where(d => d > culture.Since)
                    .Order()
                    .Select(d => new CultureFeeding(d, "yeast, a pinch", DemoShop.Builder)),
            ],
            Counts = i == 0 ? [new CultureCount(Day(-2), count, CountWay.Sample, DemoShop.Builder)] : [],
        };
    }

    /// <summary>Mites under the lens on Wednesday: the line is held, closed and thrown away.</summary>
    private void Discard(List<Culture> line)
    {
        var day = Day(-1);
        foreach (var culture in line)
        {
            stock.Line(culture.Number, MovementKind.Held, 0, day, null, "mites under the lens");
            stock.Line(culture.Number, MovementKind.Scrapped, 1, day, null, "whole line discarded for mites");
            var at = book.NewCultures.FindIndex(c => c.Number == culture.Number);
            book.NewCultures[at] = book.NewCultures[at] with
            {
                Held = "mites under the lens",
                End = new CultureEnding(
                    day,
                    CultureEnd.Mites,
                    "whole line discarded for mites",
                    DemoShop.Builder
                ),
            };
        }
    }

    /// <summary>Cups on Sundays and Wednesdays; none in the week of the fair.</summary>
    private void FlyCups()
    {
        for (var back = 1; back <= 29; back++)
        {
            var day = Day(-back);
            var isFair = back is >= 5 and <= 11;
            if (isFair || day.DayOfWeek is not (DayOfWeek.Sunday or DayOfWeek.Wednesday))
            {
                continue;
            }

            var cups = day.DayOfWeek == DayOfWeek.Sunday ? 3 : 2;
            for (var i = 0; i < cups; i++)
            {
                book.NewCultures.Add(
                    Stand(
                        new Culture
                        {
                            Number = "",
                            Species = Flies,
                            Line = back % 2 == 0 ? "wingless 1" : "wingless 2",
                            Since = day,
                            Liters = 0.15,
                            StartedWith = 60,
                            IsFromAdults = true,
                            Shelf = Warm,
                        },
                        null
                    )
                );
            }
        }
    }

    private Culture Stand(Culture culture, int? order)
    {
        var number = stock.Make(
            new Lot
            {
                Id = "",
                Good = culture.Species,
                Since = culture.Since,
                Amount = 1,
                Line = culture.Line,
                Order = order,
            }
        );
        var place = places[culture.Shelf] = places.GetValueOrDefault(culture.Shelf) + 1;
        const int each = 8;
        return culture with
        {
            Number = number,
            Board = 1 + ((place - 1) / each),
            Place = 1 + ((place - 1) % each),
        };
    }

    private ImmutableArray<CultureShelf> Shelves() =>
        [
            Shelf(Door, "Shelf by the door", 21),
            Shelf(Back, "Shelf at the back", 22),
            Shelf(Warm, "Fly shelf", 24),
        ];

    private CultureShelf Shelf(string key, string name, double celsius) =>
        new()
        {
            Key = key,
            Name = name,
            Celsius = celsius,
            Readings = [new ShelfReading(Day(-200), celsius)],
            WidthMillimeters = 1000,
            GapMillimeters = 190,
        };

    private ImmutableArray<FedGroup> Fed() =>
        [
            Group("room 1", "epipedobates-anthonyi", 5, FedClass.Adult),
            Group("room 2", "dendrobates-leucomelas", 4, FedClass.Adult),
            Group("room 3", "ranitomeya-imitator", 6, FedClass.Breeding),
            Group("room 4", "epipedobates-anthonyi", 8, FedClass.Froglet) with
            {
                Grams = 0.5,
            },
        ];

    private FedGroup Group(string tank, string animal, int count, FedClass of) =>
        new()
        {
            Key = string.Create(CultureInfo.InvariantCulture, $"{tank.Replace(' ', '-')}-{animal}"),
            Tank = tank,
            Animal = animal,
            Count = count,
            Class = of,
            Since = Day(-123),
        };

    private DateOnly Day(int days) => stock.Day(DemoShop.Scene.AddDays(days));
}
