// The log of a tank on a phone: two taps for what was done before, words and photos where they are wanted.
"use strict";
(() => {
    const $ = id => document.getElementById(id);
    const queue = self.tankQueue;
    const said = decodeURIComponent(location.pathname.split("/")[2] ?? "");
    const same = (a, b) => !!a && a.toLowerCase() === b.toLowerCase();
    const every = 20_000;
    const longestEdge = 1600;
    let sheet = null, tank = null, reach = "sent", lastTold = "";

    const make = (tag, with_, ...inside) => {
        const node = Object.assign(document.createElement(tag), with_);
        node.append(...inside.filter(i => i !== null && i !== undefined));
        return node;
    };

    // Something to write with before the bench was ever reached: words alone.
    const bare = {
        tanks: [], species: [],
        forms: [{ kind: "note", button: "Note", past: "note", words: "What to remember", factor: 1, shift: 0,
            places: 0, asks: false, mayBeEmpty: true, isOfAnimals: false }],
    };

    const who = () => {
        try {
            return localStorage.getItem("litterfall.who");
        } catch {
            return null;
        }
    };

    const fresh = async () => {
        try {
            const name = who();
            const answer = await fetch(`/tanks/log.json${name ? `?who=${encodeURIComponent(name)}` : ""}`);
            if (answer.ok) {
                sheet = await answer.json();
                await queue.keepSheet(sheet);
                return;
            }
        } catch { /* what was kept does */ }
        sheet ??= await queue.sheet() ?? bare;
    };

    const find = () => {
        tank = sheet.tanks.find(t => same(t.code, said)) ?? sheet.tanks.find(t => same(t.label, said)) ?? null;
    };

    const code = () => tank?.code ?? said;
    const form = kind => sheet.forms.find(f => f.kind === kind) ?? bare.forms[0];
    const number = (value, places) => (Math.round(value * 10 ** places) / 10 ** places).toString();
    const nameOf = key => sheet.species.find(s => s.key === key)?.name ?? key;

    const amountTold = (f, kept) => {
        const unit = f.unit ? (kept === 1 && f.unit === "drops" ? " drop" : ` ${f.unit}`) : "";
        return `${number(kept / f.factor + f.shift, f.places)}${unit}`;
    };

    const told = line => {
        if (line.takesBack) {
            return `taken back: ${line.said}`;
        }
        const f = form(line.kind);
        const parts = f.isOfAnimals
            ? [line.amount ?? 1, line.species ? nameOf(line.species) : "animals", f.past]
            : [f.past, line.amount === undefined ? null : amountTold(f, line.amount),
                line.humidity === undefined ? null : `${line.humidity} %`];
        const other = line.other ? ` (${line.other})` : "";
        const note = line.note ? `: ${line.note}` : line.picture && !f.words ? "" : "";
        return parts.filter(p => p !== null && p !== undefined).join(" ") + other + note;
    };

    const when = at => new Date(at).toLocaleString("en-US",
        { month: "short", day: "numeric", hour: "2-digit", minute: "2-digit", hour12: false });

    const head = () => {
        $("title").textContent = tank ? `${tank.code} ${tank.name}` : said;
        document.title = `${code()} log · Litterfall`;
        $("passport").href = `/tanks/${encodeURIComponent(code())}`;
        const about = $("about");
        about.replaceChildren();
        if (tank) {
            about.textContent = [tank.place, tank.animals || "no animals by its log"].join(" · ");
        } else if (sheet !== bare && reach !== "away") {
            about.append(`No tank ${said} is in service here. `,
                make("a", { href: `/tanks/new?code=${encodeURIComponent(said)}`, className: "button",
                    textContent: "Put it in service" }));
        }
    };

    const buttons = () => {
        $("kinds").replaceChildren(...sheet.forms.map(f =>
            make("button", { type: "button", textContent: f.button, onclick: () => ask(f) })));
    };

    const lines = async () => {
        const own = (await queue.lines()).filter(l => same(l.tank, code()));
        const gone = new Set(own.filter(l => l.takesBack && l.state !== "refused").map(l => l.takesBack));
        const keys = new Set(own.map(l => l.key));
        const theirs = (tank?.lines ?? []).filter(l => !keys.has(l.key)).map(l =>
            ({ key: l.key, at: l.at, text: l.told, by: l.who, state: "kept" }));
        const all = [...own.map(l => ({ ...l, text: told(l) })), ...theirs]
            .sort((a, b) => b.at.localeCompare(a.at)).slice(0, 14);
        $("lines").replaceChildren(...all.map(line => item(line, gone.has(line.key))));
        if (all.length === 0) {
            $("lines").append(make("li", { className: "quiet", textContent: "Nothing is written yet." }));
        }
        await state();
    };

    const item = (line, isGone) => {
        const where = { waiting: "waiting to send", sent: "sent", refused: "not taken" }[line.state];
        const li = make("li", { className: line.state },
            make("span", { className: isGone ? "gone" : "" , textContent: line.text }),
            make("span", { className: "quiet", textContent:
                [when(line.at), line.by, isGone ? "taken back" : null, where].filter(Boolean).join(", ") }));
        if (line.state === "refused") {
            li.append(make("span", { className: "fault", textContent: line.why }),
                make("button", { type: "button", textContent: "Try again", onclick: () => again(line) }),
                make("button", { type: "button", textContent: "Remove", onclick: () => remove(line) }));
        } else if (!isGone && !line.takesBack) {
            li.append(make("button", { type: "button", className: "plain", textContent: "Take back",
                ariaLabel: `Take back ${line.text}`, onclick: () => takeBack(line) }));
        }
        return li;
    };

    const state = async () => {
        const all = await queue.lines();
        const waiting = all.filter(l => l.state === "waiting").length;
        const many = waiting === 1 ? "1 line waits to be sent" : `${waiting} lines wait to be sent`;
        $("state").textContent =
            waiting === 0 ? (lastTold ? `${lastTold}. Sent.` : reach === "away" ? "No connection. You can write; it is kept on this phone." : "")
            : reach === "closed" ? `${many}. This phone is not paired with the bench any more; pair it again.`
            : `${lastTold ? `${lastTold}. ` : ""}${many}${reach === "away" ? "; there is no connection" : ""}.`;
        $("state").className = waiting > 0 || reach !== "sent" ? "told conflict" : lastTold ? "told" : "";
    };

    const write = async line => {
        const full = { key: queue.key(), tank: code(), at: new Date().toISOString(), state: "waiting", ...line };
        await queue.put(full);
        lastTold = `Written: ${told(full)}`;
        close();
        await lines();
        await deliver();
    };

    const takeBack = line => write({ kind: line.kind ?? "note", takesBack: line.key, said: line.text });
    const remove = async line => {
        await queue.drop(line.key);
        await lines();
    };
    const again = async line => {
        await queue.put({ ...(await queue.lines()).find(l => l.key === line.key), state: "waiting" });
        await deliver();
    };

    const deliver = async () => {
        const before = (await queue.lines()).some(l => l.state === "waiting");
        reach = await queue.send();
        if (reach === "away") {
            try {
                await (await navigator.serviceWorker?.ready)?.sync?.register("lines");
            } catch { /* sent when the page is open */ }
        } else if (before && reach === "sent") {
            await fresh();
            find();
            head();
        }
        await lines();
    };

    const close = () => { if ($("sheet").open) { $("sheet").close(); } };

    // What a kind asks for: amounts that were written before, then a pad of numbers, then words.
    const ask = f => {
        const box = $("sheet");
        const answer = {};
        const fields = make("form", { method: "dialog", onsubmit: event => {
            event.preventDefault();
            finish(f, answer, box);
        } });
        fields.append(make("h2", { id: "sheet-title", textContent: f.button }));
        const repeats = tank?.repeats?.[f.kind] ?? [];
        if (f.asks && !f.isOfAnimals && repeats.length > 0) {
            fields.append(make("div", { className: "repeats", role: "group", ariaLabel: "as before" },
                ...repeats.map(r => make("button", { type: "button", textContent: amountTold(f, r),
                    onclick: () => write({ kind: f.kind, amount: r }) }))));
        }
        if (f.isOfAnimals) {
            fields.append(species(answer));
        }
        if (f.asks) {
            fields.append(pad(f, answer));
        }
        if (f.kind === "air") {
            fields.append(field("Humidity, %", "humidity", answer, { inputMode: "decimal" }));
        }
        if (f.otherParty) {
            fields.append(field(f.otherParty, "other", answer, { maxLength: 200 }));
        }
        if (f.kind === "photo") {
            fields.append(picture(answer));
        }
        fields.append(field(f.words ?? "Note", "note", answer, { maxLength: 2000 }),
            field("When, if not now", "at", answer, { type: "datetime-local" }),
            make("p", { className: "fault", role: "alert" }),
            make("p", { className: "row" },
                make("button", { className: "main", textContent: "Write it" }),
                make("button", { type: "button", textContent: "Cancel", onclick: close })));
        box.replaceChildren(fields);
        box.showModal();
    };

    const field = (label, name, answer, with_) => {
        const id = `f-${name}`;
        return make("div", { className: "field" }, make("label", { htmlFor: id, textContent: label }),
            make("input", { id, autocomplete: "off", ...with_, oninput: e => { answer[name] = e.target.value; } }));
    };

    const species = answer => {
        const there = tank?.species ?? [];
        const others = sheet.species.filter(s => !there.includes(s.key));
        answer.species = there[0] ?? "";
        const select = make("select", { id: "f-species", onchange: e => { answer.species = e.target.value; } },
            ...there.map(key => make("option", { value: key, textContent: nameOf(key) })),
            make("option", { value: "", textContent: there.length ? "another, or unknown" : "choose" }),
            ...others.map(s => make("option", { value: s.key, textContent: s.name })));
        return make("div", { className: "field" },
            make("label", { htmlFor: "f-species", textContent: "Which" }), select);
    };

    const pad = (f, answer) => {
        const input = make("input", { id: "f-amount", inputMode: "none", autocomplete: "off",
            oninput: e => { answer.amount = e.target.value; } });
        const press = sign => {
            input.value = sign === "⌫" ? input.value.slice(0, -1) : input.value + sign;
            answer.amount = input.value;
        };
        const unit = f.isOfAnimals ? "How many" : `Amount${f.unit ? `, ${f.unit}` : ""}`;
        return make("div", { className: "pad" },
            make("div", { className: "field" }, make("label", { htmlFor: "f-amount", textContent: unit }), input),
            make("div", { className: "keys", role: "group", ariaLabel: "numbers" },
                ..."123456789.0⌫".split("").map(sign => make("button", { type: "button", textContent: sign,
                    ariaLabel: sign === "⌫" ? "delete last" : sign === "." ? "point" : sign,
                    onclick: () => press(sign) }))));
    };

    const picture = answer => make("div", { className: "field" },
        make("label", { htmlFor: "f-photo", textContent: "Photo" }),
        make("input", { id: "f-photo", type: "file", accept: "image/*", capture: "environment",
            onchange: e => { answer.file = e.target.files[0]; } }));

    const typed = text => {
        const plain = (text ?? "").trim().replace(",", ".");
        return plain === "" ? undefined : /^\d+(\.\d+)?$/.test(plain) ? Number(plain) : NaN;
    };

    const finish = async (f, answer, box) => {
        const fault = box.querySelector(".fault");
        const amount = typed(answer.amount), humidity = typed(answer.humidity);
        const needs = f.asks && !f.mayBeEmpty && !f.isOfAnimals && f.kind !== "air";
        if (Number.isNaN(amount) || Number.isNaN(humidity) || (amount === undefined && needs)) {
            fault.textContent = "Type a number, such as 1.2.";
            return;
        }
        if (f.kind === "air" && amount === undefined && humidity === undefined) {
            fault.textContent = "Type the temperature, the humidity, or both.";
            return;
        }
        if (f.isOfAnimals && amount !== undefined && (amount < 1 || !Number.isInteger(amount))) {
            fault.textContent = "Type how many animals, a whole number.";
            return;
        }
        if (f.kind === "photo" && !answer.file) {
            fault.textContent = "Take or choose a photo first.";
            return;
        }
        const at = answer.at ? new Date(answer.at) : new Date();
        if (Number.isNaN(at.getTime()) || at > new Date(Date.now() + 60_000)) {
            fault.textContent = "Choose a time that is past.";
            return;
        }
        const kept = amount === undefined ? (f.isOfAnimals ? 1 : undefined)
            : Math.round((amount - f.shift) * f.factor * 1e6) / 1e6;
        let shot;
        if (answer.file) {
            shot = await smaller(answer.file);
            if (!shot) {
                fault.textContent = "This picture does not read; take it again.";
                return;
            }
        }
        await write({ kind: f.kind, at: at.toISOString(), amount: kept, humidity,
            species: f.isOfAnimals ? answer.species || undefined : undefined,
            other: answer.other?.trim() || undefined, note: answer.note?.trim() || undefined, picture: shot });
    };

    // Drawn smaller before it waits here: without what the camera writes beside it, such as the place.
    const smaller = async file => {
        try {
            const bitmap = await createImageBitmap(file);
            const scale = Math.min(1, longestEdge / Math.max(bitmap.width, bitmap.height));
            const canvas = make("canvas", { width: Math.max(1, Math.round(bitmap.width * scale)),
                height: Math.max(1, Math.round(bitmap.height * scale)) });
            canvas.getContext("2d").drawImage(bitmap, 0, 0, canvas.width, canvas.height);
            for (const quality of [0.85, 0.7, 0.5, 0.3]) {
                const text = canvas.toDataURL("image/jpeg", quality).split(",")[1];
                if (text.length < 1_100_000) {
                    return text;
                }
            }
        } catch { /* it does not read */ }
        return null;
    };

    const serve = async () => {
        if (!("serviceWorker" in navigator)) {
            $("how").textContent = "Keep this page open where there is no network: over this kind of address "
                + "your phone cannot open it again by itself. What you write is kept on the phone and sent when "
                + "the page is open and the bench answers.";
            return;
        }
        try {
            await navigator.serviceWorker.register("/_content/Litterfall.Web/tank-worker.js", { scope: "/tanks/" });
            await navigator.serviceWorker.ready;
            $("how").textContent = "This page opens on this phone without a network too.";
        } catch {
            $("how").textContent = "What you write is kept on this phone and sent when the bench answers.";
        }
    };

    const begin = async () => {
        sheet = await queue.sheet() ?? null;
        if (sheet) {
            find();
            head();
            buttons();
            await lines();
        }
        await fresh();
        find();
        head();
        buttons();
        await deliver();
        head();
        document.body.dataset.ready = "yes";
        await serve();
    };

    addEventListener("online", deliver);
    document.addEventListener("visibilitychange", () => { if (!document.hidden) { deliver(); } });
    setInterval(async () => {
        if ((await queue.lines()).some(l => l.state === "waiting")) {
            await deliver();
        }
    }, every);
    begin();
})();
