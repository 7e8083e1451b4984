using System.Collections.Immutable;
using System.CommandLine;
using Litterfall.App.Files;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Judging.Starting;

namespace Litterfall.App.Commands;

/// <summary><c>litterfall new</c>.</summary>
internal static class NewCommand
{
    public static Command Create()
    {
        var box = new Option<string?>("--box")
        {
            Description = "Outside size, length x depth x height: \"45 x 45 x 60 cm\".",
            HelpName = "SIZE",
        };
        var inside = new Option<string?>("--inside")
        {
            Description = "Inside size, instead of --box.",
            HelpName = "SIZE",
        };
        var glass = new Option<string?>("--glass")
        {
            Description = "Thickness of the glass, with --box: \"5 mm\".",
            HelpName = "MM",
        };
        var animal = new Option<string?>("--animal")
        {
            Description = "A key of `litterfall library animal`.",
            HelpName = "NAME",
        };
        var output = new Option<string>("--out")
        {
            Description = "The file to write; it must not exist yet.",
            HelpName = "FILE",
            Required = true,
        };
        var fitted = new Option<bool>("--fitted")
        {
            Description = "With vents, mist, plants and a lamp chosen, each computed on this box.",
        };
        Arguments.RefuseOptionsAsValues(box, inside, glass, animal, output);
        var json = Arguments.Json();
        var command = new Command("new", "A commented starter design.")
        {
            box,
            inside,
            glass,
            animal,
            fitted,
            output,
            json,
        };
        command.SetAction(parsed =>
            Run(
                new StarterWish(
                    parsed.GetValue(box),
                    parsed.GetValue(inside),
                    parsed.GetValue(glass),
                    parsed.GetValue(animal)
                ),
                parsed.GetValue(output)!,
                parsed.GetValue(fitted),
                parsed.GetValue(json)
            )
        );
        return command;
    }

    private static int Run(StarterWish wish, string path, bool fitted, bool json)
    {
        var catalog = Shop.Embedded();
        var starter = Starter.Write(wish, catalog, Path.GetFileName(path).Split('.')[0]);
        if (starter.Value is not { } text || !starter.IsGood)
        {
            return Exit.Unusable(json, [.. starter.Faults]);
        }

        if (File.Exists(path))
        {
            return Exit.Unusable(
                json,
                new TextFault(path, 1, 1, "the file exists already; nothing was changed", "a new file name")
            );
        }

        ImmutableArray<string> reasons = [];
        if (
            fitted
            && DesignReader.Read(path, text).Value is { } document
            && FirstBuild.Of(document, catalog, new Shown()) is { } build
        )
        {
            (text, reasons) = (build.Document.Text, build.Reasons);
        }

        Shop.WriteWhole(path, text);
        Tell(path, reasons, (json, fitted));
        return Exit.Done;
    }

    private static void Tell(string path, ImmutableArray<string> reasons, (bool Json, bool Fitted) how)
    {
        if (!how.Json)
        {
            foreach (var reason in reasons)
            {
                Console.Out.WriteLine(reason);
            }

            Console.Out.WriteLine($"Wrote {path}. Next: litterfall check {path}");
            return;
        }

        Console.Out.WriteLine(
            Litterfall.Documents.Json.ReportJson.Text(w =>
            {
                w.WriteStartObject();
                w.WriteString("wrote", path);
                if (how.Fitted)
                {
                    w.WriteStartArray("reasons");
                    foreach (var reason in reasons)
                    {
                        w.WriteStringValue(reason);
                    }

                    w.WriteEndArray();
                }

                w.WriteEndObject();
            })
        );
    }

    /// <summary>What is tried, on a terminal.</summary>
    private sealed class Shown : IProgress<string>
    {
        public void Report(string value)
        {
            if (!Console.IsErrorRedirected)
            {
                Console.Error.WriteLine($"{value} ...");
            }
        }
    }
}
