using System.Diagnostics;
using System.IO.Compression;
using System.Text;
using Litterfall.Dispatch.Evidence;
using Litterfall.Domain.Dispatch;
using static Litterfall.UnitTests.Dispatch.Evidence.EvidenceExamples;

namespace Litterfall.UnitTests.Dispatch.Evidence;

public sealed class EvidenceExportTests
{
    private const string Tool = "/usr/bin/sha256sum";

    [Fact]
    public void The_zip_opens_with_another_reader_and_is_the_same_twice()
    {
        using var zip = new ZipArchive(new MemoryStream(Zip()));
        Assert.Equal(
            [
                "SHA256SUMS",
                "README.txt",
                "0001-cleared.txt",
                "0002-photo.txt",
                "0003-handed-over.txt",
                Chain()[1].Files[0].Name,
            ],
            zip.Entries.Select(e => e.FullName)
        );
        using var photo = new MemoryStream();
        using (var stream = zip.Entries[^1].Open())
        {
            stream.CopyTo(photo);
        }

        Assert.Equal(Photo, photo.ToArray());
        Assert.Equal(Zip(), Zip());
    }

    [Fact]
    public void A_whole_zip_says_so_and_names_the_fingerprint_to_compare()
    {
        var check = EvidenceExport.Check(Zip());
        Assert.True(check.IsWhole, string.Join('\n', check.Words));
        Assert.Equal(12, check.Parcel);
        Assert.Equal(Chain().Select(e => e.Sha256), check.Links.Select(l => l.Sha256));
        Assert.Equal(Fingerprint.Short(Chain()[0].Sha256), check.Cleared);
        Assert.True(EvidenceExport.Check(Zip(), Chain()).IsWhole);
    }

    /// <summary>
    /// Each byte of the zip is turned once; where it lies in a file, file and byte are told, as another
    /// reader of zips finds them.
    /// </summary>
    [Fact]
    public void Every_changed_byte_is_found_where_it_is()
    {
        var zip = Zip();
        var places = Places(zip);
        var step = LongRun.IsAsked ? 1 : 5;
        for (var at = 0; at < zip.Length; at += step)
        {
            var bad = (byte[])zip.Clone();
            bad[at] ^= (byte)(1 << (at % 8));
            var check = EvidenceExport.Check(bad);
            Assert.False(check.IsWhole, FormattableString.Invariant($"byte {at} was changed unseen"));
            if (places.TryGetValue(at, out var place))
            {
                Assert.Contains(check.Faults, f => f.Where == place.Name && f.Byte == place.Byte);
            }
        }
    }

    /// <summary>Files by the bytes of the zip: found as whole runs, no reader of ours.</summary>
    private static Dictionary<int, (string Name, long Byte)> Places(byte[] zip)
    {
        var places = new Dictionary<int, (string, long)>();
        using var archive = new ZipArchive(new MemoryStream(zip));
        foreach (var entry in archive.Entries)
        {
            using var bytes = new MemoryStream();
            using (var stream = entry.Open())
            {
                stream.CopyTo(bytes);
            }

            var start = zip.AsSpan().IndexOf(bytes.ToArray());
            for (var i = 0; i < bytes.Length; i++)
            {
                places[start + i] = (entry.FullName, i + 1);
            }
        }

        return places;
    }

    [Fact]
    public void Many_changed_bytes_are_found_at_the_first_beside_the_shops_copy()
    {
        var chain = Chain();
        var forged = chain[0] with
        {
            Canonical = chain[0].Canonical.Replace("\"Ship\"", "\"Hold\"", StringComparison.Ordinal),
        };
        var check = EvidenceExport.Check(Zip([forged, chain[1], chain[2]]), chain);
        var at = chain[0].Canonical.IndexOf("Ship", StringComparison.Ordinal) + 1;
        Assert.Contains(check.Faults, f => f.Where == "0001-cleared.txt" && f.Byte == at);
        Assert.Contains(check.Faults, f => f.Where == "0002-photo.txt");
    }

    [Fact]
    public void A_chain_written_anew_differs_from_the_packing_card_and_from_the_shop()
    {
        var forged = new List<EvidenceEntry>
        {
            EvidenceChain.Next(
                Draft(EvidenceKind.Cleared, "Cleared.", "{ \"verdict\": \"Hold\" }"),
                null,
                null
            ),
        };
        var alone = EvidenceExport.Check(Zip(forged));
        Assert.True(alone.IsWhole);
        Assert.NotEqual(Fingerprint.Short(Chain()[0].Sha256), alone.Cleared);
        Assert.Contains(alone.Words, w => w.Contains("packing card", StringComparison.Ordinal));
        Assert.False(EvidenceExport.Check(Zip(forged), Chain()).IsWhole);
    }

    [Fact]
    public void A_lost_tail_and_a_lost_photo_are_told()
    {
        var chain = Chain();
        var cut = EvidenceExport.Check(Zip([chain[0], chain[1]]), chain);
        Assert.Equal("0003-handed-over.txt", Assert.Single(cut.Faults).Where);
        var bare = EvidenceExport.Check(EvidenceExport.Write(chain, _ => null));
        Assert.Equal(chain[1].Files[0].Name, Assert.Single(bare.Faults).Where);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(40)]
    [InlineData(5000)]
    public void Anything_else_is_no_evidence(int length)
    {
        var bytes = new byte[length];
        new Random(length).NextBytes(bytes);
        Assert.False(EvidenceExport.Check(bytes).IsWhole);
    }

    [Fact]
    public void Every_cut_off_zip_is_told()
    {
        var zip = Zip();
        for (var length = 0; length < zip.Length; length += 97)
        {
            Assert.False(EvidenceExport.Check(zip[..length]).IsWhole);
        }

        Assert.False(EvidenceExport.Check([.. zip, 0]).IsWhole);
    }

    [Fact]
    public void Without_a_link_there_is_nothing_to_export() =>
        Assert.Throws<ArgumentException>(() => EvidenceExport.Write([], _ => null));

    /// <summary>GNU coreutils' own tool on the unpacked files, whole and with one byte changed.</summary>
    [Fact]
    public async Task The_standard_tool_verifies_it_and_finds_a_changed_byte()
    {
        Assert.SkipUnless(File.Exists(Tool), $"{Tool} is not installed");
        var cancel = TestContext.Current.CancellationToken;
        var folder = Directory.CreateTempSubdirectory("evidence");
        try
        {
            using (var zip = new ZipArchive(new MemoryStream(Zip())))
            {
                await zip.ExtractToDirectoryAsync(folder.FullName, cancel);
            }

            var (whole, told) = await Run(folder.FullName, ["--strict", "-c", "SHA256SUMS"], cancel);
            Assert.True(whole == 0, told);
            Assert.Equal(5, told.Split(": OK").Length - 1);
            var (_, first) = await Run(folder.FullName, ["0001-cleared.txt"], cancel);
            Assert.Contains($"before: {first[..64]}\n", Chain()[1].Canonical, StringComparison.Ordinal);
            foreach (var name in Chain().Select(e => $"{e.Number:0000}-*.txt").Append("README.txt"))
            {
                var file = Directory.GetFiles(folder.FullName, name)[0];
                var bytes = await File.ReadAllBytesAsync(file, cancel);
                bytes[bytes.Length / 2] ^= 1;
                await File.WriteAllBytesAsync(file, bytes, cancel);
                var (code, said) = await Run(folder.FullName, ["-c", "SHA256SUMS"], cancel);
                Assert.Equal(1, code);
                Assert.Contains($"{Path.GetFileName(file)}: FAILED", said, StringComparison.Ordinal);
                bytes[bytes.Length / 2] ^= 1;
                await File.WriteAllBytesAsync(file, bytes, cancel);
            }
        }
        finally
        {
            folder.Delete(true);
        }
    }

    private static async Task<(int Code, string Out)> Run(
        string folder,
        string[] arguments,
        CancellationToken cancel
    )
    {
        var start = new ProcessStartInfo(Tool, arguments)
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        };
        start.Environment["LC_ALL"] = "C";
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync(cancel);
        var output = await process.StandardOutput.ReadToEndAsync(cancel);
        await process.WaitForExitAsync(cancel);
        return (process.ExitCode, output + await error);
    }
}
