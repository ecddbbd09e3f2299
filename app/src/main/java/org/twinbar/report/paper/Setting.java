package org.twinbar.report.paper;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.twinbar.report.Pdf;
import org.twinbar.report.Theme;

/** Sets forms on paper, as PDF. */
final class Setting {

    private static final TemplateEngine TEMPLATES =
            TemplateEngine.createPrecompiled(ContentType.Html);

    /** Margins left and right of a sheet (mm). */
    private static final double MARGINS = 24;

    private Setting() {}

    static byte[] pdf(List<Form> forms, Paper paper) {
        double upright = paper.width() - MARGINS;
        boolean isWide = forms.stream()
                .flatMap(it -> it.parts().stream())
                .anyMatch(it -> Laid.width(it) > upright);
        double room = isWide ? paper.height() - MARGINS : upright;
        String size = isWide
                ? "%smm %smm".formatted(paper.height(), paper.width())
                : "%smm %smm".formatted(paper.width(), paper.height());
        String css = "@page{size:%s}".formatted(size) + resource("paper.css");
        List<Laid> sheets = forms.stream().map(it -> Laid.of(it, room)).toList();
        return pdf(filled("report/paper/form.jte", Map.of("sheets", sheets, "css", css)));
    }

    static byte[] pdf(String page) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            Pdf.print(Theme.onPaper(page), bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    static String filled(String template, Map<String, Object> values) {
        StringOutput page = new StringOutput(64_000);
        TEMPLATES.render(template, values, page);
        return page.toString().replace('\u2009', '\u202f');
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    static String resource(String name) {
        try (InputStream file = Setting.class.getResourceAsStream(name)) {
            if (file == null) {
                throw new IllegalStateException("the program's jar lacks " + name);
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
