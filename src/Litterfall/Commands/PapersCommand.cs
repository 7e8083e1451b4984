using System.CommandLine;
using System.Globalization;
using System.Reflection;
using Litterfall.App.Files;
using Litterfall.Documents.Json;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Text;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;
using Litterfall.Judging;
using Litterfall.Judging.Levers;

namespace Litterfall.App.Commands;

/// <summary><c>litterfall papers DESIGN --out DIR</c>.</summary>
internal static class PapersCommand
{
    public static Command Create()
    {
        var design = Arguments.Design();
        var output = new Option<string>("--out")
        {
            Description = "Folder for the papers; made if it is missing.",
            HelpName = "DIR",
            Required = true,
        };
        var (sheet, from) = (
            Sheet(),
            Arguments.From("Planting day the dates count from, as 2026-08-14; the design's own if left out.")
        );
        var comma = new Option<bool>("--decimal-comma")
        {
            Description = "Tables with semicolon and decimal comma.",
        };
        var slips = new Option<bool>("--slips")
        {
            Description = "Also a slip for each number: equation, source, place, provenance.",
        };
        var (json, workshop) = (Arguments.Json(), Arguments.Workshop());
        Arguments.RefuseOptionsAsValues(output, from);
        var command = new Command(
            "papers",
            "Build sheet, step cards, cut files, lists, calendar, care sheets."
        )
        {
            design,
            output,
            sheet,
            from,
            comma,
            slips,
            json,
            workshop,
        };
        command.SetAction(parsed =>
        {
            var wish = new PaperWish(
                parsed.GetValue(sheet) == "letter" ? PaperSize.Letter : PaperSize.A4,
                Arguments.Day(parsed.GetValue(from)),
                Version(),
                parsed.GetValue(comma)
            )
            {
                Slips = parsed.GetValue(slips),
            };
            var asked = (Design: parsed.GetValue(design)!, Workshop: parsed.GetValue(workshop));
            return Run(asked, parsed.GetValue(output)!, wish, parsed.GetValue(json));
        });
        return command;
    }

    private static Option<string> Sheet()
    {
        var sheet = new Option<string>("--sheet")
        {
            Description = "a4 or letter; a4 if left out.",
            HelpName = "SIZE",
            DefaultValueFactory = _ => "a4",
        };
        sheet.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: not ("a4" or "letter") and var size }])
            {
                result.AddError($"the papers do not fit the sheet '{size}'; expected a4 or letter");
            }
        });
        return sheet;
    }

    private static int Run((string Design, string? Workshop) asked, string folder, PaperWish wish, bool json)
    {
        var reading = Shop.Design(asked.Design, asked.Workshop);
        if (!reading.IsGood)
        {
            return Exit.Unusable(json, [.. reading.Faults]);
        }

        if (File.Exists(folder))
        {
            return Exit.Unusable(
                json,
                new TextFault(folder, 1, 1, "this is a file; nothing was written", "a folder for the papers")
            );
        }

        var result = DesignRun.Execute(reading.Value!);
        var job = new PaperJob(
            result,
            reading.Value!.Design.Start is null ? wish : wish with { From = wish.From ?? Today() },
            SettingsCard.Of(result.Numbers)
        );
        // Everything is made before the first file is touched.
        var papers = PaperList.Write(job).ToList();
        foreach (var paper in papers)
        {
            var path = Path.Combine(folder, paper.Name);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            Shop.WriteWhole(path, paper.Bytes);
        }

        var others = Others(folder, papers);
        if (json)
        {
            Console.Out.WriteLine(ReportJson.Write(Report(job, folder, papers, others)));
        }
        else
        {
            Console.Out.Write(PapersText.Write(job, folder, papers, others));
        }

        return result.Stops ? Exit.Stopped : Exit.Done;
    }

    /// <summary>Papers of a tank in service count from the day they are made.</summary>
    private static DateOnly Today() => DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date);

    /// <summary>
    /// Papers of earlier runs that this design no longer has; they are named, never deleted.
    /// </summary>
    private static List<string> Others(string folder, List<PaperFile> papers)
    {
        var ours = papers.Select(p => p.Name).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. Directory
                .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
                .Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/'))
                .Where(f => !ours.Contains(f))
                .Order(StringComparer.Ordinal)
                .Take(20),
        ];
    }

    private static ReportObject Report(
        PaperJob job,
        string folder,
        List<PaperFile> papers,
        List<string> others
    ) =>
        ReportObject.Of(
            ("tank", new ReportText(job.Tank)),
            ("folder", new ReportText(folder)),
            ("stops", new ReportFlag(job.Result.Stops)),
            ("papers", new ReportList([.. papers.Select(p => new ReportText(p.Name))])),
            ("others", new ReportList([.. others.Select(o => new ReportText(o))])),
            ("findings", job.Result.Report.Find("findings")!)
        );

    private static string Version() =>
        Assembly
            .GetExecutingAssembly()
            .GetCustomAttribute<AssemblyInformationalVersionAttribute>()
            ?.InformationalVersion
        ?? "";
}
