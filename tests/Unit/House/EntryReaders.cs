using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;

namespace Litterfall.UnitTests.House;

/// <summary>Who reads the members of the entries, as the compiled code of the product says.</summary>
internal static class EntryReaders
{
    private static readonly string Home = typeof(AnimalEntry).Namespace!;

    /// <summary>The members of all kinds, each once, as "AnimalEntry.Mass".</summary>
    public static IEnumerable<string> Members() =>
        typeof(AnimalEntry)
            .Assembly.GetTypes()
            .Where(type => type.Namespace == Home && type.IsSubclassOf(typeof(CatalogEntry)))
            .SelectMany(type =>
                type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            )
            .Where(property => property.Name is not (nameof(CatalogEntry.Kind) or "EqualityContract"))
            .Select(property => $"{property.DeclaringType!.Name}.{property.Name}");

    /// <summary>The members some code of the product asks for.</summary>
    public static HashSet<string> Read() =>
        [
            .. Directory
                .EnumerateFiles(AppContext.BaseDirectory, "*.dll")
                .Where(file => IsOfTheProduct(Path.GetFileName(file)))
                .SelectMany(Asked),
        ];

    private static bool IsOfTheProduct(string file) =>
        file.StartsWith("litterfall", StringComparison.OrdinalIgnoreCase)
        && !file.Contains("Tests", StringComparison.Ordinal);

    private static IEnumerable<string> Asked(string file)
    {
        using var image = new PEReader(File.OpenRead(file));
        if (!image.HasMetadata)
        {
            return [];
        }

        var code = image.GetMetadataReader();
        return [.. Outside(code), .. Inside(image, code)];
    }

    /// <summary>Getters a project takes from the project of the entries.</summary>
    private static IEnumerable<string> Outside(MetadataReader code) =>
        from handle in code.MemberReferences
        let member = code.GetMemberReference(handle)
        where member.Parent.Kind == HandleKind.TypeReference
        let type = code.GetTypeReference((TypeReferenceHandle)member.Parent)
        where code.GetString(type.Namespace) == Home
        let name = code.GetString(member.Name)
        where name.StartsWith("get_", StringComparison.Ordinal)
        select $"{code.GetString(type.Name)}.{name[4..]}";

    /// <summary>Getters called within the project of the entries, not by the entries themselves.</summary>
    private static IEnumerable<string> Inside(PEReader image, MetadataReader code)
    {
        var getters = new Dictionary<int, string>();
        var bodies = new List<byte[]>();
        foreach (var handle in code.MethodDefinitions)
        {
            var method = code.GetMethodDefinition(handle);
            var type = code.GetTypeDefinition(method.GetDeclaringType());
            var name = code.GetString(method.Name);
            if (code.GetString(type.Namespace) != Home)
            {
                if (method.RelativeVirtualAddress != 0)
                {
                    bodies.Add(image.GetMethodBody(method.RelativeVirtualAddress).GetILBytes() ?? []);
                }
            }
            else if (name.StartsWith("get_", StringComparison.Ordinal))
            {
                getters[MetadataTokens.GetToken(handle)] = $"{code.GetString(type.Name)}.{name[4..]}";
            }
        }

        return getters.Count == 0
            ? []
            : bodies.SelectMany(body => Calls(body, getters)).Distinct(StringComparer.Ordinal);
    }

    /// <summary>A call is a byte (0x28, 0x6F) and the token of the method: ECMA-335 III.3.19, 4.2.</summary>
    private static IEnumerable<string> Calls(byte[] body, Dictionary<int, string> getters)
    {
        for (var i = 0; i + 5 <= body.Length; i++)
        {
            if (
                body[i] is 0x28 or 0x6F
                && getters.TryGetValue(BitConverter.ToInt32(body, i + 1), out var getter)
            )
            {
                yield return getter;
            }
        }
    }
}
