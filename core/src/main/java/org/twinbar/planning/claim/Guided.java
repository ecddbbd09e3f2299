package org.twinbar.planning.claim;

import java.util.List;

/**
 * How far a claim in words has come: what is asked, and what the answers so far lead to.
 *
 * @param words of the claim
 * @param prompts in the order in which they are asked; answered ones stay, so that each can be
 *     changed
 * @param proposals questions that are whole
 * @param offBench what no bench can settle
 * @param advice what a person should know before anything is made
 */
public record Guided(
        String words,
        List<Prompt> prompts,
        List<Proposal> proposals,
        List<OffBench> offBench,
        List<String> advice) {

    public Guided {
        prompts = List.copyOf(prompts);
        proposals = List.copyOf(proposals);
        offBench = List.copyOf(offBench);
        advice = List.copyOf(advice);
    }

    /** Returns the prompts that the guide waits for. */
    public List<Prompt> waiting() {
        return prompts.stream().filter(Prompt::waits).toList();
    }

    public boolean isWhole() {
        return waiting().isEmpty();
    }
}
