using Litterfall.UnitTests;
using Litterfall.UnitTests.House;

namespace Litterfall.FuzzTests;

/// <summary>
/// Damaged texts at every reader, seeded so that a failure comes back: each is refused with its place or
/// taken with finite numbers, and none throws. What ever broke a reader lives in its corpus and is read
/// first.
/// </summary>
public sealed class ReaderTests
{
    private static readonly int Inputs = LongRun.Cases(50_000, 2_000_000);

    public static TheoryData<string> Names => [.. Readers.All.Select(reader => reader.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_once_broke_a_reader_breaks_it_no_more(string name)
    {
        var reader = Readers.All.Single(one => one.Name == name);
        Assert.NotEmpty(reader.Seeds);
        Assert.All(reader.Seeds, input => Assert.Null(reader.Try(input)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Damaged_texts_are_refused_with_their_place_or_taken_whole(string name)
    {
        var reader = Readers.All.Single(one => one.Name == name);
        var share = reader.Share / Readers.All.Sum(one => one.Share);
        var mutator = new Mutator(name.Sum(c => c));
        for (var i = 0; i < share * Inputs; i++)
        {
            var input = mutator.Next(reader.Seeds);
            if (reader.Try(input) is { } trouble)
            {
                Assert.Fail($"{trouble}\nkept as {Kept(name, input)}");
            }
        }
    }

    /// <summary>A text that broke a reader, put into its corpus under what it holds.</summary>
    private static string Kept(string name, byte[] input)
    {
        var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(input))[..12];
        var path = SourceTree.Path("tests", "Fuzz", "Corpus", name, hash);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, input);
        return path;
    }
}
