package org.twinbar.cli;

import java.util.List;
import java.util.stream.Collectors;
import org.twinbar.method.Ask;
import org.twinbar.method.Channel;
import org.twinbar.method.Choice;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Named;
import org.twinbar.method.Property;
import org.twinbar.method.Setting;
import org.twinbar.method.Words;
import org.twinbar.report.Written;

/** The manual's page of one test method, made from its description. */
final class MethodPage {

    private static final String FROM_DESCRIPTION =
            "This page is made from the method's description by `./check --update`.";

    private final StringBuilder page = new StringBuilder();

    private MethodPage() {}

    static String of(Description method, boolean hasExample) {
        MethodPage made = new MethodPage();
        made.write(method, hasExample);
        return made.page.toString();
    }

    private void write(Description method, boolean hasExample) {
        line("# " + method.title());
        line("");
        line(method.standard());
        line("");
        line("`" + method.name() + "`, version " + method.version() + ". " + FROM_DESCRIPTION);
        if (hasExample) {
            line("");
            line("[A worked example](../examples/%s/README.md)".formatted(method.name()));
        }
        if (!method.cautions().isEmpty()) {
            line("\n## Cautions\n");
            method.cautions().forEach(caution -> line("- " + caution.text()));
        }
        line("\n## What it asks for\n");
        line("Columns of the table of specimens, or of the curve. Any unit of the same kind may");
        line("stand in the header.\n");
        row("what", "known from", "needed");
        row("---", "---", "---");
        method.asks().forEach(this::ask);
        line("");
        row("column", "what it is", "read on", "limits");
        row("---", "---", "---", "---");
        method.asked().forEach(this::asked);
        if (!method.settings().isEmpty()) {
            line("\n## Settings\n");
            row("`--set`", "what it is", "unless set", "limits");
            row("---", "---", "---", "---");
            method.settings().forEach(this::setting);
        }
        if (!method.marks().isEmpty()) {
            line("\n## Marks on the curve\n");
            method.marks().forEach(mark -> line("- `" + mark.name() + "`: " + mark.label()));
        }
        line("\n## What it yields\n");
        row("column", "what it is", "compared by", "counted per");
        row("---", "---", "---", "---");
        method.properties().forEach(this::property);
    }

    private void ask(Ask ask) {
        String ways = ask.ways().stream().map(MethodPage::way).collect(Collectors.joining("; or "));
        row(ask.question(), ways, ask.need() == Ask.Need.REQUIRED ? "yes" : "may be left out");
    }

    private static String way(List<Named> way) {
        return way.stream()
                .map(named -> "`" + named.column() + "`")
                .collect(Collectors.joining(" and "));
    }

    private void asked(Named named) {
        String column = "`" + named.column() + "`";
        if (named instanceof Input input) {
            row(
                    column,
                    input.label(),
                    input.instrument().word(),
                    input.limits().describe(input.unit()));
        } else if (named instanceof Channel channel) {
            row(column + " in the curve", channel.label(), channel.instrument().word(), "");
        } else if (named instanceof Words words) {
            String allowed =
                    words.allowed().isEmpty() ? "any text" : String.join(", ", words.allowed());
            row(column, words.label(), "", allowed);
        } else {
            row(column, named.label(), "", "");
        }
    }

    private void setting(Named named) {
        String column = "`" + named.column() + "`";
        if (named instanceof Setting setting) {
            String preset =
                    Written.number(setting.preset(), 6) + " " + setting.unit().symbol();
            row(column, setting.label(), preset.strip(), setting.limits().describe(setting.unit()));
        } else if (named instanceof Choice choice) {
            row(column, choice.label(), choice.preset(), String.join(", ", choice.allowed()));
        }
    }

    private void property(Property property) {
        String compared = switch (property.scale()) {
            case RATIO -> "ratio";
            case INTERVAL -> "difference";
            case YES_NO -> "share";
            case TIME_TO_EVENT -> "rate";
            case RANK -> "rank";
        };
        String per = switch (property.basis()) {
            case PART -> "part";
            case SECTION -> "section as tested";
            case SECTION_BEFORE -> "section before treatment";
            case MASS -> "gram";
            case NONE -> "";
        };
        row("`" + property.column() + "`", property.label(), compared, per);
    }

    private void row(String... cells) {
        line(List.of(cells).stream()
                .map(cell -> cell.replace("|", "\\|"))
                .collect(Collectors.joining(" | ", "| ", " |")));
    }

    private void line(String text) {
        page.append(text).append('\n');
    }
}
