using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Litterfall.Domain.Cultures;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Nursery;
using Litterfall.Domain.Schedule;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Trade;

namespace Litterfall.Store;

/// <summary>
/// Records of the workshop as JSON: money as text, so that no cent is lost; words instead of numbers.
/// </summary>
public static class TradeJson
{
    private static readonly JsonSerializerOptions Form = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        IgnoreReadOnlyProperties = true,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters =
        {
            new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower),
            new SeqConverter(),
            new MoneyConverter(),
        },
    };

    /// <summary>Word under which records of a type are kept.</summary>
    /// <typeparam name="T">The type.</typeparam>
    public static string KindOf<T>() =>
        typeof(T) switch
        {
            var t when t == typeof(ShopTerms) => "terms",
            var t when t == typeof(Customer) => "customer",
            var t when t == typeof(Supplier) => "supplier",
            var t when t == typeof(Offer) => "offer",
            var t when t == typeof(Good) => "good",
            var t when t == typeof(Order) => "order",
            var t when t == typeof(Purchase) => "purchase",
            var t when t == typeof(SoilBatch) => "batch",
            var t when t == typeof(ShopCalendar) => "calendar",
            var t when t == typeof(CuttingRules) => "cutting-rules",
            var t when t == typeof(CuttingJob) => "cutting-job",
            var t when t == typeof(LoosePanel) => "loose-panel",
            var t when t == typeof(Culture) => "culture",
            var t when t == typeof(CultureShelf) => "culture-shelf",
            var t when t == typeof(FedGroup) => "fed-group",
            var t when t == typeof(NurseryBench) => "nursery-bench",
            var t when t == typeof(PlantTray) => "plant-tray",
            var t when t == typeof(MotherPlant) => "mother-plant",
            var t when t == typeof(ShopPlan) => "plan",
            var t when t == typeof(Tank) => "tank",
            var t when t == typeof(TankRoom) => "tank-room",
            var t when t == typeof(FaultReport) => "fault-report",
            var t when t == typeof(LoggerStyle) => "logger-style",
            var t when t == typeof(LoggerSources) => "logger-sources",
            var t when t == typeof(Permit) => "permit",
            var t when t == typeof(VisitContract) => "service-contract",
            var t when t == typeof(TankVisit) => "service-visit",
            var t when t == typeof(DispatchRules) => "dispatch-rules",
            var t when t == typeof(Parcel) => "parcel",
            var t when t == typeof(PlaceForecast) => "forecast",
            var t when t == typeof(EvidenceEntry) => "evidence",
            var t when t == typeof(Claim) => "claim",
            var t when t == typeof(ParcelArrival) => "arrival",
            _ => throw new InvalidOperationException($"{typeof(T).Name} is no record of the workshop."),
        };

    /// <summary>Whether records of a kind are written once and never again: evidence.</summary>
    /// <param name="kind">Word of the kind.</param>
    internal static bool IsWrittenOnce(string kind) => kind == KindOf<EvidenceEntry>();

    /// <summary>As text.</summary>
    public static string Write<T>(T value) => JsonSerializer.Serialize(value, Form);

    /// <summary>From text that this program wrote.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static T Read<T>(string json)
    {
        try
        {
            return JsonSerializer.Deserialize<T>(json, Form)
                ?? throw new InvalidDataException($"An empty {typeof(T).Name} in the file of the bench.");
        }
        catch (JsonException fault)
        {
            throw new InvalidDataException($"A damaged {typeof(T).Name} in the file of the bench.", fault);
        }
    }

    private sealed class MoneyConverter : JsonConverter<decimal>
    {
        public override decimal Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.String
            && decimal.TryParse(
                reader.GetString(),
                NumberStyles.Number,
                CultureInfo.InvariantCulture,
                out var value
            )
                ? value
                : throw new JsonException("An amount of money is written as text.");

        public override void Write(Utf8JsonWriter writer, decimal value, JsonSerializerOptions options) =>
            writer.WriteStringValue(value.ToString(CultureInfo.InvariantCulture));
    }

    private sealed class SeqConverter : JsonConverterFactory
    {
        public override bool CanConvert(Type typeToConvert) =>
            typeToConvert.IsGenericType && typeToConvert.GetGenericTypeDefinition() == typeof(Seq<>);

        public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
            (JsonConverter)
                Activator.CreateInstance(
                    typeof(Items<>).MakeGenericType(typeToConvert.GetGenericArguments())
                )!;

        private sealed class Items<T> : JsonConverter<Seq<T>>
        {
            public override Seq<T> Read(
                ref Utf8JsonReader reader,
                Type type,
                JsonSerializerOptions options
            ) => [.. JsonSerializer.Deserialize<T[]>(ref reader, options) ?? []];

            public override void Write(Utf8JsonWriter writer, Seq<T> value, JsonSerializerOptions options) =>
                JsonSerializer.Serialize(writer, value.ToArray(), options);
        }
    }
}
