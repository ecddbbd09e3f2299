"use strict";

// Places are set here, on a picture that never leaves the browser; what they come to is reckoned by
// the program, which is sent the places and nothing of the picture. The film has its own script,
// which uses what this one hands out.
const Picture = (function () {
    const SVG = "http://www.w3.org/2000/svg";
    const SPOTS = { scale: 2, length: 2, height: 3, angle: 3, line: 2, tip: 1 };
    const TASKS = {
        scale: ["Tap one end of the known distance.", "Tap its other end."],
        length: ["Tap one end of the length.", "Tap its other end."],
        height: ["Tap one place of the line.", "Tap another place of the line, far from the first.", "Tap what stands over it."],
        angle: ["Tap a place on one arm.", "Tap where the arms meet.", "Tap a place on the other arm."],
        line: ["Tap one place of the line that stands still.", "Tap another place of it."],
        tip: ["Tap the tip."],
    };
    const NAMES = { length: "Length", height: "Height over a line", angle: "Angle" };
    const GLASS_TIMES = 4;
    const ASK_MS = 150;
    const STILL_PX = 640;
    const byId = (id) => document.getElementById(id);
    const root = byId("measure");
    const FIELDS = ["distance", "unit", "known", "tilt", "depth", "away"];
    const picture = { image: null, width: 0, height: 0, zoom: 1, whole: true, name: "", key: "" };
    const sheet = { file: "", scale: freshScale(), figures: [], film: null };
    const listeners = { opened: [], answered: [] };
    let before = null;
    let tool = null;
    let held = null;
    let asking;
    let answer = {};

    function identity() {
        const bytes = crypto.getRandomValues(new Uint8Array(16));
        bytes[6] = (bytes[6] & 0x0f) | 0x40;
        bytes[8] = (bytes[8] & 0x3f) | 0x80;
        const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
        return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
    }

    function letters() {
        return identity().slice(0, 8);
    }

    function freshScale() {
        return { id: letters(), looks: [] };
    }

    function make(name, fields, ...children) {
        const element = document.createElement(name);
        Object.entries(fields || {}).forEach(([key, value]) => {
            if (key in element) {
                element[key] = value;
            } else {
                element.setAttribute(key, value);
            }
        });
        element.append(...children);
        return element;
    }

    function say(words) {
        byId("task").textContent = words;
    }

    // The picture

    function opened(file, image, width, height) {
        if (picture.image && picture.image !== image) {
            picture.image.hidden = true;
        }
        if (sheet.scale.looks.length > 0) {
            before = { scale: { file: sheet.file, ...sheet.scale }, width: picture.width, height: picture.height };
        }
        Object.assign(picture, { image, width, height, name: file.name, key: keyOf(file) });
        // What was set on another picture says nothing of this one; what was set on this one does.
        Object.assign(sheet, { file: file.name, scale: freshScale(), figures: [] }, recalled());
        for (const name of FIELDS.filter((it) => it in sheet.scale)) {
            byId(name).value = sheet.scale[name];
        }
        tool = null;
        offerBefore();
        image.hidden = false;
        byId("places").setAttribute("viewBox", `0 0 ${width} ${height}`);
        root.querySelector(".sheet").hidden = false;
        byId("unread").hidden = true;
        whole();
        say("Set the scale, or measure an angle.");
        listeners.opened.forEach((hear) => hear(image));
        draw();
        ask();
    }

    // Places outlive a page that was closed: they are found again with the same file.

    const keyOf = (file) => ["twinbar-picture", root.dataset.rig, file.name, file.size, file.lastModified].join(" ");

    function recalled() {
        try {
            return JSON.parse(localStorage.getItem(picture.key)) || {};
        } catch (failure) {
            return {};
        }
    }

    function remember(words) {
        try {
            localStorage.setItem(picture.key, words);
        } catch (failure) {
            // A browser that keeps nothing loses places with its page, and nothing else.
        }
    }

    // A camera that stayed where it was has the scale of the picture before.
    function offerBefore() {
        const place = byId("scale-before");
        const fits = before && sheet.scale.looks.length === 0 && before.width === picture.width && before.height === picture.height;
        place.replaceChildren(...(fits ? [button(`Use the scale of ${before.scale.file} again`, () => {
            sheet.scale = JSON.parse(JSON.stringify(before.scale));
            place.replaceChildren();
            draw();
            ask();
        })] : []));
    }

    function unread(file) {
        const trouble = byId("unread");
        trouble.textContent = `This browser can't show ${file.name}: choose a photo as JPEG, PNG or WebP, or a film as MP4 or WebM.`;
        trouble.hidden = false;
    }

    function choose(file) {
        if (picture.url) {
            URL.revokeObjectURL(picture.url);
        }
        const url = URL.createObjectURL(file);
        picture.url = url;
        if (file.type.startsWith("video/")) {
            Film.open(file, url);
            return;
        }
        const still = byId("still");
        still.onload = () => {
            sheet.film = null;
            opened(file, still, still.naturalWidth, still.naturalHeight);
        };
        still.onerror = () => unread(file);
        still.src = url;
    }

    function size(zoom) {
        const pane = byId("pane");
        const middle = [
            (pane.scrollLeft + pane.clientWidth / 2) / (picture.width * picture.zoom),
            (pane.scrollTop + pane.clientHeight / 2) / (picture.height * picture.zoom),
        ];
        picture.whole = false;
        picture.zoom = Math.min(Math.max(zoom, 20 / picture.width), 16);
        const plate = byId("plate");
        plate.style.width = `${picture.width * picture.zoom}px`;
        plate.style.height = `${picture.height * picture.zoom}px`;
        pane.scrollLeft = middle[0] * picture.width * picture.zoom - pane.clientWidth / 2;
        pane.scrollTop = middle[1] * picture.height * picture.zoom - pane.clientHeight / 2;
        draw();
    }

    function whole() {
        const pane = byId("pane");
        const most = parseFloat(getComputedStyle(pane).maxHeight) || 600;
        size(Math.min((pane.clientWidth || 300) / picture.width, most / picture.height));
        picture.whole = true;
    }

    // Places: [x, y, step], in pixels of the picture

    const step = () => Math.max(1, 1 / picture.zoom);

    function clamp(value, most) {
        return Math.round(Math.min(Math.max(value, 0), most) * 100) / 100;
    }

    function at(event) {
        const box = byId("places").getBoundingClientRect();
        return [
            clamp((event.clientX - box.left) / box.width * picture.width, picture.width),
            clamp((event.clientY - box.top) / box.height * picture.height, picture.height),
            Math.round(step() * 1000) / 1000,
        ];
    }

    function begin(kind, target) {
        tool = { kind, target, look: [] };
        byId("places").classList.add("setting");
        root.querySelector(".doing").hidden = false;
        say(TASKS[kind][0]);
        draw();
    }

    function end(words) {
        tool = null;
        byId("places").classList.remove("setting");
        root.querySelector(".doing").hidden = true;
        say(words || "");
        draw();
    }

    // A place that is set is kept at once; it can be moved as long as it is there.
    function set(spot) {
        tool.look.push(spot);
        if (tool.look.length < SPOTS[tool.kind]) {
            say(TASKS[tool.kind][tool.look.length]);
            return;
        }
        const { kind, target, look } = tool;
        if (kind === "scale") {
            if (sheet.scale.file && sheet.scale.file !== sheet.file) {
                sheet.scale = freshScale();
            }
            sheet.scale.looks.push(look);
            byId("scale-before").replaceChildren();
        } else if (kind === "tip" || kind === "line") {
            Film.placed(kind, look);
        } else if (target === null) {
            sheet.figures.push(Film.framed({ figure: kind, looks: [look] }));
        } else {
            sheet.figures[target].looks.push(look);
        }
        if (kind === "tip") {
            tool.look = [];
        } else {
            end("Set. A place can be dragged, or moved by the arrow keys.");
        }
        ask();
    }

    // Drawing

    function shape(name, fields) {
        const element = document.createElementNS(SVG, name);
        Object.entries(fields).forEach(([key, value]) => element.setAttribute(key, value));
        return element;
    }

    function lines(kind, look) {
        if (look.length < 2 || kind === "tip") {
            return [];
        }
        const point = ([x, y]) => `${x},${y}`;
        if (kind === "height" && look.length === 3) {
            const [a, b, p] = look;
            const along = ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1]))
                / (((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2) || 1);
            const foot = [a[0] + along * (b[0] - a[0]), a[1] + along * (b[1] - a[1])];
            return [[a, b, foot, p].map(point).join(" ")];
        }
        return [look.map(point).join(" ")];
    }

    function drawLook(svg, kind, look, name) {
        for (const points of lines(kind, look)) {
            svg.append(shape("polyline", { class: "line", points }), shape("polyline", { class: "line ink", points }));
        }
        look.forEach((spot, number) => {
            const arm = 9 / picture.zoom;
            const gap = 2 / picture.zoom;
            const [x, y] = spot;
            const cross = `M${x - arm} ${y}H${x - gap}M${x + gap} ${y}H${x + arm}M${x} ${y - arm}V${y - gap}M${x} ${y + gap}V${y + arm}`;
            const g = shape("g", {
                class: "spot", tabindex: "0", role: "button",
                "aria-label": `${name}, place ${number + 1}, at ${Math.round(x)}, ${Math.round(y)}; arrow keys move it`,
            });
            g.append(shape("circle", { cx: x, cy: y, r: 16 / picture.zoom }), shape("path", { d: cross }), shape("path", { d: cross }));
            g.spot = spot;
            svg.append(g);
        });
    }

    function draw() {
        const svg = byId("places");
        const focused = document.activeElement && document.activeElement.spot;
        svg.replaceChildren();
        sheet.scale.looks.forEach((look, number) => drawLook(svg, "scale", look, `Scale, look ${number + 1}`));
        sheet.figures.forEach((figure) => {
            if (Film.isHere(figure)) {
                figure.looks.forEach((look, number) => drawLook(svg, figure.figure, look, `${NAMES[figure.figure]}, look ${number + 1}`));
            }
        });
        Film.looks().forEach(({ kind, look, name }) => drawLook(svg, kind, look, name));
        if (tool) {
            drawLook(svg, tool.kind, tool.look, "New");
        }
        if (focused) {
            const same = Array.from(svg.querySelectorAll(".spot")).find((g) => g.spot === focused);
            if (same) {
                same.focus({ preventScroll: true });
            }
        }
    }

    // The magnifier shows what lies under a thumb.
    function glass(spot) {
        const canvas = byId("glass");
        if (!spot) {
            canvas.hidden = true;
            return;
        }
        const context = canvas.getContext("2d");
        const times = Math.max(GLASS_TIMES * picture.zoom, 2);
        const span = canvas.width / times;
        context.fillStyle = "#888";
        context.fillRect(0, 0, canvas.width, canvas.height);
        context.imageSmoothingEnabled = false;
        context.drawImage(picture.image, spot[0] - span / 2, spot[1] - span / 2, span, span, 0, 0, canvas.width, canvas.height);
        const middle = canvas.width / 2;
        for (const [color, width] of [["#fff", 3], ["#0b4a53", 1]]) {
            context.strokeStyle = color;
            context.lineWidth = width;
            context.beginPath();
            context.moveTo(middle, 20);
            context.lineTo(middle, canvas.height - 20);
            context.moveTo(20, middle);
            context.lineTo(canvas.width - 20, middle);
            context.stroke();
        }
        const pane = byId("pane");
        const left = spot[0] * picture.zoom - pane.scrollLeft < pane.clientWidth / 2;
        canvas.classList.toggle("right", left);
        canvas.hidden = false;
    }

    function move(spot, to) {
        spot[0] = to[0];
        spot[1] = to[1];
        spot[2] = to[2];
        draw();
        glass(spot);
    }

    function press(event) {
        const g = event.target.closest(".spot");
        if (g) {
            held = g.spot;
        } else if (tool) {
            held = at(event);
            tool.look.push(held);
            tool.fresh = true;
        } else {
            return;
        }
        event.preventDefault();
        byId("places").setPointerCapture(event.pointerId);
        draw();
        glass(held);
    }

    function release() {
        if (!held) {
            return;
        }
        const spot = held;
        held = null;
        glass(null);
        if (tool && tool.fresh) {
            tool.fresh = false;
            tool.look.pop();
            set(spot);
            draw();
        } else {
            ask();
        }
    }

    function keys(event) {
        const spot = event.target.spot;
        const by = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
        if (!spot || !by) {
            return;
        }
        event.preventDefault();
        event.stopPropagation();
        const far = event.shiftKey ? 10 : 1;
        move(spot, [clamp(spot[0] + by[0] * far, picture.width), clamp(spot[1] + by[1] * far, picture.height), 1]);
        ask();
    }

    function middle() {
        const pane = byId("pane");
        const spot = [
            clamp((pane.scrollLeft + Math.min(pane.clientWidth, picture.width * picture.zoom) / 2) / picture.zoom, picture.width),
            clamp((pane.scrollTop + Math.min(pane.clientHeight, picture.height * picture.zoom) / 2) / picture.zoom, picture.height),
            1,
        ];
        set(spot);
        draw();
        const made = Array.from(byId("places").querySelectorAll(".spot")).find((g) => g.spot === spot);
        if (made) {
            made.focus();
        }
    }

    // Asking what it comes to

    function typed() {
        for (const name of FIELDS) {
            sheet.scale[name] = byId(name).value;
        }
        Film.typed(sheet);
        const words = JSON.stringify(sheet);
        remember(words);
        return words;
    }

    function ask() {
        clearTimeout(asking);
        asking = setTimeout(answered, ASK_MS);
    }

    async function post(path, fields) {
        const answer = await fetch(`${root.dataset.rig}/picture/${path}`, { method: "POST", body: new URLSearchParams(fields) });
        if ((answer.headers.get("Content-Type") || "").startsWith("application/json")) {
            return answer.json();
        }
        const page = new DOMParser().parseFromString(await answer.text(), "text/html");
        const trouble = page.querySelector(".trouble");
        return { state: "refused", sentence: trouble ? trouble.textContent : "It was refused." };
    }

    async function answered() {
        try {
            answer = await post("looks", { sheet: typed() });
        } catch (failure) {
            say("No connection: the places stay here, and are reckoned when it is back.");
            asking = setTimeout(answered, 4000);
            return;
        }
        if (answer.state === "refused") {
            say(answer.sentence);
            return;
        }
        told(byId("scale-found"), answer.scale);
        figures();
        listeners.answered.forEach((hear) => hear(answer));
    }

    function told(place, part) {
        const words = part ? part.trouble || part.text || "" : "";
        if (place.textContent !== words) {
            place.textContent = words;
        }
        place.classList.toggle("trouble", Boolean(part && part.trouble));
    }

    function button(words, press, more) {
        return make("button", { type: "button", className: "quiet", textContent: words, onclick: press, ...more });
    }

    function figures() {
        const list = byId("found");
        rows(list, sheet.figures, answer.figures || [], (figure, number) => ({
            name: NAMES[figure.figure] + (figure.frame === undefined ? "" : ` on frame ${figure.frame}`),
            buttons: [
                button("Look again", () => begin(figure.figure, number)),
                button("Take it away", () => { sheet.figures.splice(number, 1); draw(); ask(); }),
            ],
        }));
    }

    // A row keeps its element, so that what was answered in it stays while others change.
    function rows(list, items, answers, about) {
        const old = new Map(Array.from(list.children, (row) => [row.item, row]));
        const made = items.map((item, number) => {
            const part = answers[number] || {};
            const row = old.get(item) || make("li", {});
            const key = JSON.stringify([part, byId("columns").dataset.specimen, number]);
            row.item = item;
            if (row.key !== key) {
                row.key = key;
                const { name, buttons } = about(item, number, part);
                row.replaceChildren(
                    make("p", { className: "name", textContent: name }),
                    part.trouble
                        ? make("p", { className: "trouble", textContent: part.trouble })
                        : make("p", { className: "value", textContent: part.text || "" }),
                    make("p", { className: "more", textContent: [part.more, asksFor("time") && part.hint].filter(Boolean).join(" ") }),
                    ...(part.keep || []).map((offer) => keeping(offer, item)),
                    make("p", { className: "actions" }, ...buttons));
            }
            return row;
        });
        if (made.length !== list.children.length || made.some((row, at) => list.children[at] !== row)) {
            list.replaceChildren(...made);
        }
    }

    // Keeping

    const asked = (measures) => Array.from(byId("columns").children).filter((it) => it.dataset.measures === measures);
    const asksFor = (measures) => asked(measures).length > 0;

    function keeping(offer, item) {
        const form = make("form", {});
        const columns = asked(offer.measures);
        if (columns.length === 0) {
            form.append(make("p", { className: "more", textContent: `The test asks for no ${offer.measures}.` }));
            return form;
        }
        const select = make("select", { ariaLabel: `What ${offer.text} is`, required: true },
            make("option", { value: "", textContent: "Choose what it is" }));
        for (const column of columns) {
            select.append(make("option", { value: column.dataset.column, textContent: column.dataset.label }));
        }
        const wanted = columns.find((it) => item.what && Film.suits(item.what, it.dataset.column));
        if (wanted) {
            select.value = wanted.dataset.column;
        }
        const state = make("p", { className: "more", role: "status" });
        form.append(select, make("button", { textContent: `Keep ${offer.text}` }), state);
        form.addEventListener("submit", (event) => {
            event.preventDefault();
            const column = columns.find((it) => it.dataset.column === select.value);
            send("readings", { which: offer.which, column: select.value }, column.dataset, state);
        });
        return form;
    }

    // Sends until it is kept or answered; the same act each time, so that it is written once.
    async function send(path, fields, cell, state, more, act) {
        const id = act || identity();
        let got;
        state.textContent = "is sent";
        try {
            got = await post(path, { sheet: typed(), specimen: byId("columns").dataset.specimen, seen: cell.seen || "", act: id, ...fields, ...more });
        } catch (failure) {
            state.replaceChildren("No connection, so it is not kept yet. ", button("Send it again", () => send(path, fields, cell, state, more, id)));
            return;
        }
        const again = (further, words) => button(words, () => send(path, fields, cell, state, { ...more, ...further }));
        const offers = {
            saved: () => [button("Undo", () => undo(fields.column, cell, state))],
            doubted: () => [again({ confirmed: "yes" }, "Keep it")],
            why: () => [again({ why: "a slip while measuring" }, "It was a slip"), again({ why: "measured again" }, "It was measured again")],
            conflict: () => [button("Take mine", () => {
                cell.seen = got.entry;
                send(path, fields, cell, state, { ...more, why: "chosen of two values that were entered in two windows" });
            })],
        };
        if (got.state === "saved" && got.entry) {
            cell.seen = got.entry;
        }
        state.classList.toggle("trouble", got.state === "refused");
        state.replaceChildren(got.sentence + " ", ...(offers[got.state] || (() => []))());
    }

    async function undo(column, cell, state) {
        const fields = { specimen: byId("columns").dataset.specimen, column, seen: cell.seen, act: identity() };
        const done = await fetch(`${root.dataset.rig}/undo`, {
            method: "POST", body: new URLSearchParams(fields), headers: { "X-Twinbar-Part": "rig" },
        }).then((it) => it.ok, () => false);
        state.textContent = done ? "It was taken back." : "It could not be taken back: somebody entered something since, or there is no connection.";
        if (done) {
            await columns(fields.specimen);
        }
    }

    async function columns(specimen) {
        const answer = await fetch(`${root.dataset.rig}/picture/columns?specimen=${encodeURIComponent(specimen)}`);
        const page = new DOMParser().parseFromString(await answer.text(), "text/html");
        const fresh = page.getElementById("columns");
        if (fresh) {
            byId("columns").replaceWith(fresh);
        }
    }

    async function turn(specimen) {
        await columns(specimen);
        byId("code").textContent = specimen;
        byId("back").href = `${root.dataset.rig}?specimen=${encodeURIComponent(specimen)}`;
        document.title = `What does the picture of ${specimen} show? · Twinbar`;
        history.replaceState(null, "", `${root.dataset.rig}/picture?specimen=${encodeURIComponent(specimen)}`);
        ask();
    }

    // Small stills

    async function still() {
        const times = Math.min(1, STILL_PX / Math.max(picture.width, picture.height));
        const canvas = make("canvas", { width: Math.round(picture.width * times), height: Math.round(picture.height * times) });
        const context = canvas.getContext("2d");
        context.drawImage(picture.image, 0, 0, canvas.width, canvas.height);
        for (const line of byId("places").querySelectorAll("polyline")) {
            context.strokeStyle = line.classList.contains("ink") ? "#0b4a53" : "#fff";
            context.lineWidth = line.classList.contains("ink") ? 2 : 4;
            context.beginPath();
            line.getAttribute("points").split(" ").forEach((point) => {
                const [x, y] = point.split(",").map(Number);
                context.lineTo(x * times, y * times);
            });
            context.stroke();
        }
        const bytes = await new Promise((done) => canvas.toBlob(done, "image/jpeg", 0.85));
        const specimen = byId("columns").dataset.specimen;
        const form = new FormData();
        form.set("specimen", specimen);
        form.set("act", identity());
        form.set("words", Film.words(picture.name));
        form.set("photo", bytes, "still.jpg");
        const kept = await fetch(`${root.dataset.rig}/photos`, { method: "POST", body: form, headers: { "X-Twinbar-Part": "rig" } })
            .then((it) => it.ok, () => false);
        byId("still-found").textContent = kept
            ? `Kept beside ${specimen}: ${Film.words(picture.name)}.`
            : "It was not kept: there is no connection, or it was refused.";
    }

    function listen() {
        byId("file").addEventListener("change", (event) => {
            if (event.target.files.length > 0) {
                choose(event.target.files[0]);
            }
        });
        byId("specimen").addEventListener("change", (event) => turn(event.target.value));
        const svg = byId("places");
        svg.addEventListener("pointerdown", press);
        svg.addEventListener("pointermove", (event) => held && move(held, at(event)));
        svg.addEventListener("pointerup", release);
        svg.addEventListener("pointercancel", release);
        svg.addEventListener("keydown", keys);
        svg.addEventListener("focusin", (event) => event.target.spot && !held && glass(event.target.spot));
        svg.addEventListener("focusout", () => !held && glass(null));
        byId("middle").addEventListener("click", middle);
        byId("stop").addEventListener("click", () => end(""));
        byId("keep-still").addEventListener("click", still);
        root.addEventListener("click", (event) => {
            const pressed = event.target.closest("[data-tool], [data-size]");
            if (pressed && pressed.dataset.tool) {
                begin(pressed.dataset.tool, null);
            } else if (pressed) {
                const to = { larger: () => size(picture.zoom * 1.5), smaller: () => size(picture.zoom / 1.5), whole };
                to[pressed.dataset.size]();
            }
        });
        for (const name of FIELDS) {
            byId(name).addEventListener("input", ask);
        }
        addEventListener("resize", () => picture.image && picture.whole && whole());
    }

    if (root) {
        addEventListener("DOMContentLoaded", listen);
    }
    return { sheet, picture, listeners, byId, make, button, rows, told, draw, ask, send, opened, unread, say, begin, end };
})();
