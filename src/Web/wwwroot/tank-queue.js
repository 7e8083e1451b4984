// Lines of logs that wait on this device, and their way to the bench. The page and its worker share it; a
// line is sent until the bench says that it has it, and its key makes sure that it counts once.
"use strict";
self.tankQueue = (() => {
    const name = "litterfall-log";
    const mostAtOnce = 20;
    const mostKept = 60;
    // Own choice: a request stays below what the bench takes, photos and all.
    const mostBytes = 1_200_000;

    const wait = request => new Promise((good, bad) => {
        request.onsuccess = () => good(request.result);
        request.onerror = () => bad(request.error);
    });

    const open = () => {
        const request = indexedDB.open(name, 1);
        request.onupgradeneeded = () => {
            request.result.createObjectStore("lines", { keyPath: "key" });
            request.result.createObjectStore("sheets", { keyPath: "id" });
        };
        return wait(request);
    };

    const within = async (store, mode, act) => {
        const db = await open();
        try {
            const all = db.transaction(store, mode);
            const done = new Promise((good, bad) => {
                all.oncomplete = good;
                all.onerror = all.onabort = () => bad(all.error);
            });
            const result = await act(all.objectStore(store));
            await done;
            return result;
        } finally {
            db.close();
        }
    };

    const lines = () => within("lines", "readonly", store => wait(store.getAll()));
    const put = line => within("lines", "readwrite", store => wait(store.put(line)));
    const drop = key => within("lines", "readwrite", store => wait(store.delete(key)));
    const sheet = () => within("sheets", "readonly", store => wait(store.get("all"))).then(s => s?.sheet);
    const keepSheet = value =>
        within("sheets", "readwrite", store => wait(store.put({ id: "all", sheet: value })));

    // Random numbers are there without https too; names of the platform for them are not.
    const key = () => [...crypto.getRandomValues(new Uint8Array(16))]
        .map(b => b.toString(16).padStart(2, "0")).join("");

    const sent = line => ({
        key: line.key, at: line.at, kind: line.kind, amount: line.amount, humidity: line.humidity,
        species: line.species, other: line.other, note: line.note, takesBack: line.takesBack,
        picture: line.picture,
    });

    const weight = line => 400 + (line.note?.length ?? 0) * 3 + (line.picture?.length ?? 0);

    // As many waiting lines of one tank as go into a request, the oldest first.
    const batch = waiting => {
        const tank = waiting[0].tank;
        const some = [];
        let bytes = 0;
        for (const line of waiting.filter(l => l.tank === tank)) {
            bytes += weight(line);
            if (some.length === mostAtOnce || (some.length > 0 && bytes > mostBytes)) {
                break;
            }
            some.push(line);
        }
        return some;
    };

    const mark = async (some, answer) => {
        const taken = new Set(answer.taken);
        const refused = new Map(answer.refused.map(r => [r.key, r.why]));
        for (const line of some) {
            if (taken.has(line.key)) {
                await put({ ...line, picture: undefined, state: "sent", why: undefined });
            } else if (refused.has(line.key)) {
                await put({ ...line, state: "refused", why: refused.get(line.key) });
            }
        }
    };

    const prune = async () => {
        const old = (await lines()).filter(l => l.state === "sent").sort((a, b) => b.at.localeCompare(a.at));
        for (const line of old.slice(mostKept)) {
            await drop(line.key);
        }
    };

    let running = null;
    // Sends what waits; "sent", "away" where the bench does not answer, "closed" where it does not let us in.
    const send = () => running ??= sending().finally(() => { running = null; });

    const sending = async () => {
        for (;;) {
            const waiting = (await lines()).filter(l => l.state === "waiting")
                .sort((a, b) => a.at.localeCompare(b.at));
            if (waiting.length === 0) {
                await prune();
                return "sent";
            }
            const some = batch(waiting);
            let answer;
            try {
                answer = await fetch(`/tanks/${encodeURIComponent(some[0].tank)}/log`, {
                    method: "POST",
                    headers: { "Content-Type": "application/json" },
                    body: JSON.stringify(some.map(sent)),
                });
            } catch {
                return "away";
            }
            if (!answer.ok) {
                return answer.status === 403 ? "closed" : "away";
            }
            await mark(some, await answer.json());
        }
    };

    return { lines, put, drop, sheet, keepSheet, key, send };
})();
