package org.twinbar.study.judged;

import java.util.List;

/**
 * What somebody says the treatment does, and what was found.
 *
 * @param words theirs
 * @param saidBy who says it, such as {@code leaflet}; may be empty
 * @param answers one for each question that makes the claim measurable
 */
public record JudgedClaim(String words, String saidBy, List<Answer> answers) {
    public JudgedClaim {
        answers = List.copyOf(answers);
    }
}
