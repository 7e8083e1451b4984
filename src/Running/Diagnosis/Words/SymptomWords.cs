using System.Collections.Immutable;
using System.Text;

namespace Litterfall.Running.Diagnosis.Words;

/// <summary>Symptoms in a customer's words.</summary>
public static class SymptomWords
{
    private static readonly ImmutableHashSet<string> Noes =
    [
        "no",
        "not",
        "never",
        "without",
        "none",
        "isn't",
        "doesn't",
        "don't",
        "isnt",
        "doesnt",
        "dont",
    ];

    /// <summary>
    /// Every symptom with its title and the starts of words that mean it: all words of one set, in any order;
    /// words with a bar between stand for each other. Own choice, from what keepers write.
    /// </summary>
    private static readonly ImmutableArray<(Symptom Symptom, string Title, string[] Sets)> Known =
    [
        (
            Symptom.Floods,
            "water stands over the drainage, soil wet at the glass",
            [
                "flood",
                "waterlog",
                "water-log",
                "swamp",
                "soggy",
                "sodden",
                "water stand|above|rising|rises|high",
                "level above|over|rising|rises|high",
                "soil|floor|ground|substrate soaked|soaking|saturated|wet|mud|muddy",
                "puddle",
                "drainage full",
            ]
        ),
        (
            Symptom.Smells,
            "it smells sour, rotten or of a ditch",
            ["smell", "stink", "stench", "odor", "odour", "reek", "rotten egg", "sour", "ditch"]
        ),
        (
            Symptom.Fogs,
            "the glass is fogged",
            [
                "fog",
                "condens",
                "steamed|steamy",
                "glass|pane|front|door white|wet|misted|cloudy|blind",
                "cannot|can't|cant see",
            ]
        ),
        (
            Symptom.PlantsMelt,
            "plants melt or rot",
            [
                "melt",
                "fell|fall apart",
                "mush",
                "slimy leaves|leaf|plant|stem",
                "rot|rots|rotted|rotting|rotten plant|leaf|leaves|stem|crown|bromeliad|root|fern|vine",
                "soft|black|collaps leaf|leaves|stem|plant|bromeliad",
                "plant die|dies|dying|died|dead",
            ]
        ),
        (
            Symptom.PlantsCrisp,
            "plants turn brown and crisp",
            [
                "crisp",
                "brown tip|tips|edge|leaf|leaves",
                "dry|dried|drying|curl|shrivel|wilt leaf|leaves|plant|fern|tips",
            ]
        ),
        (
            Symptom.PlantsPale,
            "plants stretch and turn pale",
            [
                "stretch",
                "leggy",
                "pale plant|leaf|leaves|bromeliad",
                "lost|lose|losing|fade color|colour|red",
                "plant grow thin|slow|not",
            ]
        ),
        (
            Symptom.LeavesBleached,
            "leaves are bleached or burnt",
            ["bleach leaf|leaves|plant|patch", "burn|scorch leaf|leaves|plant|patch|moss"]
        ),
        (Symptom.Mold, "mold grows", ["mold", "mould", "fungus", "fungi", "white fuzz|fur|threads|fluff"]),
        (
            Symptom.CrewGone,
            "springtails or isopods are gone, or a culture crashed",
            [
                "springtail|isopod|crew|woodlice|culture gone|vanish|disappear|missing|dead|died"
                    + "|crash|none|no|few|fewer|less",
            ]
        ),
        (
            Symptom.FrogsHide,
            "frogs hide",
            [
                "frog|animal|they hid|hide|hiding|hidden|shy|unseen|invisible",
                "never|rarely|hardly see|seen frog|them",
                "frog lethargic|sluggish|inactive",
            ]
        ),
        (
            Symptom.FrogsOffFloor,
            "frogs sit on the wood, never on the floor",
            ["frog wood|branch|glass|wall|climb|up", "frog never|not|off|avoid floor|ground|soil"]
        ),
        (
            Symptom.FrogsInWater,
            "frogs sit in the water",
            ["frog water|bowl|dish|pond|basin|bath|axil", "frog gap|gaping|pant"]
        ),
        (
            Symptom.FrogsThin,
            "frogs grow thin",
            ["frog|animal thin|skinny|bony|weight|emaciated", "frog not|stop eat|eating|eats"]
        ),
        (Symptom.FrogDied, "a frog died", ["frog|animal die|died|dies|dead|dying", "lost one|two|a frog"]),
        (
            Symptom.FrogsUnderBarrier,
            "frogs are found under the barrier",
            ["frog under|below|beneath barrier|mesh|screen|floor|drainage|soil"]
        ),
        (
            Symptom.FliesOut,
            "flies or gnats in the room",
            ["gnat", "fruitfl", "fl|fly|flies room|house|kitchen|out|outside|escape|everywhere|office"]
        ),
        (
            Symptom.Algae,
            "algae or slime on the front",
            ["algae", "alga", "green|slime|slimy glass|pane|front"]
        ),
        (
            Symptom.MossDies,
            "moss dies",
            ["moss brown|dead|die|dies|died|dying|yellow|gone|dry|bleached|thin"]
        ),
        (
            Symptom.WhiteSpots,
            "white spots on panes and leaves",
            ["white|chalk|lime spot|crust|stain|deposit|film|dots", "limescale", "scale glass|pane"]
        ),
        (
            Symptom.DriesOut,
            "soil and moss dry out",
            [
                "soil|floor|ground|substrate|moss|everything|it|tank dry|dries|dried|bone-dry|dusty|crumbl",
                "humidity low|drops|falls|never|only",
                "drainage|reservoir|level empty|gone|dry|falling|falls",
                "too dry",
            ]
        ),
        (
            Symptom.WaterOutside,
            "water under or beside the tank",
            [
                "leak",
                "drip floor|shelf|stand|out|outside",
                "water|wet|puddle shelf|stand|cabinet|carpet|outside|under|beside tank|box|it|shelf"
                    + "|stand|cabinet|carpet",
            ]
        ),
    ];

    /// <summary>All symptoms with their titles.</summary>
    public static IEnumerable<(Symptom Symptom, string Title)> All => Known.Select(k => (k.Symptom, k.Title));

    /// <summary>Title of a symptom.</summary>
    public static string Title(Symptom symptom) => Known.First(k => k.Symptom == symptom).Title;

    /// <summary>
    /// Symptoms that a sentence tells, those that it denies, and whether it was understood.
    /// </summary>
    /// <param name="sentence">In the customer's words.</param>
    public static (ImmutableArray<Symptom> Seen, ImmutableArray<Symptom> Denied) Read(string sentence)
    {
        var seen = ImmutableArray.CreateBuilder<Symptom>();
        var denied = ImmutableArray.CreateBuilder<Symptom>();
        foreach (var clause in Clauses(sentence))
        {
            foreach (var (symptom, _, sets) in Known)
            {
                if (sets.FirstOrDefault(set => Holds(clause, set)) is not { } set)
                {
                    continue;
                }

                var isNo = clause.Any(Noes.Contains) && !set.Split(' ', '|').Any(Noes.Contains);
                (isNo ? denied : seen).Add(symptom);
            }
        }

        Narrow(seen);
        return ([.. seen.Distinct()], [.. denied.Distinct().Except(seen)]);
    }

    /// <summary>
    /// "Frogs under the mesh" says nothing of a wet floor, "moss bleached" nothing of dry soil.
    /// </summary>
    private static void Narrow(ImmutableArray<Symptom>.Builder seen)
    {
        void Drops(Symptom one, params ReadOnlySpan<Symptom> others)
        {
            if (seen.Contains(one))
            {
                foreach (var other in others)
                {
                    seen.Remove(other);
                }
            }
        }

        Drops(Symptom.FrogsUnderBarrier, Symptom.FrogsOffFloor, Symptom.FrogsHide);
        Drops(Symptom.FrogsOffFloor, Symptom.FrogsHide);
        Drops(Symptom.LeavesBleached, Symptom.PlantsCrisp);
        Drops(Symptom.WhiteSpots, Symptom.Fogs);
        Drops(Symptom.MossDies, Symptom.PlantsCrisp);
        Drops(Symptom.WaterOutside, Symptom.Floods);
    }

    private static IEnumerable<string[]> Clauses(string sentence) =>
        sentence
            .ToLowerInvariant()
            .Replace('’', '\'')
            .Split([',', ';', '.', '\n', '!', '?', '/'], StringSplitOptions.RemoveEmptyEntries)
            .SelectMany(c => c.Split(" and ", StringSplitOptions.RemoveEmptyEntries))
            .SelectMany(c => c.Split(" but ", StringSplitOptions.RemoveEmptyEntries))
            .Select(Words)
            .Where(w => w.Length > 0);

    private static string[] Words(string clause)
    {
        var plain = new StringBuilder(clause.Length);
        foreach (var c in clause)
        {
            plain.Append(char.IsLetterOrDigit(c) || c is '\'' or '-' ? c : ' ');
        }

        return plain.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    /// <summary>
    /// A single word stands for every word it starts; short words with a bar must match whole.
    /// </summary>
    private static bool Holds(string[] words, string set)
    {
        var groups = set.Split(' ');
        return groups.Length == 1 && !set.Contains('|')
            ? words.Any(w => w.StartsWith(set, StringComparison.Ordinal))
            : groups.All(g => Group(words, g));
    }

    /// <summary>A longer word also stands for those it starts; short ones would start too many.</summary>
    private static bool Means(string word, string one) =>
        one.Length < 4 ? word == one : word.StartsWith(one, StringComparison.Ordinal);

    private static bool Group(string[] words, string group) =>
        group.Contains('|')
            ? group.Split('|').Any(one => words.Any(w => Means(w, one)))
            : words.Any(w => w.StartsWith(group, StringComparison.Ordinal));
}
