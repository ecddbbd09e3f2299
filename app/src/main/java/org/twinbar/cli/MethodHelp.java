package org.twinbar.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Channel;
import org.twinbar.method.Choice;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Mark;
import org.twinbar.method.Named;
import org.twinbar.method.Property;
import org.twinbar.method.Setting;
import org.twinbar.method.Words;
import org.twinbar.report.Written;

/** Help on one method, made from its description. */
final class MethodHelp {

    private MethodHelp() {}

    static String of(Description method) {
        StringBuilder text = new StringBuilder();
        text.append(method.name()).append(": ").append(method.title()).append('\n');
        text.append(method.standard()).append('\n');
        text.append("\nFor each specimen it asks for\n").append(asks(method));
        if (!method.settings().isEmpty()) {
            text.append("\nSettings (--set NAME=VALUE)\n").append(settings(method));
        }
        if (!method.marks().isEmpty()) {
            text.append("\nMarks that it finds on a curve\n").append(marks(method));
        }
        text.append("\nIt yields\n").append(properties(method));
        if (!method.cautions().isEmpty()) {
            text.append("\nCautions\n");
            for (Caution caution : method.cautions()) {
                text.append("  ").append(caution.text()).append('\n');
            }
        }
        return text.toString();
    }

    private static String asks(Description method) {
        Aligned rows = new Aligned();
        for (Ask ask : method.asks()) {
            boolean optional = ask.need() == Ask.Need.OPTIONAL;
            String ways = ask.ways().stream()
                    .map(way -> way.stream()
                            .map(MethodHelp::asked)
                            .collect(Collectors.joining(" and ")))
                    .collect(Collectors.joining(" | "));
            rows.row("  " + ways, ask.question() + (optional ? " (may be left out)" : ""));
            ask.ways().stream()
                    .flatMap(List::stream)
                    .filter(named -> !details(named).isEmpty())
                    .forEach(named -> rows.row("    " + named.column(), details(named)));
        }
        return rows.toString();
    }

    private static String asked(Named named) {
        return named instanceof Channel ? named.column() + " in the curve" : named.column();
    }

    private static String details(Named named) {
        List<String> parts = new ArrayList<>();
        if (named instanceof Input input) {
            parts.add(input.label());
            parts.add(input.limits().describe(input.unit()));
            parts.add("read on: " + input.instrument().word());
        } else if (named instanceof Channel channel) {
            parts.add(channel.label());
            parts.add("read on: " + channel.instrument().word());
        } else if (named instanceof Words words && !words.allowed().isEmpty()) {
            parts.add("one of " + String.join(", ", words.allowed()));
        }
        parts.removeIf(String::isEmpty);
        return String.join("; ", parts);
    }

    private static String settings(Description method) {
        Aligned rows = new Aligned();
        for (Named named : method.settings()) {
            if (named instanceof Setting setting) {
                String limits = setting.limits().describe(setting.unit());
                rows.row(
                        "  " + setting.column(),
                        "%s; %s unless set%s"
                                .formatted(
                                        setting.label(),
                                        preset(setting),
                                        limits.isEmpty() ? "" : "; " + limits));
            } else if (named instanceof Choice choice) {
                rows.row(
                        "  " + choice.name(),
                        "%s; one of %s; %s unless set"
                                .formatted(
                                        choice.label(),
                                        String.join(", ", choice.allowed()),
                                        choice.preset()));
            }
        }
        return rows.toString();
    }

    private static String marks(Description method) {
        Aligned rows = new Aligned();
        for (Mark mark : method.marks()) {
            rows.row("  " + mark.name(), mark.label());
        }
        return rows.toString();
    }

    private static String properties(Description method) {
        Aligned rows = new Aligned();
        for (Property property : method.properties()) {
            rows.row("  " + property.column(), property.label());
        }
        return rows.toString();
    }

    private static String preset(Setting setting) {
        String number = Written.number(setting.preset(), 6);
        String symbol = setting.unit().symbol();
        return symbol.isEmpty() ? number : number + " " + symbol;
    }
}
