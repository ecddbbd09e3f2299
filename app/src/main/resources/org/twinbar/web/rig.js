"use strict";

// Everything that is entered is kept on the phone first, and sent from there one after the other:
// what waits outlives a lost connection and a closed page. Each entry has an identity of its own,
// so that the desk writes one that is sent twice once. Without this script, forms are sent plainly.
(function () {
    const PART = "X-Twinbar-Part";
    const AGAIN_MS = 4000;
    const OTHERS_SHOWN = 3;
    const ones = document.querySelector(".ones");
    let database;
    let sending = false;
    let cut = false;
    let shutOut = false;
    let again;

    // The store of waiting entries: {n, url, place, name, fields, tried, asked, trouble}.

    function open() {
        return new Promise((done, fail) => {
            const request = indexedDB.open("twinbar-rig", 1);
            request.onupgradeneeded = () =>
                request.result.createObjectStore("entries", { keyPath: "n", autoIncrement: true });
            request.onsuccess = () => done(request.result);
            request.onerror = () => fail(request.error);
        });
    }

    function entries(mode, work) {
        return new Promise((done, fail) => {
            const transaction = database.transaction("entries", mode);
            const request = work(transaction.objectStore("entries"));
            transaction.oncomplete = () => done(request.result);
            transaction.onerror = transaction.onabort = () => fail(transaction.error);
        });
    }

    const all = () => entries("readonly", (store) => store.getAll());
    const put = (entry) => entries("readwrite", (store) => store.put(entry));
    const drop = (n) => entries("readwrite", (store) => store.delete(n));

    // What reads and then writes does so alone, or a value typed while another is sent could be lost.
    let turn = Promise.resolve();
    function alone(work) {
        const result = turn.then(work);
        turn = result.catch(() => {});
        return result;
    }

    function identity() {
        // An address that is not secure has no crypto.randomUUID.
        const bytes = crypto.getRandomValues(new Uint8Array(16));
        bytes[6] = (bytes[6] & 0x0f) | 0x40;
        bytes[8] = (bytes[8] & 0x3f) | 0x80;
        const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
        return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
    }

    const field = (form) => form.elements.namedItem("text");
    const hidden = (form, name) => form.querySelector(`input[type=hidden][name=${name}]`);

    function placeOf(form) {
        const column = hidden(form, "column");
        return [form.getAttribute("action"), hidden(form, "specimen").value, column ? column.value : ""].join("\n");
    }

    function formAt(place) {
        return Array.from(document.querySelectorAll("form.queued")).find((form) => placeOf(form) === place);
    }

    function say(form, words) {
        const state = form && form.querySelector(".state");
        if (state) {
            state.textContent = words;
        }
    }

    // Keeping

    async function keep(form, button, held) {
        const data = new FormData(form);
        if (button && button.name) {
            data.set(button.name, button.value);
        }
        const act = identity();
        data.set("act", act);
        data.set("noted", new Date().toISOString());
        const entry = {
            url: (button && button.getAttribute("formaction")) || form.getAttribute("action"),
            place: placeOf(form),
            name: form.dataset.name,
            fields: Array.from(data),
            tried: false,
            asked: Boolean(held),
        };
        await alone(async () => {
            for (const other of (await all()).filter((it) => it.place === entry.place)) {
                if (other.asked) {
                    await drop(other.n);
                } else if (!other.tried && other.url === entry.url && hidden(form, "seen")) {
                    // It never left the phone: the new value takes its place in the line.
                    entry.n = other.n;
                    const seen = other.fields.find(([name]) => name === "seen");
                    entry.fields = entry.fields.map((pair) => (pair[0] === "seen" ? seen : pair));
                }
            }
            await put(entry);
        });
        if (held) {
            return;
        }
        if (hidden(form, "seen")) {
            hidden(form, "seen").value = "act:" + act;
            field(form).dataset.was = field(form).value;
        } else {
            form.reset();
        }
        form.querySelectorAll(".query").forEach((ask) => { ask.hidden = true; });
        say(form, "waits to be sent");
        await badge();
        send();
    }

    function number(text) {
        return /^[+\-−]?(\d+([.,]\d*)?|[.,]\d+)$/.test(text) ? Number(text.replace(",", ".").replace("−", "-")) : NaN;
    }

    function isUnusual(input) {
        const value = number(input.value.trim());
        const low = input.dataset.low;
        const high = input.dataset.high;
        return (low && value < Number(low)) || (high && value > Number(high));
    }

    async function commit(form) {
        const input = field(form);
        const doubt = form.querySelector("[data-doubt]");
        if (input.value.trim() === (input.dataset.was || "").trim()) {
            doubt.hidden = true;
            return;
        }
        const confirmed = hidden(form, "confirmed");
        if (!confirmed && isUnusual(input)) {
            const unit = form.querySelector(".unit");
            doubt.querySelector("p").textContent =
                `${input.value.trim()}${unit ? " " + unit.textContent : ""} is unusual here. Does it stay?`;
            doubt.hidden = false;
            say(form, "not kept yet");
            await keep(form, null, true);
            await badge();
            return;
        }
        doubt.hidden = true;
        await keep(form, null, false);
    }

    // Sending

    function body(entry) {
        const isFile = entry.fields.some(([, value]) => value instanceof Blob);
        const data = isFile ? new FormData() : new URLSearchParams();
        for (const [name, value] of entry.fields) {
            if (value instanceof Blob) {
                data.append(name, value, value.name || "photo.jpg");
            } else {
                data.append(name, value);
            }
        }
        return data;
    }

    async function send() {
        if (sending) {
            return;
        }
        sending = true;
        clearTimeout(again);
        try {
            let next = await take();
            while (next && await deliver(next)) {
                next = await take();
            }
        } finally {
            sending = false;
            await badge();
        }
        if (cut) {
            again = setTimeout(send, AGAIN_MS);
        }
    }

    const take = () => alone(async () => {
        const next = (await all()).find((entry) => !entry.asked);
        if (next) {
            next.tried = true;
            await put(next);
        }
        return next;
    });

    // Says whether to go on with the next one.
    async function deliver(entry) {
        let answer;
        let words;
        try {
            answer = await fetch(entry.url, { method: "POST", body: body(entry), headers: { [PART]: "rig" } });
            words = await answer.text();
        } catch (failure) {
            cut = true;
            return false;
        }
        cut = answer.status >= 500;
        shutOut = answer.status === 403;
        if (cut || shutOut) {
            return false;
        }
        const page = new DOMParser().parseFromString(words, "text/html");
        const ours = Boolean(answer.headers.get(PART));
        await alone(async () => {
            if (answer.ok && ours) {
                await drop(entry.n);
            } else {
                const trouble = page.querySelector(".trouble, .query.asked p");
                await put({ ...entry, asked: true, trouble: trouble ? trouble.textContent : "it was refused" });
                await forget(entry);
            }
        });
        if (ours) {
            const waits = (await all()).some((it) => it.place === entry.place && !it.asked);
            place(page, entry, waits);
        } else {
            say(formAt(entry.place), "not kept: " + (page.querySelector(".trouble") || page.body).textContent);
        }
        return true;
    }

    // An entry that was not kept is seen by nobody: what was typed after it saw what it saw.
    async function forget(entry) {
        const value = (name) => (entry.fields.find((pair) => pair[0] === name) || [])[1];
        const since = "act:" + value("act");
        for (const other of (await all()).filter((it) => it.place === entry.place && it.n !== entry.n)) {
            other.fields = other.fields.map(([name, text]) =>
                [name, name === "seen" && text === since ? value("seen") : text]);
            await put(other);
        }
        const form = formAt(entry.place);
        const seen = form && hidden(form, "seen");
        if (seen && seen.value === since) {
            seen.value = value("seen");
        }
    }

    // Puts the parts of an answer in their places, but not over what somebody is typing.
    function place(page, entry, waits) {
        const own = entry && formAt(entry.place);
        for (const part of Array.from(page.body.children)) {
            const old = part.id && document.getElementById(part.id);
            if (!old || (old === own && waits)) {
                continue;
            }
            const focused = document.activeElement;
            const inside = old.contains(focused) && focused.id;
            const changed = inside && "value" in focused && focused.dataset.was !== undefined
                && focused.value.trim() !== focused.dataset.was.trim();
            const busy = inside && !(own && old.contains(own)) && !old.classList.contains("field");
            if (changed || busy) {
                continue;
            }
            old.replaceWith(part);
            const same = inside && document.getElementById(inside);
            if (same) {
                same.focus();
            }
        }
        current();
    }

    async function badge() {
        const waiting = document.getElementById("waiting");
        const kept = await all();
        const asked = kept.filter((entry) => entry.asked);
        const count = kept.length - asked.length;
        const words = count === 0 ? "" : `${count} ${count === 1 ? "waits" : "wait"} to be sent`;
        const why = shutOut ? "Not let in, " : cut ? "No connection, " : "";
        waiting.textContent = words && why + words;
        waiting.classList.toggle("cut", Boolean(words && why));
        if (asked.length > 0) {
            const form = formAt(asked[0].place);
            const link = document.createElement("a");
            link.href = form ? "#" + form.id : asked[0].place.split("\n")[0].replace(/\/[^/]+$/, "");
            link.textContent = asked.length === 1 ? "1 needs an answer" : `${asked.length} need an answer`;
            link.title = asked.map((entry) => entry.name).join(", ");
            link.addEventListener("click", (event) => {
                if (form) {
                    event.preventDefault();
                    reveal(form);
                }
            });
            waiting.append(words ? " · " : "", link);
        }
    }

    // Going from one specimen to another

    const articles = () => Array.from(ones.querySelectorAll(".one"));
    const shown = () => articles().find((one) => !one.hidden);

    function current() {
        if (!ones) {
            return;
        }
        const id = shown().id.replace("one-", "line-");
        for (const line of document.querySelectorAll(".all li")) {
            const link = line.querySelector("a");
            if (line.id === id) {
                link.setAttribute("aria-current", "true");
            } else {
                link.removeAttribute("aria-current");
            }
        }
    }

    function show(one) {
        for (const other of articles()) {
            other.hidden = other !== one;
        }
        document.title = `What is read on ${one.dataset.code}? · Twinbar`;
        current();
        others(one);
        refresh(one);
    }

    // What others have is on the page already, and newer there than when it was loaded.
    function others(one) {
        const all = articles();
        const at = all.indexOf(one);
        const nearest = all.map((other, place) => ({ other, away: Math.abs(place - at) }))
            .filter((it) => it.away > 0)
            .sort((a, b) => a.away - b.away);
        for (const form of one.querySelectorAll(".field")) {
            const column = hidden(form, "column").value;
            const texts = nearest.map(({ other }) => Array.from(other.querySelectorAll(".field"))
                .find((it) => hidden(it, "column").value === column))
                .map((it) => field(it).value.trim())
                .filter((text) => text !== "")
                .slice(0, OTHERS_SHOWN);
            const line = form.querySelector(".others");
            line.textContent = texts.length ? "others: " + texts.join(" · ") : "";
            line.hidden = texts.length === 0;
        }
    }

    function refresh(one) {
        const url = `${ones.dataset.rig}/result?specimen=${encodeURIComponent(one.dataset.code)}`;
        fetch(url, { headers: { [PART]: "rig" } })
            .then((answer) => (answer.ok ? answer.text() : ""))
            .then((words) => place(new DOMParser().parseFromString(words, "text/html"), null, false))
            .catch(() => {});
    }

    function go(one) {
        history.pushState(null, "", `${ones.dataset.rig}?specimen=${encodeURIComponent(one.dataset.code)}`);
        show(one);
        scrollTo(0, 0);
        const blank = Array.from(one.querySelectorAll(".question:not(details) > .field [name=text]"))
            .find((input) => input.value === "");
        (blank || one.querySelector("h1")).focus({ preventScroll: true });
    }

    // A label says a code, or the address of its specimen; the study's own page tells of others.
    function find(words) {
        const label = /^https?:\/\/[^/\s]+(\/studies\/[0-9a-f-]{36})\/rig(?:\/[^?\s]*)?\?specimen=((?:[^%&\s]|%[0-9a-f]{2})+)$/i
            .exec(words.trim());
        if (label && !ones.dataset.rig.startsWith(label[1].toLowerCase())) {
            return undefined;
        }
        const key = (label ? decodeURIComponent(label[2]) : words.trim()).toLowerCase();
        return articles().find((one) => one.dataset.code.toLowerCase() === key)
            || articles().find((one) => one.id === "one-" + key);
    }

    function fromAddress() {
        const wanted = new URLSearchParams(location.search).get("specimen");
        return (wanted && find(wanted)) || document.getElementById("one-" + ones.dataset.shown);
    }

    function reveal(form) {
        const one = form.closest(".one");
        if (one.hidden) {
            go(one);
        }
        const folded = form.closest("details");
        if (folded) {
            folded.open = true;
        }
        form.scrollIntoView({ block: "center" });
        const input = field(form) || form.querySelector("input:not([type=hidden])");
        input.focus({ preventScroll: true });
    }

    function next(input) {
        const one = input.closest(".one");
        const inputs = Array.from(one.querySelectorAll(".field [name=text]"))
            .filter((it) => it.offsetParent !== null);
        const after = inputs[inputs.indexOf(input) + 1];
        const on = one.querySelector(".neighbours a:last-child");
        (after || on || input).focus();
    }

    // What the page hears

    function listen() {
        document.addEventListener("change", (event) => {
            const form = event.target.closest("form.queued");
            if (form && event.target.name === "text") {
                commit(form);
            } else if (form && event.target.type === "file" && event.target.files.length > 0) {
                keep(form, null, false);
            }
        });
        document.addEventListener("keydown", (event) => {
            if (event.key === "Enter" && event.target.matches(".field input[name=text]")) {
                event.preventDefault();
                commit(event.target.form);
                next(event.target);
            }
        });
        document.addEventListener("submit", (event) => {
            const form = event.target;
            if (form.matches(".queued")) {
                event.preventDefault();
                const plain = !event.submitter || !event.submitter.name;
                if (form.matches(".field") && plain && !form.querySelector(".query.asked")) {
                    commit(form);
                } else {
                    keep(form, event.submitter, false);
                }
            } else if (form.matches(".find")) {
                const one = find(form.elements.namedItem("specimen").value);
                if (one) {
                    event.preventDefault();
                    form.reset();
                    go(one);
                }
            }
        });
        document.addEventListener("click", (event) => {
            const link = event.target.closest("a");
            if (link && link.dataset.go) {
                event.preventDefault();
                go(document.getElementById("one-" + link.dataset.go));
            } else if (link && link.matches(".drop")) {
                event.preventDefault();
                leave(link.closest("form")).then(() => location.assign(link.href));
            }
        });
        addEventListener("popstate", () => show(fromAddress()));
        addEventListener("online", send);
        document.addEventListener("visibilitychange", () => {
            if (!document.hidden) {
                send();
            }
        });
    }

    function leave(form) {
        const wanted = placeOf(form);
        return alone(async () => {
            for (const entry of await all()) {
                if (entry.place === wanted && entry.asked) {
                    await drop(entry.n);
                }
            }
        });
    }

    // What waited when the page was closed is shown again, and what needed an answer is asked again.
    async function restore() {
        for (const entry of await all()) {
            if (entry.asked) {
                await put({ ...entry, asked: false });
            }
            const form = formAt(entry.place);
            const typed = entry.fields.find(([name]) => name === "text");
            if (form && typed && field(form)) {
                field(form).value = typed[1];
                field(form).dataset.was = typed[1];
                say(form, "waits to be sent");
            }
        }
    }

    async function keepPage() {
        if (!("serviceWorker" in navigator) || !window.caches) {
            return;
        }
        await navigator.serviceWorker.register("/rig-worker.js");
        const assets = Array.from(document.querySelectorAll("link[rel=stylesheet], script[src], link[rel=icon]"),
            (it) => it.href || it.src);
        const cache = await caches.open("twinbar-rig");
        await cache.addAll([location.href].concat(assets, ["/assets/regular.otf", "/assets/bold.otf"]));
    }

    async function begin() {
        database = await open();
        document.documentElement.classList.add("live");
        if (ones) {
            listen();
            await restore();
            if (shown() !== fromAddress()) {
                show(fromAddress());
            }
        }
        send();
        keepPage().catch(() => {});
    }

    begin();
})();
