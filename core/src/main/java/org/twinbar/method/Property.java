package org.twinbar.method;

import org.twinbar.quantity.Unit;

/**
 * What a method yields.
 *
 * @param unit unit of its value; a plain number for words and shares
 * @param scale how two values of it may be compared
 * @param basis what it is counted per, so that part and material can be told apart
 * @param family what the same thing on another basis is called by, such as {@code strength}
 */
public record Property(
        String name, String label, Unit unit, Scale scale, Basis basis, String family)
        implements Named {

    /** How two values may be compared. */
    public enum Scale {
        /** By ratio: there is a true zero. */
        RATIO,
        /** By difference alone, as temperatures in °C. */
        INTERVAL,
        /** By the share of specimens that say yes. */
        YES_NO,
        /** By the rate at which it happens; it may not have happened by the end. */
        TIME_TO_EVENT,
        /** By order alone. */
        RANK
    }

    /** What a property is counted per. */
    public enum Basis {
        /** The whole part: what it carries or takes. */
        PART,
        /** The section as it was tested, a coat included. */
        SECTION,
        /** The section before treatment. */
        SECTION_BEFORE,
        /** The mass of the part. */
        MASS,
        /** Nothing that a coat could add to. */
        NONE
    }

    public Property {
        if (scale == Scale.RATIO && !unit.hasTrueZero()) {
            throw new IllegalArgumentException(
                    "%s in %s has no true zero, so it has no ratio".formatted(name, unit.symbol()));
        }
    }

    /** Returns a property that has no sibling on another basis. */
    public static Property of(String name, String label, String unit, Scale scale) {
        return new Property(name, label, Unit.of(unit), scale, Basis.NONE, name);
    }

    public Property per(Basis newBasis, String newFamily) {
        return new Property(name, label, unit, scale, newBasis, newFamily);
    }

    /** By name alone: outcomes are maps of properties, and are made anew in every world. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public String column() {
        return unit.code().isEmpty() ? name : name + "_" + unit.code();
    }
}
