package org.twinbar.study;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Clock;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.exchange.InputException;
import org.twinbar.store.Entry;
import org.twinbar.store.Store;
import org.twinbar.store.StoreException;

/**
 * The recipes and materials of a workspace: each a subject of its own, to be used in any study. A
 * study keeps what it took as it was, so that a recipe may change without changing what was done.
 */
public final class Recipes {

    private static final JsonMapper JSON = new JsonMapper();

    private final Store store;
    private final Clock clock;

    Recipes(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** Returns all of them, by kind and name. */
    public List<KeptRecipe> all() {
        return last().values().stream()
                .map(Recipes::kept)
                .sorted(Comparator.comparing((KeptRecipe each) -> each.sheet().kind())
                        .thenComparing(each -> each.sheet().name()))
                .toList();
    }

    /** Returns those of one kind, by name. */
    public List<KeptRecipe> all(RecipeKind kind) {
        return all().stream().filter(each -> each.sheet().kind() == kind).toList();
    }

    public Optional<KeptRecipe> find(UUID id) {
        return Optional.ofNullable(last().get(id.toString())).map(Recipes::kept);
    }

    /**
     * Keeps a recipe.
     *
     * @throws FieldException where its name is taken, or it can't be followed
     */
    public KeptRecipe add(Act act, RecipeSheet sheet) {
        UUID id = act.entry("recipe");
        Optional<KeptRecipe> there = find(id);
        if (there.isPresent()) {
            return there.get();
        }
        requireFree(sheet.checked(), id);
        write(act, id, sheet, Optional.empty(), Optional.empty());
        return find(id).orElseThrow();
    }

    /**
     * Writes a recipe down anew; what it was stays readable, and studies keep what they took.
     *
     * @throws FieldException where its name is another's, it can't be followed, or no reason is
     *     given
     */
    public KeptRecipe change(Act act, UUID id, RecipeSheet sheet, String why) {
        Entry before = Optional.ofNullable(last().get(id.toString()))
                .orElseThrow(() -> new InputException("there is no such recipe"));
        if (before.id().equals(act.entry(0))) {
            return kept(before);
        }
        requireFree(sheet.checked(), id);
        if (why.isBlank()) {
            throw new FieldException("why", "say why the recipe changes");
        }
        write(act, id, sheet, Optional.of(why), Optional.of(before.id()));
        return find(id).orElseThrow();
    }

    private void requireFree(RecipeSheet sheet, UUID id) {
        boolean taken = all().stream()
                .anyMatch(each -> !each.id().equals(id)
                        && each.sheet().kind() == sheet.kind()
                        && each.sheet().name().equals(sheet.name()));
        if (taken) {
            throw new FieldException(
                    "name",
                    "there is a %s '%s' already".formatted(sheet.kind().word(), sheet.name()));
        }
    }

    private Map<String, Entry> last() {
        Map<String, Entry> last = new LinkedHashMap<>();
        store.of(Aspect.KEPT_RECIPE.word()).forEach(entry -> last.put(entry.subject(), entry));
        return last;
    }

    private static KeptRecipe kept(Entry entry) {
        try {
            return new KeptRecipe(
                    UUID.fromString(entry.subject()),
                    RecipeSheet.read(JSON.readTree(entry.value())),
                    entry.at().atZone(entry.zone()));
        } catch (JsonProcessingException e) {
            throw new StoreException("entry %s is damaged".formatted(entry.id()));
        }
    }

    private void write(
            Act act, UUID id, RecipeSheet sheet, Optional<String> why, Optional<UUID> supersedes) {
        store.append(List.of(new Entry(
                act.entry(0),
                id.toString(),
                Aspect.KEPT_RECIPE.word(),
                sheet.json().toString(),
                clock.instant(),
                clock.getZone(),
                act.who(),
                why,
                supersedes)));
    }
}
