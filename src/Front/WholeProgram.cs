using System.Formats.Tar;
using System.Globalization;
using System.IO.Compression;
using System.Runtime.InteropServices;
using System.Text;
using Litterfall.App.Files;
using Litterfall.Domain.Faults;
using SkiaSharp;

namespace Litterfall.Front;

/// <summary>
/// The whole program, packed behind the program in front: bytes of a compressed archive, then one line that
/// says
/// how many there are and what names them. It is unpacked once for each user, where self-contained programs
/// unpack by custom, and started in this one's place.
/// </summary>
internal static partial class WholeProgram
{
    private const string Mark = "LITTERFALL-WHOLE";
    private const int LineBytes = 96;
    private const UnixFileMode Private =
        UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    /// <summary>Runs the whole program in place of this one.</summary>
    /// <returns>Only when it cannot be started.</returns>
    public static int Run(string[] args)
    {
        if (Folder() is not { } folder)
        {
            return Exit.Unusable(
                args.Contains("--json"),
                new TextFault("", 1, 1, "this command is not in this program", "the published program")
            );
        }

        var program = Path.Combine(folder, "litterfall");
        _ = Execute(program, [program, .. args, null]);
        return Exit.Unusable(
            args.Contains("--json"),
            new TextFault(
                program,
                1,
                1,
                $"it does not start: {Marshal.GetLastPInvokeErrorMessage()}",
                "a folder that programs may start from; DOTNET_BUNDLE_EXTRACT_BASE_DIR names another"
            )
        );
    }

    /// <summary>Libraries of C that drawing asks for are those of the whole program.</summary>
    public static void LendLibraries() =>
        NativeLibrary.SetDllImportResolver(typeof(SKPaint).Assembly, static (name, _, _) =>
            Folder() is { } folder
            && NativeLibrary.TryLoad(Path.Combine(folder, name + ".so"), out var library)
                ? library
                : IntPtr.Zero
        );

    /// <summary>Where the whole program lies, unpacked when it was not; null when none is packed.</summary>
    private static string? Folder()
    {
        using var self = File.OpenRead(Environment.ProcessPath!);
        if (self.Length < LineBytes || Line(self) is not [Mark, var length, var name])
        {
            return null;
        }

        var home = Path.Combine(
            Environment.GetEnvironmentVariable("DOTNET_BUNDLE_EXTRACT_BASE_DIR")
                ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".net"),
            "litterfall"
        );
        var folder = Path.Combine(home, name);
        if (!Directory.Exists(folder))
        {
            var bytes = long.Parse(length, CultureInfo.InvariantCulture);
            self.Position = self.Length - LineBytes - bytes;
            Unpack(self, home, folder);
        }

        return folder;
    }

    private static string[] Line(FileStream self)
    {
        self.Position = self.Length - LineBytes;
        Span<byte> line = stackalloc byte[LineBytes];
        self.ReadExactly(line);
        return Encoding.ASCII.GetString(line).Trim().Split(' ');
    }

    /// <summary>
    /// Unpacks aside and moves the folder to its place, so that it is there whole or not at all.
    /// </summary>
    private static void Unpack(FileStream packed, string home, string folder)
    {
        Directory.CreateDirectory(home, Private);
        var aside = Directory.CreateDirectory(
            Path.Combine(home, $"part-{Environment.ProcessId}-{Path.GetRandomFileName()}"),
            Private
        );
        try
        {
            using (var plain = new GZipStream(packed, CompressionMode.Decompress, leaveOpen: true))
            {
                TarFile.ExtractToDirectory(plain, aside.FullName, overwriteFiles: false);
            }

            try
            {
                Directory.Move(aside.FullName, folder);
            }
            catch (IOException) when (Directory.Exists(folder))
            {
                // Another start of the program was first.
            }
        }
        finally
        {
            if (Directory.Exists(aside.FullName))
            {
                Directory.Delete(aside.FullName, recursive: true);
            }
        }
    }

    [LibraryImport(
        "libc",
        EntryPoint = "execv",
        SetLastError = true,
        StringMarshalling = StringMarshalling.Utf8
    )]
    private static partial int Execute(string path, string?[] words);
}
