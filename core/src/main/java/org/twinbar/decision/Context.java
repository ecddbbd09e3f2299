package org.twinbar.decision;

import java.util.List;
import java.util.Optional;

/**
 * What stands around a comparison; no verdict reads it.
 *
 * @param material part against material, where the property is counted on several bases
 * @param family its fellows, where several treated groups were held against one control
 * @param alike whether the treatment does the same elsewhere, where the specimens are parted
 * @param grounds what the comparison takes for granted, each looked at as far as can be
 * @param tests that are usual beside the effect
 */
public record Context(
        Optional<Material> material,
        Optional<Family> family,
        List<Alike> alike,
        List<Ground> grounds,
        List<Tested> tests) {

    public static final Context NONE =
            new Context(Optional.empty(), Optional.empty(), List.of(), List.of(), List.of());

    public Context {
        alike = List.copyOf(alike);
        grounds = List.copyOf(grounds);
        tests = List.copyOf(tests);
    }

    Context with(Material partAgainstMaterial) {
        return new Context(Optional.of(partAgainstMaterial), family, alike, grounds, tests);
    }

    Context with(Family fellows) {
        return new Context(material, Optional.of(fellows), alike, grounds, tests);
    }

    Context with(List<Alike> elsewhere) {
        return new Context(material, family, elsewhere, grounds, tests);
    }

    Context onGrounds(List<Ground> looked) {
        return new Context(material, family, alike, looked, tests);
    }

    Context withTests(List<Tested> asked) {
        return new Context(material, family, alike, grounds, asked);
    }
}
