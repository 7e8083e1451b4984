using System.Text.Json;

namespace Litterfall.Tests.Verification;

/// <summary>The list of published cases we are known to miss, each with its reason.</summary>
internal sealed record KnownShortfalls(IReadOnlyList<Shortfall> Shortfalls)
{
    private const string FileName = "known-shortfalls.json";

    public static KnownShortfalls Read()
    {
        using Stream stream = typeof(KnownShortfalls).Assembly.GetManifestResourceStream(FileName)
            ?? throw new InvalidOperationException(FileName + " is not embedded in the test assembly.");
        return JsonSerializer.Deserialize<KnownShortfalls>(stream, JsonSerializerOptions.Web)
            ?? throw new InvalidOperationException(FileName + " is empty.");
    }

    public bool Names(string source, string quantity) =>
        Shortfalls.Any(s =>
            string.Equals(s.Source, source, StringComparison.Ordinal)
            && string.Equals(s.Quantity, quantity, StringComparison.Ordinal)
        );
}

/// <summary>One known miss.</summary>
internal sealed record Shortfall(string Source, string Quantity, string Reason);
