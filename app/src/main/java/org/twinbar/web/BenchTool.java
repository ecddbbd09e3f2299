package org.twinbar.web;

import java.util.List;

/**
 * A kind of instrument that a method reads on, and which of them the workspace has.
 *
 * @param field name of its field in the form
 */
public record BenchTool(String kind, String field, List<String> instruments) {
    public BenchTool {
        instruments = List.copyOf(instruments);
    }
}
