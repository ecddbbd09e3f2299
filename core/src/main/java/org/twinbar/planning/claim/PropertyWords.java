package org.twinbar.planning.claim;

import java.util.Locale;
import java.util.Optional;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Basis;
import org.twinbar.specimen.PrintOrientation;

/** What is said of a property while nothing has been measured yet. */
final class PropertyWords {

    private PropertyWords() {}

    static String basis(Basis basis) {
        return switch (basis) {
            case PART -> "the part: what it carries or takes";
            case SECTION -> "the material: per section as it is tested, a coat included";
            case SECTION_BEFORE -> "the part, as if its section were the one before treatment";
            case MASS -> "the part, per gram";
            case NONE -> "neither: what it is counted in can't be added to";
        };
    }

    static String unit(Property property) {
        String symbol = property.unit().symbol();
        return symbol.isEmpty() ? "steps" : symbol;
    }

    static String name(Property property, Optional<PrintOrientation> orientation) {
        String label = label(property);
        return orientation.map(it -> "%s, %s".formatted(label, it.word())).orElse(label);
    }

    static String label(Property property) {
        return property.label().substring(0, 1).toLowerCase(Locale.ROOT)
                + property.label().substring(1);
    }

    static String looksLike(
            Property property, Optional<Proposal.Level> level, Optional<String> worth) {
        if (level.isPresent() && level.get().at().isEmpty()) {
            return "The answer will say which share of parts passes '%s' at least, and whether that is %s."
                    .formatted(label(property), level.get().of());
        }
        if (level.isPresent()) {
            return "The answer will say what %s of parts reach at least, and whether that clears %s."
                    .formatted(level.get().of(), level.get().at().orElseThrow());
        }
        String as = switch (property.scale()) {
            case RATIO -> "per cent more or less than the control";
            case INTERVAL -> "a difference in " + unit(property);
            case YES_NO -> "a difference of the shares that pass";
            case TIME_TO_EVENT -> "how much sooner or later it happens";
            case RANK -> "the chance that a treated part is ranked above an untreated one";
        };
        return "The answer will be the change of the %s as %s, with its interval, held against no change%s."
                .formatted(
                        label(property),
                        as,
                        worth.map(it -> " and against the %s worth having".formatted(it))
                                .orElse(""));
    }
}
