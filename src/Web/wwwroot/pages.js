// A device that is turned away while a page is open loads it anew, and is told so there.
const lost = document.getElementById("away");
new MutationObserver(async () => {
    while (!lost.hidden) {
        const code = await fetch("/", { method: "HEAD", cache: "no-store" }).then(r => r.status).catch(() => 0);
        if (code === 403) { location.reload(); return; }
        await new Promise(r => setTimeout(r, 2000));
    }
}).observe(lost, { attributes: true, attributeFilter: ["hidden"] });

// A drawing is there at once; its picture takes its place when it is ready, one after the other.
let pictures = Promise.resolve();
document.addEventListener("load", e => {
    const img = e.target;
    const better = img.dataset?.better;
    if (!better || img.dataset.shown === better) return;
    pictures = pictures.then(() => new Promise(done => {
        if (!img.isConnected || img.dataset.better !== better) { done(); return; }
        const next = new Image();
        next.onload = () => {
            if (img.dataset.better === better) { img.dataset.shown = better; img.src = better; }
            done();
        };
        next.onerror = done;
        next.src = better;
    }));
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
