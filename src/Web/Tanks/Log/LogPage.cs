namespace Litterfall.Web.Tanks.Log;

/// <summary>
/// The page itself. It is not drawn by a live connection: it must open in a cellar without a network.
/// </summary>
internal static class LogPage
{
    /// <summary>Its text; words and buttons come from its script.</summary>
    public const string Html = """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <title>Log · Litterfall</title>
        <link rel="icon" href="data:," />
        <link rel="stylesheet" href="/_content/Litterfall.Web/bench.css" />
        <link rel="stylesheet" href="/_content/Litterfall.Web/tank-log.css" />
        </head>
        <body class="tanklog">
        <a class="skip" href="#main">to the content</a>
        <header class="bar"><a class="brand" href="/">Litterfall</a>
        <nav aria-label="bench"><a href="/tanks">Tanks</a>
        <a id="passport" href="/tanks">Passport</a></nav></header>
        <main id="main" tabindex="-1">
        <h1 id="title">Log</h1>
        <p id="about" class="quiet"></p>
        <p id="state" role="status"></p>
        <div id="kinds" role="group" aria-label="what you did"></div>
        <section aria-labelledby="lines-title"><h2 id="lines-title">Last lines</h2>
        <ul id="lines"></ul></section>
        <p id="how" class="quiet"></p>
        </main>
        <dialog id="sheet" aria-labelledby="sheet-title"></dialog>
        <noscript><p>This page keeps lines on the phone and needs scripts; please allow them.</p></noscript>
        <script src="/_content/Litterfall.Web/tank-queue.js"></script>
        <script src="/_content/Litterfall.Web/tank-log.js"></script>
        </body>
        </html>
        """;
}
