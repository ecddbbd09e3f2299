package org.twinbar.uncertainty;

/** How a value moves with one source: slope per unit of its error. */
public record Term(Source source, double slope) {}
