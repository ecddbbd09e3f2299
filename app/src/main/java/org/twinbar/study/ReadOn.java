package org.twinbar.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.method.Input;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.table.Presets;

/** What a test is read on: the instruments that somebody chose, else the only one of a kind. */
public final class ReadOn {

    /** Where nothing is known of instruments. */
    public static final ReadOn UNKNOWN = new ReadOn(Map.of(), List.of());

    private final Map<String, KeptInstrument> chosen;
    private final List<KeptInstrument> all;

    private ReadOn(Map<String, KeptInstrument> chosen, List<KeptInstrument> all) {
        this.chosen = chosen;
        this.all = all;
    }

    /**
     * @param named instruments by reading or by kind, as a test names them
     * @throws org.twinbar.exchange.InputException where the workspace has none of that name
     */
    public static ReadOn of(Instruments instruments, Map<String, String> named) {
        Map<String, KeptInstrument> chosen = new LinkedHashMap<>();
        named.forEach((what, name) -> chosen.put(Presets.key(what), instruments.get(name)));
        return new ReadOn(chosen, instruments.all());
    }

    /** Returns the instrument of a reading; empty where nobody can tell which it is. */
    public Optional<KeptInstrument> of(Input input) {
        String kind = input.instrument().word();
        KeptInstrument named = chosen.get(Presets.key(input.name()));
        if (named == null) {
            named = chosen.get(Presets.key(kind));
        }
        List<KeptInstrument> alike =
                all.stream().filter(each -> each.sheet().kind().equals(kind)).toList();
        return Optional.ofNullable(named)
                .or(() -> alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty());
    }
}
