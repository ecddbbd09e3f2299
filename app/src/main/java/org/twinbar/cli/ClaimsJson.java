package org.twinbar.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Optional;
import org.twinbar.decision.Verdict;
import org.twinbar.study.calculation.Comparisons;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.JudgedClaim;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Publication;

/** A study's claims with their verdicts as JSON; each comparison as {@code compare} writes it. */
final class ClaimsJson {

    private ClaimsJson() {}

    static void write(JudgedStudy study, PrintWriter out) {
        Together together = Together.of(
                study.compared().stream().map(Answer.Compared::comparison).toList());
        Json.write(
                out,
                json -> json.put("study", study.name())
                        .put("question", study.question())
                        .put("invented", study.invented())
                        .list("claims", claims -> {
                            for (JudgedClaim claim : study.claims()) {
                                claims.object(it -> claim(it, claim, together));
                            }
                        })
                        .list("published", list -> {
                            for (Publication each : study.published()) {
                                list.object(it -> published(it, each, study));
                            }
                        })
                        .findings(study.findings())
                        .put("seed", study.maker().seed()));
    }

    private static void published(Json json, Publication published, JudgedStudy study)
            throws IOException {
        json.put("at", published.when().toOffsetDateTime().toString())
                .put("who", published.who())
                .put("where", published.where())
                .put("program", published.program())
                .put("readings", published.readings())
                .list("differs", list -> {
                    for (Publication.Divergence each : published.against(study).values()) {
                        list.object(it -> it.put("claim", each.then().claim())
                                .put("question", each.then().question())
                                .put("published", each.then().word())
                                .put("now", each.now().word()));
                    }
                });
        Optional<String> draft = published.correction(study);
        if (draft.isPresent()) {
            json.put("correction", draft.get());
        }
    }

    private static void claim(Json json, JudgedClaim claim, Together together) throws IOException {
        json.put("words", claim.words()).put("saidBy", claim.saidBy()).list("answers", answers -> {
            for (Answer answer : claim.answers()) {
                answers.object(it -> answer(it, answer, together));
            }
        });
    }

    private static void answer(Json json, Answer answer, Together together) throws IOException {
        json.put("question", answer.question());
        if (answer instanceof Answer.Compared compared) {
            json.put("method", compared.method());
            ComparisonsJson.comparison(
                    json,
                    new Comparisons.Parted(
                            compared.property().column(), compared.where(), compared.comparison()),
                    together);
        } else if (answer instanceof Answer.Lined lined) {
            json.put("method", lined.method());
            LinesJson.line(
                    json,
                    new Comparisons.Lined(lined.property().column(), lined.where(), lined.trend()));
        } else if (answer instanceof Answer.OffBench off) {
            json.put("verdict", Verdict.NOT_FOR_THIS_BENCH.word())
                    .list("conditions", conditions -> {
                        for (Answer.Condition condition : off.conditions()) {
                            conditions.object(it -> it.put("text", condition.text())
                                    .put("evidence", condition.evidence()));
                        }
                    })
                    .put("decidedBy", off.whoDecides());
        } else if (answer instanceof Answer.Unanswered unanswered) {
            json.put("reason", unanswered.reason());
        }
    }
}
