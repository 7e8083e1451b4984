using System.Reflection;
using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Primitives;

namespace Litterfall.App.Files;

/// <summary>
/// Style sheet, scripts and fonts of the bench, from inside the program: it is one file, and needs none
/// beside it.
/// </summary>
public sealed class PageFiles : IFileProvider
{
    private const string Prefix = "page";
    private static readonly Assembly Program = Assembly.GetExecutingAssembly();
    private static readonly HashSet<string> Names = new(
        Program.GetManifestResourceNames(),
        StringComparer.Ordinal
    );

    /// <summary>A program does not change while it runs: its own age marks its files.</summary>
    private static readonly DateTimeOffset Made = new(
        File.GetLastWriteTimeUtc(Environment.ProcessPath ?? AppContext.BaseDirectory)
    );

    /// <inheritdoc/>
    public IFileInfo GetFileInfo(string subpath) =>
        Names.Contains(Prefix + subpath) ? new PageFile(Prefix + subpath) : new NotFoundFileInfo(subpath);

    /// <inheritdoc/>
    public IDirectoryContents GetDirectoryContents(string subpath) => NotFoundDirectoryContents.Singleton;

    /// <inheritdoc/>
    public IChangeToken Watch(string filter) => NullChangeToken.Singleton;

    private sealed class PageFile(string resource) : IFileInfo
    {
        public bool Exists => true;

        public long Length { get; } = Sized(resource);

        public string? PhysicalPath => null;

        public string Name => Path.GetFileName(resource);

        public DateTimeOffset LastModified => Made;

        public bool IsDirectory => false;

        public Stream CreateReadStream() => Program.GetManifestResourceStream(resource)!;

        private static long Sized(string name)
        {
            using var stream = Program.GetManifestResourceStream(name)!;
            return stream.Length;
        }
    }
}
