package org.twinbar.method;

/** A place on a curve that a method finds and a person may move; it is an index of a row. */
public record Mark(String name, String label) implements Named {}
