package org.twinbar.study;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.twinbar.exchange.InputException;
import org.twinbar.instrument.Calibration;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.store.Entry;
import org.twinbar.store.Store;
import org.twinbar.store.StoreException;
import org.twinbar.study.bench.CalibrationTable;
import org.twinbar.study.bench.InstrumentSheet;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.bench.Shelf;
import org.twinbar.study.file.CalibrationSheet;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.table.TableFile;
import org.twinbar.study.table.Upload;

/**
 * The instruments of a workspace: each a subject of its own, described once, calibrated and looked
 * at again and again. Tables of calibrations are kept as they came; lines are fitted each time.
 */
public final class Instruments implements Shelf {

    /** What entries on an instrument may say. */
    static final List<Aspect> ASPECTS = List.of(
            Aspect.INSTRUMENT,
            Aspect.CALIBRATION,
            Aspect.ZERO_CHECK,
            Aspect.REFERENCE,
            Aspect.REFERENCE_VALUE);

    private final Store store;
    private final Clock clock;
    private final KeptShelf shelf;
    private final Remembered<String, Long, List<Entry>> described =
            new Remembered<>(Remembered.shareOfMemory(64), it -> 1_000L * it.size());
    private final Remembered<String, Long, KeptInstrument> kept =
            new Remembered<>(Remembered.shareOfMemory(64), it -> 20_000);

    Instruments(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
        this.shelf = new KeptShelf(Ledger.of(store));
    }

    /** Returns today's date, as the workspace's clock has it. */
    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** Returns the place of the last entry on any instrument: so long, all stays the same. */
    public long stamp() {
        return ASPECTS.stream()
                .mapToLong(aspect -> store.lastOf(aspect.word()))
                .max()
                .orElse(0);
    }

    /** Returns all instruments, by name. */
    public List<KeptInstrument> all() {
        return described().map(this::kept).toList();
    }

    private Stream<Entry> described() {
        return described.get("all", stamp(), () -> shelf.described().toList()).stream();
    }

    private KeptInstrument kept(Entry entry) {
        String id = entry.subject();
        return kept.get(id, store.lastAbout(id), () -> shelf.kept(entry));
    }

    @Override
    public List<String> names() {
        return described().map(it -> KeptShelf.sheet(it).name()).toList();
    }

    @Override
    public Optional<KeptInstrument> find(String name) {
        return described()
                .filter(it -> KeptShelf.sheet(it).name().equalsIgnoreCase(name.strip()))
                .findFirst()
                .map(this::kept);
    }

    /** @throws InputException where no instrument has this identity */
    public Optional<KeptInstrument> find(UUID id) {
        return described()
                .filter(it -> it.subject().equals(id.toString()))
                .findFirst()
                .map(this::kept);
    }

    /** @throws InputException where no instrument has this name */
    public KeptInstrument get(String name) {
        return find(name).orElseThrow(() -> unknown(name, store.folder().toString()));
    }

    /**
     * Adds an instrument.
     *
     * @throws InputException where its name is taken, or the sheet can't be understood
     */
    public KeptInstrument add(Act act, InstrumentSheet sheet) {
        UUID id = act.entry("instrument");
        Optional<Entry> taken = shelf.entry(sheet.checked().name());
        if (taken.filter(it -> !it.subject().equals(id.toString())).isPresent()) {
            throw new InputException("there is an instrument '%s' in %s already"
                    .formatted(sheet.name(), store.folder()));
        }
        if (taken.isEmpty()) {
            write(act, id, Aspect.INSTRUMENT, sheet.json(), Optional.empty(), Optional.empty());
        }
        return get(sheet.name());
    }

    /**
     * Describes an instrument anew; what it was called and could do before stays readable.
     *
     * @throws InputException where the sheet can't be understood, its name is another's, or it
     *     measures something else
     */
    public KeptInstrument describe(Act act, UUID id, InstrumentSheet sheet, String why) {
        Entry before = shelf.described(id)
                .orElseThrow(() -> new InputException("there is no such instrument"));
        sheet.checked();
        if (shelf.entry(sheet.name())
                .filter(it -> !it.subject().equals(id.toString()))
                .isPresent()) {
            throw new InputException("there is an instrument '%s' in %s already"
                    .formatted(sheet.name(), store.folder()));
        }
        if (!sheet.inUnit().equals(KeptShelf.sheet(before).inUnit())) {
            throw new InputException("'%s' reads in %s; one that reads in %s is another instrument"
                    .formatted(
                            KeptShelf.sheet(before).name(),
                            KeptShelf.sheet(before).inUnit().named(),
                            sheet.inUnit().named()));
        }
        if (!act.wrote(before.id())) {
            write(
                    act,
                    id,
                    Aspect.INSTRUMENT,
                    sheet.json(),
                    Optional.of(why),
                    Optional.of(before.id()));
        }
        return get(sheet.name());
    }

    /**
     * Keeps a calibration.
     *
     * @param table with columns {@code reference} and {@code reading}
     * @throws InputException where the table can't be read or makes no line
     */
    public KeptInstrument calibrate(
            Act act, KeptInstrument instrument, CalibrationSheet sheet, Upload table) {
        line(instrument.sheet(), sheet, table);
        byte[] bytes = table.bytes();
        KeptFile file = table.described();
        store.files().keep(bytes);
        ObjectNode value = sheet.json();
        value.putObject("table")
                .put("name", file.name())
                .put("sha256", file.sha256())
                .put("bytes", file.bytes());
        write(act, instrument.id(), Aspect.CALIBRATION, value, Optional.empty(), Optional.empty());
        return get(instrument.name());
    }

    /**
     * Lets a calibration count no longer; it stays readable, with the reason.
     *
     * @throws InputException where there is no such calibration, or no reason
     */
    public KeptInstrument withdraw(
            Act act, KeptInstrument instrument, UUID calibration, String why) {
        boolean gone = instrument.withdrawn().stream()
                .anyMatch(it -> it.calibration().id().equals(calibration));
        boolean there =
                instrument.calibrations().stream().anyMatch(it -> it.id().equals(calibration));
        if (!there && !gone) {
            throw new InputException("'%s' has no such calibration".formatted(instrument.name()));
        }
        if (why.isBlank()) {
            throw new InputException("say why the calibration is withdrawn");
        }
        if (there) {
            write(
                    act,
                    instrument.id(),
                    Aspect.CALIBRATION,
                    object().put("withdrawn", true),
                    Optional.of(why),
                    Optional.of(calibration));
        }
        return get(instrument.name());
    }

    /**
     * Fits a table without keeping it.
     *
     * @throws InputException where the table can't be read or makes no line
     */
    public static Calibration line(
            InstrumentSheet instrument, CalibrationSheet sheet, Upload table) {
        return CalibrationTable.of(TableFile.read(table))
                .calibration(
                        instrument.inUnit(),
                        instrument.step(),
                        sheet.reference(instrument.inUnit()));
    }

    /**
     * Keeps what an instrument showed where it should show nothing.
     *
     * @param reading as it was typed; a bare number is in the instrument's unit
     * @throws InputException where the reading is none
     */
    public KeptInstrument checkZero(
            Act act, KeptInstrument instrument, LocalDate date, String reading) {
        double value;
        try {
            value = Quantity.parse(reading, instrument.unit());
        } catch (QuantityException e) {
            throw new InputException(
                    "zero of '%s': %s".formatted(instrument.name(), e.getMessage()));
        }
        write(
                act,
                instrument.id(),
                Aspect.ZERO_CHECK,
                object().put("date", date.toString()).put("reading", value),
                Optional.empty(),
                Optional.empty());
        return get(instrument.name());
    }

    private void write(
            Act act,
            UUID subject,
            Aspect aspect,
            ObjectNode value,
            Optional<String> why,
            Optional<UUID> supersedes) {
        write(act, subject, aspect, List.of(value), why, supersedes);
    }

    /** Writes what an act says of an instrument, all of it or nothing; a retry is done once. */
    void write(
            Act act,
            UUID subject,
            Aspect aspect,
            List<ObjectNode> values,
            Optional<String> why,
            Optional<UUID> supersedes) {
        try {
            List<Entry> entries = new ArrayList<>();
            for (ObjectNode value : values) {
                entries.add(new Entry(
                        act.entry(entries.size()),
                        subject.toString(),
                        aspect.word(),
                        value.toString(),
                        clock.instant(),
                        clock.getZone(),
                        act.who(),
                        why,
                        supersedes));
            }
            store.append(entries);
        } catch (StoreException e) {
            throw new InputException(e.getMessage());
        }
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }
}
