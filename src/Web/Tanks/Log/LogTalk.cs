using System.Text.Json;
using System.Text.Json.Serialization;

namespace Litterfall.Web.Tanks.Log;

/// <summary>What a phone and the bench send each other about logs.</summary>
internal static class LogTalk
{
    /// <summary>How both write it.</summary>
    public static readonly JsonSerializerOptions Form = new(JsonSerializerDefaults.Web)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower) },
    };
}

/// <summary>A line as a phone sends it.</summary>
/// <param name="Key">Made by the phone.</param>
/// <param name="At">When it was, UTC.</param>
/// <param name="Kind">What it was, by its word.</param>
/// <param name="Amount">Amount in the kind's own unit; null for none.</param>
/// <param name="Humidity">Relative humidity, %; null for none.</param>
/// <param name="Species">Key of a species.</param>
/// <param name="Other">Where from or to.</param>
/// <param name="Note">In words.</param>
/// <param name="TakesBack">Key of the line it takes back.</param>
/// <param name="Picture">A photo as base64; null for none.</param>
internal sealed record SentLine(
    string? Key,
    DateTimeOffset? At,
    string? Kind,
    double? Amount,
    double? Humidity,
    string? Species,
    string? Other,
    string? Note,
    string? TakesBack,
    string? Picture
);

/// <summary>A line that was not taken.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Why">Why not, in one sentence.</param>
internal sealed record RefusedLine(string Key, string Why);

/// <summary>What became of the lines that were sent.</summary>
/// <param name="Taken">Keys of lines that are kept now, or were before.</param>
/// <param name="Refused">The others.</param>
internal sealed record LogAnswer(IReadOnlyList<string> Taken, IReadOnlyList<RefusedLine> Refused);

/// <summary>What the log page of a phone needs to work alone.</summary>
/// <param name="Tanks">Tanks that run.</param>
/// <param name="Forms">What can be written.</param>
/// <param name="Species">Animals by name.</param>
internal sealed record LogSheet(
    IReadOnlyList<LogTank> Tanks,
    IReadOnlyList<LogForm> Forms,
    IReadOnlyList<LogName> Species
);

/// <summary>A tank for the log page.</summary>
/// <param name="Code">Its number.</param>
/// <param name="Label">Number of its printed label; null for none.</param>
/// <param name="Name">Its name.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Animals">What lives in it, in words.</param>
/// <param name="Species">Keys of what lives in it.</param>
/// <param name="Repeats">Amounts of each kind that were written last, the last first.</param>
/// <param name="Lines">Last lines, the last first.</param>
internal sealed record LogTank(
    string Code,
    string? Label,
    string Name,
    string Place,
    string Animals,
    IReadOnlyList<string> Species,
    IReadOnlyDictionary<string, IReadOnlyList<double>> Repeats,
    IReadOnlyList<LogLine> Lines
);

/// <summary>A line that is kept.</summary>
/// <param name="Key">Its key.</param>
/// <param name="At">When it was, UTC.</param>
/// <param name="Told">In words.</param>
/// <param name="Who">Who wrote it.</param>
internal sealed record LogLine(string Key, DateTime At, string Told, string Who);

/// <summary>Something with a name.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Name">Its name.</param>
internal sealed record LogName(string Key, string Name);

/// <summary>How a kind of line is written on a phone: amount = (said − shift) × factor.</summary>
/// <param name="Kind">Its word.</param>
/// <param name="Button">On its button.</param>
/// <param name="Past">In a sentence.</param>
/// <param name="Unit">Unit behind the amount; null for none.</param>
/// <param name="Factor">Kept amount for one of that unit.</param>
/// <param name="Shift">What stands at zero of the kept amount, in that unit.</param>
/// <param name="Places">Digits behind the point.</param>
/// <param name="Asks">True where it asks for an amount.</param>
/// <param name="MayBeEmpty">True where it may do without.</param>
/// <param name="IsOfAnimals">True where it names a species.</param>
/// <param name="Words">Label of its words; null for none.</param>
/// <param name="OtherParty">Label of its other party; null for none.</param>
internal sealed record LogForm(
    string Kind,
    string Button,
    string Past,
    string? Unit,
    double Factor,
    double Shift,
    int Places,
    bool Asks,
    bool MayBeEmpty,
    bool IsOfAnimals,
    string? Words,
    string? OtherParty
);
