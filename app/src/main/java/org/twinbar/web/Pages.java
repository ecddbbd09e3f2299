package org.twinbar.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;

import io.javalin.http.Context;

import java.util.Map;

/** Puts pages together from their templates. */
final class Pages {

    private static final TemplateEngine TEMPLATES =
            TemplateEngine.createPrecompiled(ContentType.Html);

    private Pages() {}

    /** Answers with a page, or with the part of one that its script asked for. */
    static void show(Context request, String template, Map<String, Object> with) {
        StringOutput page = new StringOutput(64_000);
        TEMPLATES.render("web/" + template + ".jte", with, page);
        // A number must not part from its unit at the end of a line.
        request.html(page.toString()
                .replace('\u2009', '\u202f')
                .replace("± ", "±\u00a0")
                .replace(" ±", "\u00a0±"));
        request.contentType("text/html; charset=utf-8");
    }

    /** Answers with one sentence that says why there is no page. */
    static void refuse(Context request, String template, int status, String sentence) {
        request.status(status);
        show(request, template, Map.of("sentence", sentence));
    }

    /** Whether a script of ours asks for a part of a page. */
    static boolean isPart(Context request) {
        return "true".equals(request.header("HX-Request"));
    }
}
