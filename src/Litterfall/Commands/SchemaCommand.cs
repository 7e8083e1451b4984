using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using Litterfall.App.Files;
using Litterfall.Domain.DesignFile;

namespace Litterfall.App.Commands;

/// <summary><c>litterfall schema design</c>.</summary>
internal static class SchemaCommand
{
    private static readonly JsonSerializerOptions Form = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static Command Create()
    {
        var what = new Argument<string>("WHAT") { Description = "design" };
        what.AcceptOnlyFromAmong("design");
        var (json, workshop) = (Arguments.Json(), Arguments.Workshop());
        var command = new Command("schema", "The JSON Schema of the design file, for editors.")
        {
            what,
            json,
            workshop,
        };
        command.SetAction(parsed =>
        {
            var catalog = Shop.Catalog(parsed.GetValue(workshop));
            if (!catalog.IsGood)
            {
                return Exit.Unusable(parsed.GetValue(json), [.. catalog.Faults]);
            }

            Console.Out.WriteLine(DesignSchema.Write(catalog.Value!).ToJsonString(Form));
            return Exit.Done;
        });
        return command;
    }
}
