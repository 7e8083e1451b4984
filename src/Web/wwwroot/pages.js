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
