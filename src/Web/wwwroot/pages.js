// A device that is turned away while a page is open loads it anew, and is told so there.
const lost = document.getElementById("away");
new MutationObserver(async () => {
    while (!lost.hidden) {
        const code = await fetch("/", { method: "HEAD", cache: "no-store" }).then(r => r.status).catch(() => 0);
        if (code === 403) { location.reload(); return; }
        await new Promise(r => setTimeout(r, 2000));
    }
}).observe(lost, { attributes: true, attributeFilter: ["hidden"] });

// A picture that is not there gives way to a drawing.
document.addEventListener("error", e => {
    const other = e.target.dataset?.else;
    if (other) { delete e.target.dataset.else; e.target.src = other; }
}, true);

// A longer piece of work that is not a design yet stays in this browser: read without a text, kept with one.
window.litterfall.draft = (key, text) => {
    try {
        const name = `litterfall.draft ${key}`;
        if (text === undefined) return localStorage.getItem(name);
        if (text === null) localStorage.removeItem(name); else localStorage.setItem(name, text);
    } catch { /* A browser that keeps nothing: the page itself still shows it. */ }
    return null;
};
window.litterfall.toTop = () => { window.scrollTo(0, 0); document.querySelector("main h1")?.focus?.(); };
