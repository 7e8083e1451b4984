// Temperature and humidity over any span: drawn here from readings that the bench reduces to the columns of the
// picture. Drag or arrow keys pan, pinch, wheel or plus and minus zoom, a pointer or the keys show the values.
const day = 86400;
const panels = ["temperature", "humidity"];
const titles = { temperature: "Air temperature", humidity: "Relative humidity" };
const marksSaid = [[1, "sensor stuck"], [2, "sensor wet"], [4, "out of range"], [8, "sensor drifts"], [16, "clock was set"]];
const left = 52, right = 12, top = 30, tall = 170, between = 30, foot = 26;

class ReadingChart extends HTMLElement {
    connectedCallback() {
        this.place = this.dataset.place;
        this.zone = this.dataset.zone || undefined;
        try { new Intl.DateTimeFormat("en-US", { timeZone: this.zone }); } catch { this.zone = undefined; }
        const parts = (this.dataset.band || "").split(";");
        this.band = { temperature: parts.slice(0, 2), humidity: parts.slice(2, 4), name: parts[4] || "" };
        this.pointers = new Map();
        this.build();
        this.resizing = new ResizeObserver(() => this.draw());
        this.resizing.observe(this.canvas);
        this.dark = matchMedia("(prefers-color-scheme: dark)");
        this.redraw = () => this.draw();
        this.dark.addEventListener("change", this.redraw);
        this.load();
    }

    disconnectedCallback() {
        this.resizing?.disconnect();
        this.dark?.removeEventListener("change", this.redraw);
        this.asked?.abort();
        clearTimeout(this.waiting);
    }

    build() {
        const shadow = this.shadowRoot ?? this.attachShadow({ mode: "open" });
        shadow.innerHTML = `<style>
            :host { display: block; color: var(--ink); }
            .bar { display: flex; flex-wrap: wrap; gap: 8px; margin-bottom: 8px; }
            button { font: inherit; min-height: 44px; min-width: 44px; padding: 6px 12px; border: 1px solid var(--rule); border-radius: 6px; background: var(--sheet); color: var(--ink); cursor: pointer; }
            button:hover { border-color: var(--action); }
            .view { position: relative; touch-action: pan-y; border-radius: 6px; cursor: crosshair; }
            canvas { display: block; width: 100%; height: ${top + 2 * tall + between + foot}px; }
            .view:focus-visible, button:focus-visible, summary:focus-visible, .table:focus-visible { outline: 3px solid var(--action); outline-offset: 2px; }
            output { display: block; min-height: 1.5em; font-variant-numeric: tabular-nums; }
            p { margin: 0 0 8px; color: var(--quiet); font-size: .9rem; }
            summary { min-height: 44px; display: flex; align-items: center; cursor: pointer; color: var(--action); text-decoration: underline; text-underline-offset: 3px; }
            .table { overflow: auto; max-height: 420px; }
            table { border-collapse: collapse; } th, td { text-align: left; padding: 4px 12px 4px 0; border-bottom: 1px solid var(--rule); }
        </style>
        <div class="bar" role="group" aria-label="Span">
            <button data-span="1">Day</button><button data-span="7">Week</button><button data-span="30">Month</button><button data-span="365">Year</button><button data-span="0">All</button>
            <button data-go="-1">Earlier</button><button data-go="1">Later</button><button data-zoom="0.5">Closer</button><button data-zoom="2">Wider</button>
        </div>
        <div class="view" tabindex="0" role="application" aria-roledescription="chart" aria-describedby="how"><canvas aria-hidden="true"></canvas></div>
        <output aria-live="polite"></output>
        <p id="how">Drag to move, pinch to zoom, or hold Ctrl and turn the wheel. Keys: arrows show values, Shift and arrows move, plus and minus zoom, 0 shows all. Gray: doubtful readings; they are kept and count for nothing.</p>
        <details><summary>as a table</summary><div class="table" tabindex="0" role="region" aria-label="Readings as a table"></div></details>`;
        this.view = shadow.querySelector(".view");
        this.canvas = shadow.querySelector("canvas");
        this.said = shadow.querySelector("output");
        this.table = shadow.querySelector(".table");
        this.view.setAttribute("aria-label", this.dataset.said || "Readings");
        shadow.querySelector(".bar").addEventListener("click", e => this.press(e.target.dataset));
        shadow.querySelector("details").addEventListener("toggle", () => this.tell());
        this.view.addEventListener("pointerdown", e => this.down(e));
        this.view.addEventListener("pointermove", e => this.move(e));
        for (const name of ["pointerup", "pointercancel"]) this.view.addEventListener(name, e => this.pointers.delete(e.pointerId));
        this.view.addEventListener("pointerleave", e => { if (!this.pointers.size && e.pointerType === "mouse") { this.at = null; this.draw(); } });
        this.view.addEventListener("wheel", e => this.wheel(e), { passive: false });
        this.view.addEventListener("keydown", e => this.key(e));
    }

    get width() { return Math.max(120, this.canvas.clientWidth); }
    get inner() { return this.width - left - right; }
    get span() { return this.to - this.from; }
    x(t) { return left + this.inner * (t - this.from) / this.span; }
    time(x) { return this.from + this.span * (x - left) / this.inner; }

    async load() {
        const columns = Math.min(6000, Math.round(this.inner * 3));
        const wide = this.from === undefined;
        const ask = wide ? "" : `from=${Math.floor(this.from - this.span)}&to=${Math.ceil(this.to + this.span)}&`;
        this.asked?.abort();
        this.asked = new AbortController();
        try {
            const answer = await fetch(`/tanks/${encodeURIComponent(this.place)}/readings.json?${ask}columns=${wide ? Math.round(this.inner) : columns}`, { signal: this.asked.signal });
            if (!answer.ok) throw new Error();
            const got = await answer.json();
            if (!got.channels.length) { this.said.textContent = "No readings are kept of this place yet."; this.draw(); return; }
            this.got = got;
            this.covered = wide ? [got.first, got.last] : [this.from - this.span, this.to + this.span];
            this.fine = this.span || got.last - got.first;
            if (wide) { this.from = got.first; this.to = Math.max(got.last, got.first + 600); this.fine = this.span; }
            this.draw();
            this.tell();
        } catch (e) {
            if (e.name !== "AbortError") this.said.textContent = "The readings cannot be shown now; try again.";
        }
    }

    // What is there is drawn at once; a finer or wider level is fetched when the hand rests.
    show(from, to) {
        if (!this.got) return;
        const all = Math.max(600, this.got.last - this.got.first);
        let span = Math.min(Math.max(to - from, 1800), all * 1.1);
        const middle = (from + to) / 2;
        from = Math.min(Math.max(middle - span / 2, this.got.first - span * .45), this.got.last + span * .45 - span);
        [this.from, this.to] = [from, from + span];
        this.draw();
        clearTimeout(this.waiting);
        const isInside = this.covered[0] <= this.from && this.covered[1] >= this.to;
        if (isInside && this.span > this.fine * .7 && this.span < this.fine * 1.5) { this.waiting = setTimeout(() => this.tell(), 150); return; }
        this.waiting = setTimeout(() => this.load(), 90);
    }

    zoom(factor, about) {
        about ??= (this.from + this.to) / 2;
        this.show(about - (about - this.from) * factor, about + (this.to - about) * factor);
    }

    press(d) {
        if (!this.got) return;
        if (d.span === "0") this.show(this.got.first, this.got.last);
        else if (d.span) { const end = Math.min(this.to, this.got.last); this.show(end - d.span * day, end); }
        else if (d.go) this.show(this.from + d.go * this.span * .8, this.to + d.go * this.span * .8);
        else if (d.zoom) this.zoom(+d.zoom);
    }

    down(e) {
        this.view.setPointerCapture(e.pointerId);
        this.pointers.set(e.pointerId, e.offsetX);
        this.pointTo(e.offsetX);
    }

    move(e) {
        if (!this.got) return;
        if (!this.pointers.has(e.pointerId)) { this.pointTo(e.offsetX); return; }
        const before = [...this.pointers.values()];
        this.pointers.set(e.pointerId, e.offsetX);
        const now = [...this.pointers.values()];
        if (now.length === 1) {
            const by = (before[0] - now[0]) / this.inner * this.span;
            this.show(this.from + by, this.to + by);
        } else {
            const [a, b] = [Math.abs(before[0] - before[1]) || 1, Math.abs(now[0] - now[1]) || 1];
            const about = this.time((now[0] + now[1]) / 2);
            const by = ((before[0] + before[1]) - (now[0] + now[1])) / 2 / this.inner * this.span;
            this.from += by; this.to += by;
            this.zoom(a / b, about);
        }
    }

    wheel(e) {
        if (!e.ctrlKey && !e.metaKey && this.shadowRoot.activeElement !== this.view) return;
        e.preventDefault();
        if (Math.abs(e.deltaX) > Math.abs(e.deltaY)) this.show(this.from + e.deltaX / this.inner * this.span, this.to + e.deltaX / this.inner * this.span);
        else this.zoom(Math.exp(e.deltaY * .0016), this.time(e.offsetX));
    }

    key(e) {
        if (!this.got) return;
        const by = this.span * .2;
        const sign = e.key === "ArrowLeft" ? -1 : e.key === "ArrowRight" ? 1 : 0;
        if (sign && e.shiftKey) this.show(this.from + sign * by, this.to + sign * by);
        else if (sign) this.step(sign);
        else if (e.key === "+" || e.key === "=") this.zoom(.5, this.at ?? undefined);
        else if (e.key === "-") this.zoom(2, this.at ?? undefined);
        else if (e.key === "0") this.show(this.got.first, this.got.last);
        else if (e.key === "Home") { this.at = this.got.first; this.show(this.got.first, this.got.first + this.span); this.tellAt(); }
        else if (e.key === "End") { this.at = this.got.last; this.show(this.got.last - this.span, this.got.last); this.tellAt(); }
        else return;
        e.preventDefault();
    }

    step(sign) {
        const t = this.got.channels[0].t;
        const now = this.at ?? (this.from + this.to) / 2;
        let i = nearest(t, now);
        i = Math.min(t.length - 1, Math.max(0, this.at == null ? i : i + sign));
        this.at = t[i];
        if (this.at < this.from || this.at > this.to) this.show(this.at - this.span / 2, this.at + this.span / 2);
        this.draw();
        this.tellAt();
    }

    pointTo(x) {
        if (!this.got || x < left || x > this.width - right) return;
        this.at = this.time(x);
        this.draw();
        this.tellAt();
    }

    when(t, form) { return new Intl.DateTimeFormat("en-US", { timeZone: this.zone, ...form }).format(new Date(t * 1000)); }

    tellAt() {
        const parts = [];
        let near = this.at;
        for (const c of this.got.channels) {
            const i = nearest(c.t, this.at);
            if (i < 0 || Math.abs(c.t[i] - this.at) > c.gap) continue;
            near = c.t[i];
            const value = c.low[i] === c.high[i] ? number(c.mean[i]) : `${number(c.low[i])} – ${number(c.high[i])}`;
            const doubt = marksSaid.filter(([bit]) => c.marks[i] & bit).map(m => m[1]).join(", ");
            parts.push(`${c.name} ${value} ${c.unit}${doubt ? ` (${doubt})` : ""}`);
        }
        const at = this.when(near, { month: "short", day: "numeric", year: "numeric", hour: "2-digit", minute: "2-digit", hourCycle: "h23" });
        this.said.textContent = parts.length ? `${at}: ${parts.join("; ")}` : `${at}: no readings`;
    }

    // At most one picture for each frame, however fast the hand is.
    draw() {
        if (this.framed) return;
        this.framed = requestAnimationFrame(() => { this.framed = 0; this.paint(); });
    }

    paint() {
        const wide = this.width, high = top + 2 * tall + between + foot, dense = devicePixelRatio || 1;
        if (this.canvas.width !== Math.round(wide * dense)) { this.canvas.width = Math.round(wide * dense); this.canvas.height = Math.round(high * dense); }
        const g = this.canvas.getContext("2d");
        g.setTransform(dense, 0, 0, dense, 0, 0);
        g.clearRect(0, 0, wide, high);
        const style = getComputedStyle(this);
        const ink = name => style.getPropertyValue(name).trim() || "#888";
        g.font = `14px ${style.fontFamily}`;
        if (!this.got || this.from === undefined) return;
        const ticks = this.ticks();
        panels.forEach((panel, k) => this.panel(g, panel, top + k * (tall + between), ink, ticks));
        g.fillStyle = ink("--quiet");
        g.textAlign = "center";
        let free = -99;
        for (const [t, label] of ticks) {
            const x = this.x(t), half = g.measureText(label).width / 2;
            if (x - half < Math.max(0, free) || x + half > wide) continue;
            g.fillText(label, x, high - 8);
            free = x + half + 12;
        }
        if (this.at != null && this.at >= this.from && this.at <= this.to) {
            g.strokeStyle = ink("--ink");
            g.lineWidth = 1;
            g.beginPath(); g.moveTo(this.x(this.at), top); g.lineTo(this.x(this.at), high - foot); g.stroke();
        }
    }

    panel(g, panel, y0, ink, ticks) {
        const channels = this.got.channels.filter(c => c.quantity === panel);
        const [low, high] = this.ends(channels, panel);
        const y = v => y0 + tall * (high - v) / (high - low);
        g.save();
        const [from, to] = this.band[panel].map(parseFloat);
        g.textAlign = "left";
        g.fillStyle = ink("--ink");
        g.fillText(`${titles[panel]}, ${panel === "temperature" ? "°C" : "%"}`, left, y0 - 8);
        if (from < to) {
            g.fillStyle = ink("--band");
            const a = y(Math.min(high, to)), b = y(Math.max(low, from));
            if (b > a) {
                g.fillRect(left, a, this.inner, b - a);
                g.fillStyle = ink("--quiet");
                g.textAlign = "right";
                const room = this.inner - 20 - g.measureText(`${titles[panel]}, °C`).width;
                const label = [this.band.name, "target"].find(l => g.measureText(l).width < room);
                if (label) g.fillText(label, this.width - right - 4, y0 - 8);
            }
        }
        g.strokeStyle = ink("--rule");
        g.lineWidth = .5;
        g.fillStyle = ink("--quiet");
        g.textAlign = "right";
        const rise = [1, 2, 5, 10, 20, 50, 100].find(s => (high - low) / s <= 5) ?? 200;
        for (let v = Math.ceil(low / rise) * rise; v <= high; v += rise) {
            g.beginPath(); g.moveTo(left, y(v)); g.lineTo(this.width - right, y(v)); g.stroke();
            g.fillText(String(v), left - 6, y(v) + 5);
        }
        for (const [t] of ticks) { g.beginPath(); g.moveTo(this.x(t), y0); g.lineTo(this.x(t), y0 + tall); g.stroke(); }
        g.beginPath(); g.rect(left, y0 - 1, this.inner, tall + 2); g.clip();
        channels.forEach((c, k) => this.line(g, c, y, [ink(panel === "temperature" ? "--stop" : "--water"), ink("--action"), ink("--caution")][k % 3], ink("--quiet")));
        g.restore();
    }

    // From least to most in each column, joined through the means; broken at gaps, gray where doubtful.
    line(g, c, y, color, gray) {
        const first = Math.max(0, nearest(c.t, this.from) - 1);
        let last = -1, mark = -1;
        g.lineWidth = 1.5;
        for (let i = first; i < c.t.length && c.t[i] <= this.to + this.span * .02; i++) {
            const isMarked = c.marks[i] > 0, x = this.x(c.t[i]);
            if (mark !== +isMarked) { if (mark >= 0) g.stroke(); g.beginPath(); g.strokeStyle = isMarked ? gray : color; g.setLineDash(isMarked ? [4, 3] : []); mark = +isMarked; last = -1; }
            if (last < 0 || c.t[i] - c.t[last] > c.gap) g.moveTo(x, y(c.low[i])); else g.lineTo(x, y(c.mean[i]));
            if (c.high[i] > c.low[i]) { g.moveTo(x, y(c.low[i])); g.lineTo(x, y(c.high[i])); g.moveTo(x, y(c.mean[i])); }
            else if (last < 0) g.lineTo(x + .5, y(c.mean[i]));
            last = i;
        }
        if (mark >= 0) g.stroke();
        g.setLineDash([]);
    }

    ends(channels, panel) {
        let low = Infinity, high = -Infinity;
        for (const c of channels) for (let i = 0; i < c.t.length; i++) {
            if (c.t[i] < this.from || c.t[i] > this.to || c.marks[i] & 4) continue;
            low = Math.min(low, c.low[i]); high = Math.max(high, c.high[i]);
        }
        if (low > high) [low, high] = panel === "temperature" ? [15, 30] : [40, 100];
        const [from, to] = this.band[panel].map(parseFloat);
        if (from < to) { low = Math.min(low, from); high = Math.max(high, to); }
        const room = Math.max(1, (high - low) * .06);
        return [Math.floor(low - room), Math.ceil(high + room)];
    }

    ticks() {
        const found = [];
        const many = Math.max(2, Math.floor(this.inner / 90));
        const step = [3600, 3 * 3600, 6 * 3600, 12 * 3600, day, 2 * day, 7 * day, 14 * day].find(s => this.span / s <= many);
        if (!step) {
            const months = Math.ceil(this.span / (30 * day) / many);
            const d = new Date(this.from * 1000);
            for (let m = new Date(Date.UTC(d.getUTCFullYear(), d.getUTCMonth(), 1)); m / 1000 <= this.to; m.setUTCMonth(m.getUTCMonth() + months)) {
                const t = this.midnight(m / 1000 + day / 2);
                if (t >= this.from) found.push([t, this.when(t + day / 2, { month: "short", year: "numeric" })]);
            }
            return found;
        }
        for (let t = this.midnight(this.from) - day; t <= this.to; t += day) {
            const start = this.midnight(t + day / 2);
            if (step >= day && Math.round(start / day) % (step / day)) continue;
            for (let s = start; s < start + day; s += Math.min(step, day)) {
                if (s >= this.from && s <= this.to) found.push([s, step < day && s !== start ? this.when(s, { hour: "2-digit", minute: "2-digit", hourCycle: "h23" }) : this.when(s + 60, { month: "short", day: "numeric" })]);
            }
        }
        return found;
    }

    // Midnight by the clock of the room, at or before a time.
    midnight(t) {
        const p = Object.fromEntries(new Intl.DateTimeFormat("en-US", { timeZone: this.zone, hour: "2-digit", minute: "2-digit", second: "2-digit", hourCycle: "h23" }).formatToParts(new Date(t * 1000)).map(q => [q.type, q.value]));
        return Math.floor(t) - (p.hour * 3600 + p.minute * 60 + +p.second);
    }

    tell() {
        if (!this.got || !this.shadowRoot.querySelector("details").open) return;
        const rows = [];
        const most = 60, step = Math.max(600, this.span / most);
        for (let t = this.from; t < this.to; t += step) {
            const cells = this.got.channels.map(c => {
                let low = Infinity, high = -Infinity, some = false;
                for (let i = 0; i < c.t.length; i++) {
                    if (c.t[i] < t || c.t[i] >= t + step) continue;
                    some = true;
                    if (!c.marks[i]) { low = Math.min(low, c.low[i]); high = Math.max(high, c.high[i]); }
                }
                return low > high ? (some ? "doubtful only" : "no reading") : low === high ? number(low) : `${number(low)} – ${number(high)}`;
            });
            rows.push([this.when(t, { month: "short", day: "numeric", hour: "2-digit", minute: "2-digit", hourCycle: "h23" }), ...cells]);
        }
        const table = document.createElement("table");
        const head = table.createTHead().insertRow();
        for (const name of ["From", ...this.got.channels.map(c => `${c.name} (${c.unit})`)]) {
            const th = document.createElement("th"); th.scope = "col"; th.textContent = name; head.append(th);
        }
        const body = table.createTBody();
        for (const row of rows) { const tr = body.insertRow(); for (const cell of row) tr.insertCell().textContent = cell; }
        this.table.replaceChildren(table);
    }
}

function nearest(t, at) {
    let a = 0, b = t.length - 1;
    while (b - a > 1) { const m = (a + b) >> 1; if (t[m] < at) a = m; else b = m; }
    return b < 0 ? -1 : Math.abs(t[a] - at) <= Math.abs(t[b] - at) ? a : b;
}

function number(v) { return (Math.round(v * 10) / 10).toFixed(1); }

if (!customElements.get("reading-chart")) customElements.define("reading-chart", ReadingChart);
