using Litterfall.Store;

// Every kind of write of a bench, one after the other, on the file that is named. After each one the query
// that finds what was promised is told, and a line is waited for: what has been told outlives whatever
// comes.
var store = new BenchStore(StoreFile.Contexts(args[0]), new("1", "1"), TimeProvider.System);
await store.OpenAsync();
Tell("SELECT COUNT(*) FROM Choices WHERE Key = 'store.writtenBy'");
for (var round = 0; round < 3; round++)
{
    var text = $"litterfall: 1\nname: design {round}\n# {new string((char)('a' + round), 60_000)}\n";
    var design = await store.AddAsync($"design {round}", text, "begun");
    var versions =
        $"SELECT COUNT(*) FROM Versions WHERE DesignId = '{design.Id.ToString().ToUpperInvariant()}'";
    var row = $"SELECT COUNT(*) FROM Designs WHERE Id = '{design.Id.ToString().ToUpperInvariant()}'";
    Tell($"{versions} AND Number = 1");
    await store.SaveAsync(design.Id, 1, ($"design {round}", text + "# more\n", "more"));
    Tell($"{versions} AND Number = 2");
    await store.GoToAsync(design.Id, 1);
    Tell($"{row} AND Head = 1");
    await store.JudgeAsync(design.Id, 1, "It works.");
    Tell($"{row} AND Verdict = 'It works.'");
    await store.AddEntryAsync($"own-{round}", $$"""{ "key": "own-{{round}}" }""", "own");
    Tell($"SELECT COUNT(*) FROM Entries WHERE Key = 'own-{round}'");

    // Enough for the log of the file to be folded into it once in each round.
    var bytes = new byte[3_000_000];
    new Random(round).NextBytes(bytes);
    await store.AddFileAsync($"lamp {round}.ies", bytes);
    Tell($"SELECT COUNT(*) FROM Files WHERE Name = 'lamp {round}.ies' AND LENGTH(Bytes) = 3000000");
    await store.ChooseAsync($"unit-{round}", "in");
    Tell($"SELECT COUNT(*) FROM Choices WHERE Key = 'unit-{round}' AND Value = 'in'");
    await store.ArchiveAsync(design.Id, isArchived: true);
    Tell($"{row} AND IsAway = 1");
}

static void Tell(string promise)
{
    Console.WriteLine(promise);
    Console.ReadLine();
}
