"use strict";

// A fold that is the target of a link opens, so that the link leads to something.
function openTarget() {
    const target = location.hash && document.getElementById(location.hash.slice(1));
    if (target && target.tagName === "DETAILS") {
        target.open = true;
        target.scrollIntoView();
    }
}

addEventListener("hashchange", openTarget);
openTarget();

for (const field of document.querySelectorAll("input[type=file]")) {
    for (const kind of ["dragenter", "dragover"]) {
        field.addEventListener(kind, () => field.classList.add("over"));
    }
    for (const kind of ["dragleave", "drop"]) {
        field.addEventListener(kind, () => field.classList.remove("over"));
    }
}
