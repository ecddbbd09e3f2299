package org.twinbar.method;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.twinbar.finding.Finding;

/** What a method made of one specimen's readings: each property's yield, and what was seen. */
public final class Outcome {

    private final Map<Property, Yield> yields;
    private final List<Finding> findings;

    private Outcome(Map<Property, Yield> yields, List<Finding> findings) {
        this.yields = yields;
        this.findings = findings;
    }

    /** Returns every property of the method with what became of it, in the method's order. */
    public Map<Property, Yield> yields() {
        return yields;
    }

    public List<Finding> findings() {
        return findings;
    }

    /**
     * Returns two numbers for each property, for propagation alone: its value or its lower bound,
     * then its upper bound; NaN where it has none.
     */
    double[] numbers() {
        double[] numbers = new double[2 * yields.size()];
        Arrays.fill(numbers, Double.NaN);
        int at = 0;
        for (Yield yield : yields.values()) {
            if (yield instanceof Yield.Value v) {
                numbers[at] = v.value();
            } else if (yield instanceof Yield.Fitted f) {
                numbers[at] = f.value();
            } else if (yield instanceof Yield.AtLeast b) {
                numbers[at] = b.bound();
            } else if (yield instanceof Yield.Below b) {
                numbers[at + 1] = b.bound();
            } else if (yield instanceof Yield.Between b) {
                numbers[at] = b.from();
                numbers[at + 1] = b.to();
            }
            at += 2;
        }
        return numbers;
    }

    public static Builder of(Description description) {
        return new Builder(description);
    }

    /** Collects an outcome; a property that is given twice keeps the later yield. */
    public static final class Builder {
        private final Description description;
        private final Map<Property, Yield> yields = new LinkedHashMap<>();
        private final List<Finding> findings = new ArrayList<>();

        private Builder(Description description) {
            this.description = description;
        }

        public Builder put(Property property, Yield yield) {
            yields.put(property, yield);
            return this;
        }

        /** Gives a calculated number; one that is not finite becomes a missing value. */
        public Builder value(Property property, double value) {
            return put(property, Yield.of(value));
        }

        public Builder missing(Property property, String reason) {
            return put(property, new Yield.Missing(reason));
        }

        public Builder found(Finding finding) {
            findings.add(finding);
            return this;
        }

        /** Gives every property that has no yield yet this reason for having none. */
        public Builder restMissing(String reason) {
            for (Property property : description.properties()) {
                yields.computeIfAbsent(property, p -> new Yield.Missing(reason));
            }
            return this;
        }

        /**
         * Returns the outcome.
         *
         * @throws IllegalStateException where a property of the description was given no yield: a
         *     method must say of each what became of it
         */
        public Outcome build() {
            Map<Property, Yield> ordered = new LinkedHashMap<>();
            for (Property property : description.properties()) {
                Yield yield = yields.get(property);
                if (yield == null) {
                    throw new IllegalStateException(
                            description.name() + " says nothing of " + property.name());
                }
                ordered.put(property, yield);
            }
            return new Outcome(ordered, List.copyOf(findings));
        }
    }
}
