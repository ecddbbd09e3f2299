// Makes a film of known geometry in a browser and hands it to the page's file field: each frame is
// drawn, kept as a WebP picture (whose one VP8 frame is what a WebM film holds), and written behind
// one another with exact times. The containers are those of RFC 9559 and of the WebP specification.
// The bar is straight until a frame and then sags by so many pixels a frame.
const [frames, rate, sagsFrom, pxPerFrame, done] = arguments;
const canvas = Object.assign(document.createElement("canvas"), { width: 640, height: 360 });
const context = canvas.getContext("2d", { alpha: false });

function drawn(frame) {
    const sag = Math.max(0, frame - sagsFrom) * pxPerFrame;
    context.fillStyle = "#e8e4da";
    context.fillRect(0, 0, 640, 360);
    context.fillStyle = "#333";
    context.fillRect(40, 60, 60, 200);
    // 100 mm of a ruler: from 100 to 600, 5 px to the millimetre.
    for (let mm = 0; mm <= 100; mm += 5) {
        context.fillRect(100 + 5 * mm - 1, 300, 2, mm % 10 ? 12 : 24);
    }
    context.strokeStyle = "#0b4a53";
    context.lineWidth = 12;
    context.beginPath();
    context.moveTo(100, 120);
    context.quadraticCurveTo(300, 120, 500, 120 + sag);
    context.stroke();
    context.fillRect(490, 120 + sag, 20, 30);
    context.font = "24px sans-serif";
    context.fillText(String(frame), 580, 40);
}

function vp8(url) {
    const bytes = Uint8Array.from(atob(url.split(",")[1]), (it) => it.charCodeAt(0));
    const view = new DataView(bytes.buffer);
    for (let at = 12; at < bytes.length;) {
        const name = String.fromCharCode(...bytes.slice(at, at + 4));
        const size = view.getUint32(at + 4, true);
        if (name === "VP8 ") {
            return bytes.slice(at + 8, at + 8 + size);
        }
        at += 8 + size + (size % 2);
    }
    throw new Error("the picture has no VP8 frame");
}

const join = (...parts) => {
    const all = parts.flatMap((part) => Array.from(part));
    return Uint8Array.from(all);
};
const hex = (text) => Uint8Array.from(text.match(/../g), (it) => parseInt(it, 16));
const number = (value, length) => Uint8Array.from({ length }, (_, at) => Math.floor(value / 256 ** (length - 1 - at)) % 256);
// Sizes are written with eight bytes, of which the first says that there are eight.
const element = (id, ...content) => {
    const body = join(...content);
    return join(hex(id), hex("01"), number(body.length, 7), body);
};
const text = (words) => Uint8Array.from(words, (it) => it.charCodeAt(0));
const float = (value) => new Uint8Array(new Float64Array([value]).buffer).reverse();

const blocks = [];
for (let frame = 0; frame < frames; frame++) {
    drawn(frame);
    const ms = Math.round(frame * 1000 / rate);
    blocks.push(element("1f43b675",
        element("e7", number(ms, 4)),
        element("a3", hex("81"), number(0, 2), hex("80"), vp8(canvas.toDataURL("image/webp", 0.9)))));
}
const film = join(
    element("1a45dfa3",
        element("4286", number(1, 1)), element("42f7", number(1, 1)), element("42f2", number(4, 1)),
        element("42f3", number(8, 1)), element("4282", text("webm")), element("4287", number(2, 1)), element("4285", number(2, 1))),
    element("18538067",
        element("1549a966",
            element("2ad7b1", number(1000000, 4)), element("4489", float(frames * 1000 / rate)),
            element("4d80", text("twinbar test")), element("5741", text("twinbar test"))),
        element("1654ae6b", element("ae",
            element("d7", number(1, 1)), element("73c5", number(1, 1)), element("83", number(1, 1)), element("86", text("V_VP8")),
            element("23e383", number(Math.round(1e9 / rate), 4)),
            element("e0", element("b0", number(640, 2)), element("ba", number(360, 2))))),
        ...blocks));
const files = new DataTransfer();
files.items.add(new File([film], "oven.webm", { type: "video/webm" }));
const field = document.getElementById("file");
field.files = files.files;
field.dispatchEvent(new Event("change", { bubbles: true }));
done(film.length);
