package org.twinbar.study;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.twinbar.store.Entry;
import org.twinbar.store.StoreException;
import org.twinbar.study.bench.InstrumentSheet;
import org.twinbar.study.bench.KeptCalibration;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.bench.Shelf;
import org.twinbar.study.bench.ZeroCheck;
import org.twinbar.study.file.CalibrationSheet;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.table.Upload;

/** The instruments that entries tell of, wherever the entries lie. */
public final class KeptShelf implements Shelf {

    private static final JsonMapper JSON = new JsonMapper();

    private final Ledger ledger;

    KeptShelf(Ledger ledger) {
        this.ledger = ledger;
    }

    List<KeptInstrument> all() {
        return described().map(this::kept).toList();
    }

    /** Each instrument's own entry, the corrected one where it was corrected. */
    Stream<Entry> described() {
        List<Entry> entries = ledger.of(Aspect.INSTRUMENT);
        List<UUID> superseded =
                entries.stream().flatMap(it -> it.supersedes().stream()).toList();
        return entries.stream()
                .filter(it -> !superseded.contains(it.id()))
                .sorted(Comparator.comparing(it -> sheet(it).name()));
    }

    Optional<Entry> described(UUID id) {
        return described().filter(it -> it.subject().equals(id.toString())).findFirst();
    }

    @Override
    public List<String> names() {
        return described().map(it -> sheet(it).name()).toList();
    }

    @Override
    public Optional<KeptInstrument> find(String name) {
        return entry(name).map(this::kept);
    }

    Optional<Entry> entry(String name) {
        return described()
                .filter(it -> sheet(it).name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    KeptInstrument kept(Entry described) {
        InstrumentSheet sheet = sheet(described);
        List<KeptCalibration> calibrations = new ArrayList<>();
        List<KeptCalibration.Withdrawn> withdrawn = new ArrayList<>();
        List<ZeroCheck> zeros = new ArrayList<>();
        for (Entry entry : ledger.about(described.subject())) {
            if (entry.aspect().equals(Aspect.CALIBRATION.word())) {
                Optional<KeptCalibration> gone = calibrations.stream()
                        .filter(it -> entry.supersedes().equals(Optional.of(it.id())))
                        .findFirst();
                if (gone.isPresent()) {
                    calibrations.remove(gone.get());
                    withdrawn.add(new KeptCalibration.Withdrawn(
                            gone.get(), entry.reason().orElse(""), entry.who()));
                } else if (entry.supersedes().isEmpty()) {
                    calibrations.add(calibration(sheet, entry));
                }
            } else if (entry.aspect().equals(Aspect.ZERO_CHECK.word())) {
                JsonNode value = value(entry);
                zeros.add(new ZeroCheck(
                        entry.id(),
                        LocalDate.parse(value.path("date").asText()),
                        value.path("reading").asDouble(),
                        entry.who()));
            }
        }
        zeros.sort(Comparator.comparing(ZeroCheck::date));
        return new KeptInstrument(
                UUID.fromString(described.subject()),
                sheet,
                KeptCalibration.oldestFirst(calibrations),
                withdrawn,
                zeros,
                KeptReferences.among(sheet.name(), ledger.about(described.subject())));
    }

    private KeptCalibration calibration(InstrumentSheet instrument, Entry entry) {
        JsonNode value = value(entry);
        CalibrationSheet sheet = CalibrationSheet.read(value);
        JsonNode table = value.path("table");
        KeptFile file = new KeptFile(
                table.path("name").asText(),
                table.path("sha256").asText(),
                table.path("bytes").asLong());
        byte[] bytes = ledger.bytes(file);
        return new KeptCalibration(
                entry.id(),
                sheet,
                file,
                Instruments.line(instrument, sheet, Upload.of(file.name(), bytes)),
                entry.who());
    }

    static InstrumentSheet sheet(Entry entry) {
        return InstrumentSheet.read(value(entry));
    }

    public static JsonNode value(Entry entry) {
        try {
            return JSON.readTree(entry.value());
        } catch (JsonProcessingException e) {
            throw new StoreException("entry %s is damaged".formatted(entry.id()));
        }
    }
}
