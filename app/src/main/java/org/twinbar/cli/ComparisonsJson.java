package org.twinbar.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import org.twinbar.decision.Alike;
import org.twinbar.decision.Beside;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Context;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Family;
import org.twinbar.decision.Found;
import org.twinbar.decision.Ground;
import org.twinbar.decision.Group;
import org.twinbar.decision.Needed;
import org.twinbar.decision.Question;
import org.twinbar.decision.Standing;
import org.twinbar.decision.Tested;
import org.twinbar.statistics.LeftOver;
import org.twinbar.study.calculation.Comparisons;

/** Comparisons as JSON. */
final class ComparisonsJson {

    private ComparisonsJson() {}

    static void write(Comparisons.Outcome outcome, PrintWriter out) {
        Together together = Together.of(outcome.comparisons().stream()
                .map(Comparisons.Parted::comparison)
                .toList());
        Json.write(out, json -> {
            json.list("comparisons", list -> {
                for (Comparisons.Parted one : outcome.comparisons()) {
                    list.object(it -> comparison(it, one, together));
                }
            });
            if (!outcome.lines().isEmpty()) {
                json.list("lines", list -> {
                    for (Comparisons.Lined one : outcome.lines()) {
                        list.object(it -> LinesJson.line(it, one));
                    }
                });
            }
            if (!outcome.unmade().isEmpty()) {
                json.list("unanswered", list -> {
                    for (Comparisons.Unmade one : outcome.unmade()) {
                        list.object(it -> it.object("by", by -> by.texts(one.by()))
                                .put("reason", one.reason()));
                    }
                });
            }
            json.put("seed", outcome.seed());
        });
    }

    static void comparison(Json json, Comparisons.Parted parted, Together together)
            throws IOException {
        Comparison comparison = parted.comparison();
        Question question = comparison.question();
        json.put("value", parted.value()).object("by", it -> it.texts(parted.by()));
        if (comparison.control().isPresent()) {
            Group control = comparison.control().get();
            json.object("control", it -> group(it, control));
        }
        json.object("treated", it -> group(it, comparison.treated()))
                .object("effect", it -> found(it, comparison.found()))
                .list("beside", list -> {
                    for (Beside beside : comparison.beside()) {
                        list.object(it -> beside(it, beside));
                    }
                })
                .put("expect", question.expectation().word());
        sizes(json, comparison);
        json.put("verdict", comparison.verdict().word())
                .texts("reasons", comparison.reasons())
                .findings(comparison.findings())
                .object("needed", it -> needed(it, comparison.needed()))
                .object("stands", it -> standing(it, comparison.standing()));
        together.write(json, comparison);
        context(json, comparison.context());
    }

    private static void context(Json json, Context context) throws IOException {
        if (context.family().isPresent()) {
            Family family = context.family().get();
            json.object(
                    "together",
                    it -> it.list("againstControl", list -> {
                                for (Family.Held held : family.held()) {
                                    list.object(one -> found(
                                            one.put("treated", held.treated())
                                                    .put(
                                                            "verdict",
                                                            held.verdict().word()),
                                            held.found()));
                                }
                            })
                            .list("pairs", list -> {
                                for (Family.Pair pair : family.pairs()) {
                                    list.object(one -> found(
                                            one.put("treated", pair.one())
                                                    .put("control", pair.other()),
                                            pair.found()));
                                }
                            }));
        }
        if (!context.alike().isEmpty()) {
            json.list("actsAlike", list -> {
                for (Alike alike : context.alike()) {
                    list.object(one -> found(
                            one.put("here", alike.here())
                                    .put("there", alike.there())
                                    .put("answer", alike.answer().word())
                                    .put("text", alike.words()),
                            alike.contrast()));
                }
            });
        }
        tests(json, context.tests());
        if (!context.grounds().isEmpty()) {
            json.list("grounds", list -> {
                for (Ground ground : context.grounds()) {
                    list.object(one -> one.put("what", ground.what())
                            .put("doubted", ground.doubt().isPresent() ? "yes" : "no")
                            .put("text", ground.words())
                            .put("p", ground.p()));
                }
            });
        }
    }

    private static void tests(Json json, List<Tested> tests) throws IOException {
        if (!tests.isEmpty()) {
            json.list("tests", list -> {
                for (Tested test : tests) {
                    list.object(it -> it.put("name", test.name())
                            .put("statistic", test.statistic())
                            .put("p", test.p())
                            .put("text", test.words()));
                }
            });
        }
    }

    private static void sizes(Json json, Comparison comparison) throws IOException {
        Question question = comparison.question();
        if (question.effect() == Effect.LEVEL) {
            json.put("at", question.none());
            question.level().ifPresent(level -> {
                try {
                    json.put("of", level.share());
                } catch (IOException e) {
                    throw new java.io.UncheckedIOException(e);
                }
            });
            return;
        }
        json.put("worth", question.worth());
        if (question.claimed().isPresent() && comparison.claimed().isPresent()) {
            json.object(
                    "claimed",
                    it -> it.put("size", question.claimed().getAsDouble())
                            .put("reached", comparison.claimed().get().word()));
        }
    }

    private static void beside(Json json, Beside beside) throws IOException {
        json.put("interval", beside.interval())
                .put("estimate", beside.estimate())
                .put("low", beside.low())
                .put("high", beside.high())
                .put("method", beside.method());
        if (beside.unit().isPresent()) {
            json.put("unit", beside.unit().get().symbol());
        }
    }

    /** Writes the share that it has not happened to yet, a fall for each time or pair of looks. */
    private static void leftOver(Json json, LeftOver curve) throws IOException {
        json.put("watchedTo", curve.watchedTo()).list("falls", list -> {
            for (LeftOver.Fall fall : curve.falls()) {
                list.object(it -> it.put("after", fall.after())
                        .put("until", fall.until())
                        .put("left", fall.left())
                        .put("low", fall.low())
                        .put("high", fall.high()));
            }
        });
    }

    private static void group(Json json, Group group) throws IOException {
        json.put("name", group.name())
                .put("n", group.n())
                .put("mean", group.mean())
                .put("sd", group.sd())
                .put("median", group.median());
        if (group.tally().isPresent()) {
            Group.Tally tally = group.tally().get();
            json.object(
                    "count",
                    it -> it.put("what", tally.what())
                            .put("count", tally.count())
                            .put("n", tally.n())
                            .put("low", tally.low())
                            .put("high", tally.high()));
        }
        if (group.leftOver().isPresent()) {
            json.object("leftOver", it -> leftOver(it, group.leftOver().get()));
        }
    }

    static void found(Json json, Found found) throws IOException {
        json.put("kind", found.kind().word())
                .put("estimate", found.estimate())
                .put("low", found.low())
                .put("high", found.high())
                .put("level", found.level())
                .put("df", found.df())
                .put("method", found.method())
                .put("p", found.p());
    }

    private static void needed(Json json, Needed needed) throws IOException {
        if (needed instanceof Needed.Specimens specimens) {
            specimens(json, specimens);
        } else if (needed instanceof Needed.None none) {
            json.put("reason", none.reason());
        }
        if (needed.ifClaimHolds().isPresent()) {
            Needed.Specimens more = needed.ifClaimHolds().get();
            json.object("ifClaimHolds", it -> specimens(it, more));
        }
    }

    private static void specimens(Json json, Needed.Specimens specimens) throws IOException {
        json.put("perGroup", specimens.perGroup());
        if (specimens.blocks().isPresent()) {
            Needed.InBlocks blocks = specimens.blocks().get();
            boolean both = blocks.holding() == Needed.Holding.BOTH_GROUPS;
            json.object(
                    both ? "blocks" : "blocksPerGroup",
                    it -> it.put("kind", blocks.kind()).put("number", blocks.number()));
        }
        json.put("power", specimens.power())
                .put("method", specimens.method())
                .put("assuming", specimens.assuming());
        if (specimens.simulated().isPresent()) {
            Needed.Simulated drawn = specimens.simulated().get();
            json.object("simulated", it -> {
                it.put("power", drawn.power()).put("text", drawn.words());
                if (drawn.enough().isPresent()) {
                    it.put("enough", drawn.enough().getAsInt());
                }
            });
        }
    }

    private static void standing(Json json, Standing standing) throws IOException {
        json.put("in", standing.holding())
                .put("of", standing.views().size())
                .list("views", list -> {
                    for (Standing.View view : standing.views()) {
                        list.object(it -> it.put("look", view.words())
                                .put("verdict", view.verdict().word()));
                    }
                });
    }
}
