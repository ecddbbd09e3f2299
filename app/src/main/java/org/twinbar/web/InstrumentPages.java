package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.twinbar.exchange.InputException;
import org.twinbar.instrument.Kind;
import org.twinbar.study.Act;
import org.twinbar.study.Instruments;
import org.twinbar.study.Workspace;
import org.twinbar.study.bench.CalibrationTable;
import org.twinbar.study.bench.InstrumentSheet;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.file.CalibrationSheet;
import org.twinbar.study.table.Upload;

/**
 * What readings are read on.
 *
 * <p>The list, "What are readings read on?": each instrument with how well it is known; decided
 * there: which to look at, or to add one. An instrument, "How well is it known?": first a sentence
 * on what it does wrong, then the line and what lies off it, then what should be done; decided
 * there: whether to trust it, to calibrate it anew, to note its zero.
 */
final class InstrumentPages {

    private final Instruments instruments;

    InstrumentPages(Workspace workspace) {
        this.instruments = workspace.instruments();
    }

    void routes(RoutesConfig routes) {
        routes.get("/instruments", request -> list(request, "", Form.EMPTY));
        routes.post("/instruments", this::add);
        routes.get("/instruments/{instrument}", request -> show(request, "", Form.EMPTY));
        routes.post("/instruments/{instrument}/calibrations", this::calibrate);
        routes.post("/instruments/{instrument}/withdrawals", this::withdraw);
        routes.post("/instruments/{instrument}/zeros", this::zero);
        routes.post("/instruments/{instrument}", this::describe);
    }

    private void list(Context request, String trouble, Form form) {
        Pages.show(
                request,
                "instruments",
                Map.of(
                        "instruments",
                        instruments.all().stream().map(InstrumentView::of).toList(),
                        "kinds",
                        kinds(),
                        "act",
                        UUID.randomUUID().toString(),
                        "trouble",
                        trouble,
                        "form",
                        form));
    }

    private static List<String> kinds() {
        return Arrays.stream(Kind.values())
                .filter(kind -> kind != Kind.NONE)
                .map(Kind::word)
                .toList();
    }

    private void show(Context request, String trouble, Form form) {
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("view", InstrumentView.of(find(request)));
        with.put("today", instruments.today().toString());
        with.put("act", UUID.randomUUID().toString());
        with.put("trouble", trouble);
        with.put("form", form);
        Pages.show(request, "instrument", with);
    }

    private void add(Context request) {
        Form form = Form.of(request);
        try {
            KeptInstrument added = instruments.add(by(form), sheet(form, form.text("name")));
            request.redirect("/instruments/" + added.id(), HttpStatus.SEE_OTHER);
        } catch (InputException e) {
            request.status(400);
            list(request, Words.sentence(e), form);
        }
    }

    private static InstrumentSheet sheet(Form form, String name) {
        return new InstrumentSheet(
                name,
                form.said("own_kind").orElse(form.text("kind")),
                form.text("unit"),
                form.text("resolution"),
                form.text("valid"),
                form.text("limit"),
                form.text("note"));
    }

    private void describe(Context request) {
        KeptInstrument before = find(request);
        act(
                request,
                form -> instruments.describe(
                        by(form),
                        before.id(),
                        sheet(form.with("kind", before.sheet().kind()), form.text("name")),
                        form.said("why").orElse("described anew")));
    }

    private void zero(Context request) {
        KeptInstrument before = find(request);
        act(
                request,
                form -> instruments.checkZero(
                        by(form),
                        before,
                        date(form),
                        form.said("zero")
                                .orElseThrow(() -> new InputException(
                                        "write down what the instrument showed at zero"))));
    }

    private void calibrate(Context request) {
        KeptInstrument before = find(request);
        act(
                request,
                form -> instruments.calibrate(
                        by(form),
                        before,
                        new CalibrationSheet(
                                date(form), form.text("against"), form.text("reference_u")),
                        table(request, form, before)));
    }

    private void withdraw(Context request) {
        KeptInstrument before = find(request);
        act(
                request,
                form -> instruments.withdraw(
                        by(form), before, uuid(form.text("calibration")), form.text("why")));
    }

    /** The page that holds a form gives its act, so that a form that is sent twice is done once. */
    private static Act by(Form form) {
        return form.said("act")
                .map(act -> new Act(uuid(act), Words.WHO))
                .orElseGet(() -> Act.by(Words.WHO));
    }

    private static UUID uuid(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException e) {
            throw new InputException("the form is not one of these pages");
        }
    }

    private interface Doing {
        void with(Form form);
    }

    /** Does what a form asks, and shows the instrument: anew, or with what was wrong. */
    private void act(Context request, Doing doing) {
        Form form = Form.of(request);
        try {
            doing.with(form);
            request.redirect("/instruments/" + find(request).id(), HttpStatus.SEE_OTHER);
        } catch (InputException e) {
            request.status(400);
            show(request, Words.sentence(e), form);
        }
    }

    private LocalDate date(Form form) {
        return form.said("date").map(CalibrationSheet::date).orElseGet(instruments::today);
    }

    private static Upload table(Context request, Form form, KeptInstrument instrument) {
        if (request.isMultipart()) {
            UploadedFile file = request.uploadedFile("table");
            if (file != null && !file.filename().isBlank()) {
                try (InputStream content = file.content()) {
                    return Upload.of(file.filename().replace('\\', '/'), content.readAllBytes());
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
        }
        return CalibrationTable.typed(
                form.said("pairs")
                        .orElseThrow(() -> new InputException(
                                "choose a table with the columns reference and reading, or type the"
                                        + " pairs")),
                instrument.unit());
    }

    private KeptInstrument find(Context request) {
        try {
            return instruments
                    .find(UUID.fromString(request.pathParam("instrument")))
                    .orElseThrow(InstrumentPages::unknown);
        } catch (IllegalArgumentException e) {
            throw unknown();
        }
    }

    private static Refusal unknown() {
        return Refusal.notFound("There is no such instrument in this workspace.");
    }
}
