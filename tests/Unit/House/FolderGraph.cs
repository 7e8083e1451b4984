using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Litterfall.UnitTests.House;

/// <summary>One folder of a project that uses a type of another.</summary>
/// <param name="From">The folder that uses.</param>
/// <param name="To">The folder that is used.</param>
/// <param name="Where">A file and the type it uses.</param>
internal sealed record FolderEdge(string From, string To, string Where);

/// <summary>
/// Which folder of a project uses types of which other, read from the source: names in the place of a type
/// or left of a dot that are declared in another folder of the project.
/// </summary>
internal static partial class FolderGraph
{
    /// <summary>Uses between folders of a project.</summary>
    /// <param name="project">Its folder below src.</param>
    public static List<FolderEdge> Edges(string project)
    {
        var files = SourceTree
            .Files([$"src/{project}"], ".cs", ".razor")
            .Select(path => (Path: SourceTree.Relative(path), Text: File.ReadAllText(path)))
            .Where(f => !f.Path.EndsWith("_Imports.razor", StringComparison.Ordinal))
            .ToList();
        var homes = files
            .SelectMany(f => Declared(f.Path, f.Text).Select(name => (Name: name, Folder: Folder(f.Path))))
            .ToLookup(d => d.Name, d => d.Folder, StringComparer.Ordinal);
        return
        [
            .. from file in files
            from name in Used(file.Path, file.Text)
            let folders = homes[name].Distinct().ToList()
            where folders.Count == 1 && folders[0] != Folder(file.Path)
            select new FolderEdge(Folder(file.Path), folders[0], $"{file.Path} uses {name}"),
        ];
    }

    /// <summary>Folders that use each other, directly or around corners, with what ties them.</summary>
    /// <param name="edges">All uses.</param>
    public static List<string> Cycles(IReadOnlyCollection<FolderEdge> edges)
    {
        var uses = edges.ToLookup(e => e.From, e => e.To, StringComparer.Ordinal);
        HashSet<string> From(string start)
        {
            var seen = new HashSet<string>(StringComparer.Ordinal);
            var open = new Stack<string>(uses[start]);
            while (open.TryPop(out var folder))
            {
                if (seen.Add(folder))
                {
                    foreach (var next in uses[folder])
                    {
                        open.Push(next);
                    }
                }
            }

            return seen;
        }

        var reach = edges.Select(e => e.From).Distinct().ToDictionary(f => f, From, StringComparer.Ordinal);
        return
        [
            .. edges
                .Where(e => reach.TryGetValue(e.To, out var back) && back.Contains(e.From))
                .Select(e => $"{e.From} -> {e.To}: {e.Where}")
                .Distinct(),
        ];
    }

    private static string Folder(string path) => Path.GetDirectoryName(path)!.Replace('\\', '/');

    private static IEnumerable<string> Declared(string path, string text) =>
        path.EndsWith(".razor", StringComparison.Ordinal)
            ? [Path.GetFileNameWithoutExtension(path)]
            : CSharpSyntaxTree
                .ParseText(text)
                .GetRoot()
                .DescendantNodes(n => n is CompilationUnitSyntax or BaseNamespaceDeclarationSyntax)
                .OfType<BaseTypeDeclarationSyntax>()
                .Select(t => t.Identifier.Text);

    private static IEnumerable<string> Used(string path, string text)
    {
        if (path.EndsWith(".razor", StringComparison.Ordinal))
        {
            return Component().Matches(text).Select(m => m.Groups["name"].Value).Distinct();
        }

        var root = CSharpSyntaxTree.ParseText(text).GetRoot();
        var members = root.DescendantNodes()
            .Select(n =>
                n switch
                {
                    PropertyDeclarationSyntax property => property.Identifier.Text,
                    ParameterSyntax parameter => parameter.Identifier.Text,
                    _ => "",
                }
            )
            .ToHashSet(StringComparer.Ordinal);
        // A property that has the name of a type hides it, but for where only a type can stand.
        return root.DescendantNodes(n => n is not UsingDirectiveSyntax)
            .OfType<SimpleNameSyntax>()
            .Where(n =>
                IsType(n) && (!members.Contains(n.Identifier.Text) || SyntaxFacts.IsInTypeOnlyContext(n))
            )
            .Select(n => n.Identifier.Text)
            .Distinct();
    }

    /// <summary>Not a member behind a dot, the key of an argument or of an initializer.</summary>
    private static bool IsType(SimpleNameSyntax name) =>
        name.Parent switch
        {
            MemberAccessExpressionSyntax access => access.Expression == name,
            MemberBindingExpressionSyntax or NameColonSyntax or NameEqualsSyntax => false,
            AssignmentExpressionSyntax set when set.Left == name => false,
            QualifiedNameSyntax qualified => qualified.Right == name,
            _ => true,
        };

    /// <summary>A component's tag, or a name with a capital before a member or a bracket.</summary>
    [GeneratedRegex(
        @"<(?<name>[A-Z]\w+)|(?<![\w.>])(?<name>[A-Z]\w+)(?=\.[A-Z]|\()",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Component();
}
