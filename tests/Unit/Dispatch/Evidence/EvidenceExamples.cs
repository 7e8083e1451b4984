using System.Text;
using Litterfall.Dispatch.Evidence;
using Litterfall.Domain.Dispatch;

namespace Litterfall.UnitTests.Dispatch.Evidence;

/// <summary>A short chain of our own: cleared, photo, handed over.</summary>
internal static class EvidenceExamples
{
    public static readonly DateTime Noon = new(2026, 11, 24, 12, 0, 0, DateTimeKind.Utc);

    public static readonly byte[] Photo = [.. Enumerable.Range(0, 300).Select(i => (byte)(i * 37))];

    public static EvidenceDraft Draft(EvidenceKind kind, string note, string text = "", int parcel = 12) =>
        new()
        {
            Parcel = parcel,
            Kind = kind,
            At = Noon.AddMinutes(10 * (int)kind),
            Who = "Tobin",
            Note = note,
            Text = text,
        };

    public static List<EvidenceEntry> Chain(int parcel = 12, EvidenceEntry? shopBefore = null)
    {
        var first = EvidenceChain.Next(
            Draft(EvidenceKind.Cleared, "Cleared.", "{\n  \"verdict\": \"Ship\"\n}", parcel),
            null,
            shopBefore
        );
        var second = EvidenceChain.Next(
            Draft(EvidenceKind.Photo, "Two cups.\nBoth closed.", "", parcel) with
            {
                Files = [EvidenceChain.File(2, "cup 1.jpg", Photo)],
            },
            first,
            first
        );
        var third = EvidenceChain.Next(
            Draft(EvidenceKind.HandedOver, "At the depot.", "", parcel),
            second,
            second
        );
        return [first, second, third];
    }

    public static byte[] Zip(IReadOnlyList<EvidenceEntry>? chain = null) =>
        EvidenceExport.Write(chain ?? Chain(), _ => Photo);

    public static string Text(byte[] bytes) => Encoding.UTF8.GetString(bytes);
}
