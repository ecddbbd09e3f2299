package org.twinbar.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Map;
import org.twinbar.instrument.Instrument;
import org.twinbar.method.Ends;
import org.twinbar.method.Property;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.study.calculation.Calculated;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Source;

/** Results of specimens as JSON, in the form that {@code compare} reads again. */
final class ResultsJson {

    private ResultsJson() {}

    static void write(Calculated calculated, PrintWriter out) {
        Json.write(
                out,
                json -> json.put("method", calculated.used().name())
                        .put("standard", calculated.used().description().standard())
                        .list("results", list -> {
                            for (JudgedSpecimen specimen : calculated.specimens()) {
                                list.object(one -> specimen(one, specimen));
                            }
                        })
                        .list("instruments", list -> {
                            for (Instrument instrument : calculated.used().instruments()) {
                                list.object(one -> instrument(one, instrument));
                            }
                        })
                        .findings(calculated.findings()));
    }

    static void instrument(Json json, Instrument instrument) throws IOException {
        json.put("name", instrument.name())
                .put("unit", instrument.unit().symbol())
                .put("resolution", instrument.resolution())
                .put("origin", instrument.origin().word());
        if (instrument.correction().isPresent()) {
            json.put("standsOn", instrument.correction().get().standsOn());
        } else {
            json.reason("standsOn", "it was not calibrated here");
        }
    }

    private static void specimen(Json json, JudgedSpecimen specimen) throws IOException {
        json.put("specimen", specimen.code())
                .put("group", specimen.group())
                .texts(specimen.factors())
                .object("values", values -> {
                    for (Map.Entry<Property, Yield> entry :
                            specimen.result().yields().entrySet()) {
                        Property property = entry.getKey();
                        values.object(
                                property.column(),
                                one -> yielded(one, specimen.result(), property));
                    }
                })
                .findings(specimen.result().findings());
    }

    private static void yielded(Json json, Result result, Property property) throws IOException {
        Yield yield = result.yields().get(property);
        Budget budget = result.budgets().get(property);
        Ends ends = Ends.of(result, property);
        if (budget != null) {
            value(json, budget);
        } else if (yield instanceof Yield.AtLeast bound) {
            json.put("atLeast", bound.bound())
                    .put("uAtLeast", ends.lowerU())
                    .put("reason", bound.reason());
        } else if (yield instanceof Yield.Below bound) {
            json.put("below", bound.bound())
                    .put("uBelow", ends.upperU())
                    .put("reason", bound.reason());
        } else if (yield instanceof Yield.Between between) {
            json.put("atLeast", between.from())
                    .put("uAtLeast", ends.lowerU())
                    .put("below", between.to())
                    .put("uBelow", ends.upperU())
                    .put("reason", between.reason());
        } else if (yield instanceof Yield.Word word) {
            json.put("is", word.word());
        } else if (yield instanceof Yield.Missing missing) {
            json.put("reason", missing.reason());
        }
    }

    private static void value(Json json, Budget budget) throws IOException {
        double df = budget.degreesOfFreedom();
        json.put("value", budget.value()).put("u", budget.u());
        if (Double.isFinite(df)) {
            json.put("df", df);
        } else {
            json.reason("df", "the size of every source of error is taken as known");
        }
        json.put("own", budget.u(Source.Reach.OWN)).object("moves", moves -> {
            for (Map.Entry<Source, Double> shift : budget.shifts().entrySet()) {
                if (shift.getKey().reach() == Source.Reach.SHARED) {
                    moves.put(shift.getKey().identity(), shift.getValue());
                }
            }
        });
    }
}
