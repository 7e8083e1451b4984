using System.Security.Cryptography;
using System.Text;
using Litterfall.Dispatch.Evidence;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using static Litterfall.UnitTests.Dispatch.Evidence.EvidenceExamples;

namespace Litterfall.UnitTests.Dispatch.Evidence;

public sealed class EvidenceChainTests
{
    private static string Sha(string text) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    /// <summary>The text written out by hand as described; fingerprints by the framework alone.</summary>
    [Fact]
    public void A_link_is_fingerprinted_as_the_described_text()
    {
        var chain = Chain();
        const string first =
            "litterfall evidence 1\nparcel: 12\nlink: 1\nkind: cleared\nat: 2026-11-24T12:00:00.000Z\n"
            + "who: Tobin\nbefore: none\nshop-before: none\nnote:\n  Cleared.\ntext:\n  {\n"
            + "    \"verdict\": \"Ship\"\n  }\n";
        Assert.Equal(first, chain[0].Canonical);
        Assert.Equal(Sha(first), chain[0].Sha256);
        var photo = Convert.ToHexStringLower(SHA256.HashData(Photo));
        var second =
            "litterfall evidence 1\nparcel: 12\nlink: 2\nkind: photo\nat: 2026-11-24T12:10:00.000Z\n"
            + $"who: Tobin\nbefore: {Sha(first)}\nfile: {photo} 300 files/0002-{photo[..8]}-cup-1.jpg\n"
            + "note:\n  Two cups.\n  Both closed.\n";
        Assert.Equal(second, chain[1].Canonical);
        Assert.Equal(Sha(second), chain[1].Sha256);
        Assert.Equal(Sha(second), chain[2].Before);
    }

    [Fact]
    public void A_whole_chain_has_no_fault() => Assert.Empty(EvidenceChain.Check(Chain()));

    [Fact]
    public void Line_ends_and_signs_that_no_text_has_are_settled_before_they_are_frozen()
    {
        var entry = EvidenceChain.Next(
            Draft(EvidenceKind.Note, "one\r\ntwo\rthree\0\uD800") with
            {
                Who = " Ilse\nkind: cleared ",
            },
            null,
            null
        );
        Assert.Equal("one\ntwo\nthree\uFFFD\uFFFD", entry.Note);
        Assert.Equal("Ilse kind: cleared", entry.Who);
        Assert.Empty(EvidenceChain.Check([entry]));
    }

    [Fact]
    public void A_time_is_kept_to_the_millisecond_that_every_store_keeps()
    {
        var draft = Draft(EvidenceKind.Note, "x") with { At = Noon.AddTicks(12_345_678) };
        Assert.Equal(Noon.AddMilliseconds(1234), EvidenceChain.Next(draft, null, null).At);
    }

    public static TheoryData<string> Members =>
        ["parcel", "kind", "at", "who", "note", "text", "file", "before", "shop"];

    [Theory]
    [MemberData(nameof(Members))]
    public void Each_changed_member_is_found_in_its_link_and_at_its_byte(string member)
    {
        var chain = Chain();
        var whole = chain[1].Canonical;
        chain[1] = member switch
        {
            "parcel" => chain[1] with { Parcel = 13 },
            "kind" => chain[1] with { Kind = EvidenceKind.Note },
            "at" => chain[1] with { At = chain[1].At.AddSeconds(1) },
            "who" => chain[1] with { Who = "Ilse" },
            "note" => chain[1] with { Note = "Two cups.\nOne closed." },
            "text" => chain[1] with { Text = "more" },
            "file" => chain[1] with { Files = [chain[1].Files[0] with { Bytes = 301 }] },
            "before" => chain[1] with { Before = new string('0', 64) },
            _ => chain[1],
        };
        if (member == "shop")
        {
            chain[0] = chain[0] with { ShopBefore = new string('1', 64) };
        }

        var fault = EvidenceChain.Check(chain)[0];
        Assert.Equal(member == "shop" ? "link 1" : "link 2", fault.Where);
        // The first letter of the changed value, counted from 1; the text is plain letters.
        int? at = member switch
        {
            "parcel" => whole.IndexOf("12\n", StringComparison.Ordinal) + 2,
            "who" => whole.IndexOf("Tobin", StringComparison.Ordinal) + 1,
            "note" => whole.IndexOf("Both", StringComparison.Ordinal) + 1,
            "text" => whole.Length + 1,
            _ => null,
        };
        Assert.NotNull(fault.Byte);
        Assert.True(at is null || at == fault.Byte, fault.ToString());
    }

    [Fact]
    public void A_changed_frozen_text_is_found_at_its_byte()
    {
        var chain = Chain();
        chain[2] = chain[2] with
        {
            Canonical = chain[2].Canonical.Replace("depot", "Depot", StringComparison.Ordinal),
        };
        var fault = Assert.Single(EvidenceChain.Check(chain));
        Assert.Equal("link 3", fault.Where);
        Assert.Equal(Chain()[2].Canonical.IndexOf("depot", StringComparison.Ordinal) + 1, fault.Byte);
    }

    [Fact]
    public void A_link_left_out_put_in_or_moved_is_found()
    {
        var chain = Chain();
        Assert.NotEmpty(EvidenceChain.Check([chain[0], chain[2]]));
        Assert.NotEmpty(EvidenceChain.Check([chain[1], chain[2]]));
        Assert.NotEmpty(EvidenceChain.Check([chain[0], chain[2], chain[1]]));
        Assert.NotEmpty(EvidenceChain.Check([chain[0], chain[0], chain[1], chain[2]]));
    }

    [Fact]
    public void A_cut_off_tail_shows_in_the_parcel_after_it()
    {
        var one = Chain();
        var two = Chain(13, one[^1]);
        Assert.Empty(EvidenceChain.CheckShop([.. one, .. two]));
        var fault = Assert.Single(EvidenceChain.CheckShop([one[0], one[1], .. two]));
        Assert.Equal("parcel 13, link 1", fault.Where);
        Assert.Contains("gone", fault.Text, StringComparison.Ordinal);
        Assert.NotEmpty(EvidenceChain.CheckShop(two));
        // The cut chain alone looks whole: that is why the next parcel names its end.
        Assert.Empty(EvidenceChain.Check([one[0], one[1]]));
    }

    [Fact]
    public void Links_that_were_written_between_count_in_the_order_of_writing()
    {
        var one = Chain();
        var two = Chain(13, one[0]);
        Assert.Empty(EvidenceChain.CheckShop([one[0], .. two, one[1], one[2]]));
    }

    [Fact]
    public void A_file_is_checked_by_length_and_fingerprint()
    {
        var file = Chain()[1].Files[0];
        Assert.Null(EvidenceChain.CheckFile(file, Photo));
        Assert.NotNull(EvidenceChain.CheckFile(file, null));
        Assert.NotNull(EvidenceChain.CheckFile(file, [.. Photo, 0]));
        Assert.NotNull(EvidenceChain.CheckFile(file, [.. Photo.Select((b, i) => i == 9 ? (byte)0 : b)]));
    }

    [Theory]
    [InlineData("../../etc/passwd")]
    [InlineData("..")]
    [InlineData("C:\\photos\\a b.jpg")]
    [InlineData("")]
    [InlineData("ünï\n😀.jpg")]
    public void Names_of_files_are_safe_on_any_machine(string name)
    {
        var file = EvidenceChain.File(2, name, Photo).Name;
        Assert.StartsWith("files/0002-", file, StringComparison.Ordinal);
        Assert.Matches("^files/[A-Za-z0-9._-]+$", file);
        Assert.True(file.Length <= 90, file);
    }

    [Fact]
    public void The_next_link_is_of_the_same_parcel() =>
        Assert.Throws<ArgumentException>(() =>
            EvidenceChain.Next(Draft(EvidenceKind.Note, "x", "", 13), Chain()[0], null)
        );
}
