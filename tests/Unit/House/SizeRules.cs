using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Litterfall.UnitTests.House;

/// <summary>A broken rule: its name, the place as written in exceptions.txt, and the measure.</summary>
internal sealed record Breach(string Rule, string Place, string What)
{
    public override string ToString() => $"{Rule} {Place} ({What})";
}

/// <summary>The sizes and names our code keeps to; each rule lists its breaches.</summary>
internal static partial class SizeRules
{
    public const int LongestFile = 500;
    public const int LongestPage = 250;
    public const int LongestLine = 110;
    public const int LongestMethod = 60;
    public const int MostParameters = 6;
    public const int MostFilesInFolder = 30;

    private static readonly string[] CodeFolders = ["src", "tests", "bench"];

    private static readonly HashSet<string> EmptyWords =
    [
        "Manager",
        "Helper",
        "Helpers",
        "Util",
        "Utils",
        "Service",
        "Services",
        "Processor",
        "Info",
        "Data",
        "Dto",
        "Base",
        "Common",
        "Impl",
    ];

    private static readonly Lazy<IReadOnlyList<(string Place, CompilationUnitSyntax Root)>> Parsed = new(() =>
        [
            .. SourceTree
                .Files(CodeFolders, ".cs")
                .AsParallel()
                .AsOrdered()
                .Select(file =>
                    (
                        SourceTree.Relative(file),
                        CSharpSyntaxTree.ParseText(File.ReadAllText(file)).GetCompilationUnitRoot()
                    )
                ),
        ]
    );

    private static readonly Lazy<IReadOnlyList<Breach>> Found = new(() =>
        [.. Files(), .. Lines(), .. Methods(), .. Parameters(), .. Folders(), .. Marks(), .. Names()]
    );

    /// <summary>Every breach, looked for once.</summary>
    public static IReadOnlyList<Breach> All => Found.Value;

    private static IEnumerable<Breach> Files() =>
        from file in SourceTree.Files(CodeFolders, ".cs", ".razor")
        let most = file.EndsWith(".cs", StringComparison.Ordinal) ? LongestFile : LongestPage
        let lines = File.ReadAllLines(file).Length
        where lines > most
        select new Breach("file", SourceTree.Relative(file), $"{lines} lines, at most {most}");

    private static IEnumerable<Breach> Lines() =>
        from file in SourceTree.Files(CodeFolders, ".cs")
        let long_ = File.ReadLines(file)
            .Select((line, i) => (Number: i + 1, Length: Characters(line)))
            .Where(line => line.Length > LongestLine)
            .ToList()
        where long_.Count > 0
        select new Breach(
            "line",
            SourceTree.Relative(file),
            $"{long_.Count} lines over {LongestLine} characters, the first at {long_[0].Number}"
        );

    private static IEnumerable<Breach> Methods() =>
        from file in Parsed.Value
        where !IsWrittenByTool(file.Place)
        from node in file.Root.DescendantNodes()
        where node is BaseMethodDeclarationSyntax or LocalFunctionStatementSyntax or AccessorDeclarationSyntax
        let lines = LinesOf(node)
        where lines > LongestMethod
        select new Breach(
            "method",
            $"{file.Place}:{NameOf(node)}",
            $"{lines} lines, at most {LongestMethod}"
        );

    /// <summary>
    /// Positional records are lists of named members, each documented and equal by value, so they are free.
    /// </summary>
    private static IEnumerable<Breach> Parameters() =>
        from file in Parsed.Value
        from list in file.Root.DescendantNodes().OfType<ParameterListSyntax>()
        where list.Parameters.Count > MostParameters
        where list.Parent is not (RecordDeclarationSyntax or ParenthesizedLambdaExpressionSyntax)
        select new Breach(
            "parameters",
            $"{file.Place}:{NameOf(list.Parent!)}",
            $"{list.Parameters.Count}, at most {MostParameters}"
        );

    private static IEnumerable<Breach> Folders() =>
        from folder in SourceTree.Files(CodeFolders, ".cs").GroupBy(f => Path.GetDirectoryName(f)!)
        where folder.Count() > MostFilesInFolder
        select new Breach(
            "folder",
            SourceTree.Relative(folder.Key),
            $"{folder.Count()} C# files, at most {MostFilesInFolder}"
        );

    private static IEnumerable<Breach> Marks() =>
        from file in SourceTree.Files(CodeFolders, ".cs", ".razor", ".css", ".js")
        from line in File.ReadLines(file).Select((text, i) => (Text: text, Number: i + 1))
        where LeftOver().IsMatch(line.Text)
        select new Breach("mark", SourceTree.Relative(file), $"line {line.Number}");

    private static IEnumerable<Breach> Names() =>
        from file in Parsed.Value
        where file.Place.StartsWith("src/", StringComparison.Ordinal)
        from type in file
            .Root.DescendantNodes(node => node is not BaseMethodDeclarationSyntax)
            .OfType<BaseTypeDeclarationSyntax>()
        from word in WordOf().Matches(type.Identifier.Text).Select(m => m.Value)
        where EmptyWords.Contains(word)
        select new Breach("name", $"{file.Place}:{type.Identifier.Text}", $"'{word}' says nothing");

    /// <summary>Migrations are written by the tool of EF Core and never edited.</summary>
    private static bool IsWrittenByTool(string place) =>
        place.StartsWith("src/Store/Migrations/", StringComparison.Ordinal);

    /// <summary>Characters as an editor counts columns: a pair of surrogates is one.</summary>
    private static int Characters(string line) => line.Count(c => !char.IsLowSurrogate(c));

    private static int LinesOf(SyntaxNode node)
    {
        var span = node.SyntaxTree.GetLineSpan(node.Span);
        return span.EndLinePosition.Line - span.StartLinePosition.Line + 1;
    }

    private static string NameOf(SyntaxNode node) =>
        node switch
        {
            MethodDeclarationSyntax method => method.Identifier.Text,
            ConstructorDeclarationSyntax constructor => constructor.Identifier.Text,
            LocalFunctionStatementSyntax local => local.Identifier.Text,
            OperatorDeclarationSyntax op => "operator " + op.OperatorToken.Text,
            BaseTypeDeclarationSyntax type => type.Identifier.Text,
            DelegateDeclarationSyntax type => type.Identifier.Text,
            AccessorDeclarationSyntax { Parent.Parent: PropertyDeclarationSyntax p } => p.Identifier.Text,
            _ => node.Kind().ToString(),
        };

    // Spelled in two halves so that this file keeps its own rule.
    [GeneratedRegex(@"\b(TO" + "DO|FIX" + "ME|HA" + @"CK)\b", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex LeftOver();

    [GeneratedRegex("[A-Z]+(?![a-z])|[A-Z][a-z0-9]*", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex WordOf();
}
