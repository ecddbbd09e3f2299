package org.twinbar.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Sets a sheet by its templates: for screens as one file, for print as what the PDF is made from.
 */
final class Typeset {

    private static final TemplateEngine TEMPLATES =
            TemplateEngine.createPrecompiled(ContentType.Html);
    private static final String FACE =
            "@font-face{font-family:Inter;font-weight:%s;src:url(data:font/woff;base64,%s)}";

    private Typeset() {}

    /** Returns the page with everything that it needs inside. */
    static String screen(Sheet sheet) {
        String marker = "/*typefaces*/";
        String page = filled("report/screen.jte", sheet, marker + css());
        return page.replace(marker, faces(page));
    }

    static String css() {
        return Theme.css() + Figures.css() + resource("screen.css");
    }

    /** Returns well-formed XHTML in the colours of the light theme. */
    static String print(Sheet sheet) {
        String page = filled("report/print.jte", sheet, resource("print.css"));
        return Theme.onPaper(page)
                .replace("font-weight=\"600\"", "font-weight=\"bold\"")
                .replaceAll("<g class=\"tip\".*?</g>", "");
    }

    private static String filled(String template, Sheet sheet, String css) {
        StringOutput page = new StringOutput(64_000);
        TEMPLATES.render(template, Map.of("sheet", sheet, "css", css), page);
        // A number must not part from its unit at the end of a line.
        return page.toString()
                .replace('\u2009', '\u202f')
                .replace("± ", "±\u00a0")
                .replace(" ±", "\u00a0±");
    }

    private static String faces(String page) {
        Set<Integer> characters = page.codePoints().boxed().collect(Collectors.toSet());
        return face("400", Fonts.Weight.REGULAR, characters)
                + face("600", Fonts.Weight.BOLD, characters);
    }

    private static String face(String weight, Fonts.Weight file, Set<Integer> characters) {
        byte[] font = WebFont.of(Fonts.screen(file), characters);
        return FACE.formatted(weight, Base64.getEncoder().encodeToString(font));
    }

    private static String resource(String name) {
        try (InputStream file = Typeset.class.getResourceAsStream(name)) {
            if (file == null) {
                throw new IllegalStateException("the program's jar lacks " + name);
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
