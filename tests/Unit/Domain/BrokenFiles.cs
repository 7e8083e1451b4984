namespace Litterfall.UnitTests.Domain;

/// <summary>A design file with one fault; line and column were counted by hand.</summary>
/// <param name="Name">What is wrong.</param>
/// <param name="Text">The file.</param>
/// <param name="Line">Line of the first fault.</param>
/// <param name="Column">Column of the first fault.</param>
/// <param name="Says">Part of the message or of what was expected.</param>
public sealed record BrokenFile(string Name, string Text, int Line, int Column, string Says)
{
    public override string ToString() => Name;
}

/// <summary>Design files people and programs get wrong.</summary>
internal static class BrokenFiles
{
    private const string Head = "litterfall: 1\nname: t\n";
    private const string Sized = "box:\n  inside: { length: 60 cm, depth: 45 cm, height: 45 cm }\n";
    private const string Soil = "floor:\n  soil: { recipe: standard-rainforest, depth: 7 cm }\n";

    /// <summary>A good file of 6 lines; a fault goes on line 7 or replaces one of them.</summary>
    public const string Good = Head + Sized + Soil;

    public static IEnumerable<BrokenFile> All => [.. Values, .. Forms, .. Yaml(), .. Huge()];

    private static BrokenFile Seventh(string name, string line, int column, string says) =>
        new(name, Good + line + "\n", 7, column, says);

    private static BrokenFile Box(string name, string inside, int column, string says) =>
        new(name, Head + $"box:\n  inside: {{ {inside} }}\n" + Soil, 4, column, says);

    private static BrokenFile Floor(string name, string line, int column, string says) =>
        new(name, Head + Sized + "floor:\n  " + line + "\n", 6, column, says);

    private static readonly BrokenFile[] Values =
    [
        // "  inside: { length: " is 20 characters, so the first value begins in column 21.
        Box("wrong unit", "length: 60 kg, depth: 45 cm, height: 45 cm", 21, "not a unit of a length"),
        Box("missing unit", "length: 60, depth: 45 cm, height: 45 cm", 21, "unit is missing"),
        Box("negative edge", "length: -60 cm, depth: 45 cm, height: 45 cm", 21, "negative"),
        Box("zero edge", "length: 0 cm, depth: 45 cm, height: 45 cm", 21, "zero"),
        Box("gallons", "length: 40 gal, depth: 45 cm, height: 45 cm", 21, "gallons"),
        Box("beyond belief", "length: 60 m, depth: 45 cm, height: 45 cm", 21, "is too large (limit"),
        Box("thousands", "length: \"1,200 mm\", depth: 45 cm, height: 45 cm", 21, "1.200"),
        Box("no value", "length: , depth: 45 cm, height: 45 cm", 21, "no value"),
        Box("word for a number", "length: long, depth: 45 cm, height: 45 cm", 21, "begin with"),
        Box(
            "three measurements and one",
            "length: [1 m, 1 m, 1 m, 1 m], depth: 1 m, height: 1 m",
            21,
            "4 entries"
        ),
        Box("no measurement", "length: [], depth: 45 cm, height: 45 cm", 21, "0 entries"),
        Box("edges in a map", "length: { a: 1 cm }, depth: 45 cm, height: 45 cm", 21, "not a list"),
        Box("missing edge", "length: 60 cm, depth: 45 cm", 11, "'height' is missing"),
        Seventh("misting without flow", "misting: { nozzles: 2 }", 10, "'each' is missing"),
        Seventh("quart of no kind", "habits: { handMist: 1 qt }", 21, "which quart"),
        Seventh("bad date", "planted: 14.8.2026", 10, "2026-08-14"),
        Seventh("no such day", "planted: 2026-02-30", 10, "2026-08-14"),
        Seventh("bad form", "form: jar", 7, "planted, kit"),
        Seventh(
            "count with decimals",
            "animals: [ { animal: dendrobates-auratus, count: 1.5 } ]",
            50,
            "whole number"
        ),
        Seventh("no box at all", "boxes: 0", 8, "from 1 to 1000"),
        Seventh("too many boxes", "boxes: 1000000", 8, "from 1 to 1000"),
        Seventh("minus one nozzle", "misting: { nozzles: -1, each: 90 mL/min }", 21, "whole number"),
        Seventh("bad time", "lamps: [ { lamp: led-bar-6500k, on: \"25:00\" } ]", 37, "07:30"),
        Seventh("more than the whole", "room: { humidity: 120 % }", 19, "more than the whole"),
        Seventh("too cold", "room: { temperature: -200 C }", 22, "colder"),
        Seventh("yes or no", "plants: [ { plant: pilea, mounted: maybe } ]", 36, "true or false"),
        new("version 2", "litterfall: 2\nname: t\n" + Sized + Soil, 1, 13, "from 1 to 1"),
        new("escape in a name", "litterfall: 1\nname: \"a\\e[31mb\"\n" + Sized + Soil, 2, 7, "name"),
        new("endless name", $"litterfall: 1\nname: {new string('n', 201)}\n" + Sized + Soil, 2, 7, "name"),
        new("empty name", "litterfall: 1\nname: \"\"\n" + Sized + Soil, 2, 7, "name"),
    ];

    private static readonly BrokenFile[] Forms =
    [
        Floor("negative depth", "soil: { recipe: standard-rainforest, depth: -7 cm }", 47, "negative"),
        Floor("comma in flow form", "soil: { recipe: standard-rainforest, depth: 4,5 cm }", 49, "comma"),
        Floor(
            "front without back",
            "soil: { recipe: standard-rainforest, front: 4 cm }",
            9,
            "front and back"
        ),
        Floor("back without front", "soil: { recipe: standard-rainforest, back: 4 cm }", 9, "front and back"),
        Floor(
            "depth and wedge",
            "soil: { recipe: standard-rainforest, depth: 5 cm, front: 4 cm, back: 9 cm }",
            9,
            "front and back"
        ),
        Floor("no depth", "soil: { recipe: standard-rainforest }", 9, "depth"),
        Floor(
            "unknown recipe",
            "soil: { recipe: standard-rainforst, depth: 7 cm }",
            19,
            "standard-rainforest"
        ),
        Floor(
            "animal for soil",
            "soil: { recipe: dendrobates-auratus, depth: 7 cm }",
            19,
            "of the kind animal"
        ),
        Floor("soil in a list", "soil: [ standard-rainforest ]", 9, "keys below it"),
        Floor("soil in a word", "soil: standard-rainforest", 9, "keys below it"),
        Floor(
            "list for a depth",
            "soil: { recipe: standard-rainforest, depth: [ 7 cm, 8 cm ] }",
            47,
            "single value"
        ),
        Floor("no layer", "moss: { material: sheet-moss, depth: 1 cm }", 3, "no layer"),
        Floor("raised and filled", "drainage: { raised: 5 cm, depth: 5 cm }", 13, "raised"),
        Floor(
            "steps over 100 %",
            "soil: { recipe: standard-rainforest, zones: [ { share: 60 %, depth: 5 cm }, "
                + "{ share: 60 %, depth: 5 cm } ] }",
            47,
            "100 %"
        ),
        Seventh("unknown key", "drainge: none", 1, "not a key"),
        Seventh("key in capitals", "Room: { humidity: 45 % }", 1, "not a key"),
        Seventh("duplicate key", "name: again", 1, "twice"),
        Seventh("vent without size", "vents: [ { height: 44 cm } ]", 10, "no size"),
        Seventh("wood without size", "hardscape: [ { material: cork-bark } ]", 14, "no size"),
        new("no box", Head + Soil, 1, 1, "'box' is missing"),
        new("no floor", Head + Sized, 1, 1, "'floor' is missing"),
        new("box without size", Head + "box: { opening: top }\n" + Soil, 3, 6, "no size"),
        new(
            "outside without glass",
            Head + "box:\n  outside: { length: 60 cm, depth: 45 cm, height: 45 cm }\n" + Soil,
            4,
            12,
            "glass"
        ),
        new(
            "two sizes",
            Head
                + Sized
                + "  outside: { length: 60 cm, depth: 45 cm, height: 45 cm }\n  glass: { walls: 5 mm }\n"
                + Soil,
            4,
            3,
            "two sizes"
        ),
    ];

    private static IEnumerable<BrokenFile> Yaml()
    {
        yield return new("empty", "", 1, 1, "empty");
        yield return new("only blanks", "   \n\n  \n", 1, 1, "empty");
        yield return new("only comments", "# nothing\n# yet\n", 1, 1, "empty");
        yield return new("a list", "- litterfall: 1\n- name: t\n", 1, 1, "keys");
        yield return new("a word", "hello\n", 1, 1, "keys");
        yield return new("two documents", Good + "---\n" + Good, 7, 1, "second document");
        yield return Seventh("tab for indenting", "\troom: none", 1, "tab");
        yield return Seventh("anchor", "room: &r { humidity: 45 % }", 7, "anchors");
        yield return Seventh("alias", "room: *r", 7, "anchors");
        yield return Seventh("tag", "room: !!python/object:os.system { humidity: 45 % }", 7, "tags");
        yield return Seventh("stray colon", "room: humidity: 45 %", 15, "colon");
        // The bracket can be missed only where the file ends: below its seventh and last line.
        yield return new("missing bracket", Good + "vents: [ { area: 60 cm2 }\n", 8, 1, "bracket");
        yield return Seventh("too many brackets", "room: { humidity: 45 % } }", 26, "");
        yield return Seventh("NUL", "room: no\0ne", 9, "control character");
        yield return Seventh("bell", "# \a", 3, "control character");
        yield return Seventh("unclosed quote", "workshop: \"lantern", 11, "");
        yield return new("a map as key", "{ a: 1 }: 2\n", 1, 1, "key");
        yield return new(
            "wrong indent",
            Head + "box:\n  inside: { length: 1 m, depth: 1 m, height: 1 m }\n sill: 1 cm\n",
            5,
            2,
            ""
        );
        yield return new("undefined escape", "litterfall: 1\nname: \"\\q\"\n" + Sized + Soil, 2, 7, "");
    }

    private static IEnumerable<BrokenFile> Huge()
    {
        yield return new("ten thousand brackets", Good + "room: " + new string('[', 10_000), 7, 19, "nested");
        yield return new("ten thousand braces", Good + "room: " + Repeat("{a: ", 10_000), 7, 52, "nested");
        yield return new(
            "ten thousand dashes",
            Good + "vents:\n" + Repeat("- ", 10_000) + "1\n",
            8,
            25,
            "nested"
        );
        yield return new("steps down", Good + "room:\n" + Stairs(200), 19, 13, "nested");
        yield return new("laughs", Laughs(), 1, 4, "anchors");
        yield return new("a long line", Good + "room: " + new string('a', 400_000) + "\n", 7, 7, "room");
        yield return new(
            "100 000 keys",
            Good + string.Concat(Enumerable.Range(0, 30_000).Select(i => $"k{i}: 1\n")),
            7,
            1,
            "not a key"
        );
        yield return new("100 000 vents", Good + "vents: [" + Repeat("{},", 50_000) + "]\n", 7, 8, "entries");
    }

    private static string Repeat(string text, int times) => string.Concat(Enumerable.Repeat(text, times));

    private static string Stairs(int depth) =>
        string.Concat(Enumerable.Range(1, depth).Select(i => new string(' ', i) + "a:\n"));

    private static string Laughs() =>
        "a: &a [ha, ha, ha, ha, ha, ha, ha, ha, ha]\n"
        + string.Concat(
            Enumerable
                .Range(1, 12)
                .Select(i =>
                    $"{(char)('a' + i)}: &{(char)('a' + i)} [{Repeat($"*{(char)('a' + i - 1)}, ", 9)}]\n"
                )
        );
}
