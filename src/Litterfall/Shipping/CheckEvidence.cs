using System.Text.Json;
using Litterfall.App.Files;
using Litterfall.Dispatch.Evidence;
using Litterfall.Documents.Text;
using Litterfall.Domain.Faults;

namespace Litterfall.App.Shipping;

/// <summary>Checks an exported evidence file and says what was found.</summary>
internal static class CheckEvidence
{
    private const long LargestFile = EvidenceExport.LargestBytes;

    /// <summary>Checks it and prints the result.</summary>
    /// <param name="path">The zip.</param>
    /// <param name="json">True for one JSON document.</param>
    /// <returns>0 for whole evidence, 1 where something was changed, 2 for an unreadable file.</returns>
    public static int Run(string path, bool json)
    {
        byte[] zip;
        try
        {
            var file = new FileInfo(path);
            if (file.Length > LargestFile)
            {
                return Refused(path, "is too large for exported evidence", json);
            }

            zip = File.ReadAllBytes(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return Refused(path, "cannot be read", json);
        }

        var check = EvidenceExport.Check(zip);
        if (json)
        {
            Console.Out.WriteLine(Json(check));
        }
        else
        {
            foreach (var line in check.Words)
            {
                Console.Out.WriteLine(Terminal.Clean(line));
            }

            foreach (var (name, sha256) in check.Links)
            {
                Console.Out.WriteLine(Terminal.Clean($"  {sha256}  {name}"));
            }
        }

        return check.IsWhole ? Exit.Done : Exit.Stopped;
    }

    private static int Refused(string path, string why, bool json) =>
        Exit.Unusable(
            json,
            new TextFault(path, 0, 0, $"the file {why}", "an exported evidence file (*.zip)")
        );

    private static string Json(EvidenceCheck check)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new() { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteBoolean("whole", check.IsWhole);
            if (check.Parcel is { } parcel)
            {
                json.WriteNumber("parcel", parcel);
            }

            json.WriteString("cleared", check.Cleared);
            json.WriteStartArray("links");
            foreach (var (name, sha256) in check.Links)
            {
                json.WriteStartObject();
                json.WriteString("name", name);
                json.WriteString("sha256", sha256);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("faults");
            foreach (var fault in check.Faults)
            {
                json.WriteStartObject();
                json.WriteString("where", fault.Where);
                if (fault.Byte is { } at)
                {
                    json.WriteNumber("byte", at);
                }

                json.WriteString("text", fault.Text);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return System.Text.Encoding.UTF8.GetString(bytes.ToArray());
    }
}
