package org.twinbar.decision;

/** The verdict alone, with the interval that it was read off. */
public record Judgement(Found found, Verdict verdict) {}
