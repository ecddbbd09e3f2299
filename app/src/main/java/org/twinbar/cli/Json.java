package org.twinbar.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.twinbar.decision.Amount;
import org.twinbar.finding.Finding;

/**
 * Writes JSON: numbers at full precision, whole ones without a fraction, and what is no number as
 * an object with its reason; never NaN or null.
 */
final class Json {

    private final StringWriter text = new StringWriter();
    private final JsonGenerator json;

    private Json() throws IOException {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        json = new JsonFactory()
                .createGenerator(text)
                .setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indenter));
    }

    /** What fills an object or a list. */
    interface Body {
        void into(Json json) throws IOException;
    }

    /** Writes one object and a line end; nothing is written where it fails. */
    static void write(PrintWriter out, Body body) {
        try {
            Json json = new Json();
            json.json.writeStartObject();
            body.into(json);
            json.json.writeEndObject();
            json.json.close();
            out.println(json.text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Json object(String name, Body body) throws IOException {
        json.writeFieldName(name);
        return object(body);
    }

    Json object(Body body) throws IOException {
        json.writeStartObject();
        body.into(this);
        json.writeEndObject();
        return this;
    }

    Json list(String name, Body body) throws IOException {
        json.writeArrayFieldStart(name);
        body.into(this);
        json.writeEndArray();
        return this;
    }

    Json texts(String name, List<String> texts) throws IOException {
        json.writeArrayFieldStart(name);
        for (String one : texts) {
            json.writeString(one);
        }
        json.writeEndArray();
        return this;
    }

    Json put(String name, String value) throws IOException {
        json.writeStringField(name, value);
        return this;
    }

    Json put(String name, long value) throws IOException {
        json.writeNumberField(name, value);
        return this;
    }

    Json put(String name, boolean value) throws IOException {
        json.writeBooleanField(name, value);
        return this;
    }

    /** Writes a finite number; whole ones as 17 rather than 17.0. */
    Json put(String name, double value) throws IOException {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("%s is %s, not a number".formatted(name, value));
        }
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
        json.writeFieldName(name);
        if (whole) {
            json.writeNumber((long) value);
        } else {
            json.writeNumber(value);
        }
        return this;
    }

    Json put(String name, Amount amount) throws IOException {
        if (amount instanceof Amount.Known known) {
            return put(name, known.value());
        }
        return reason(name, ((Amount.None) amount).reason());
    }

    Json reason(String name, String reason) throws IOException {
        return object(name, it -> it.put("reason", reason));
    }

    Json texts(Map<String, String> texts) throws IOException {
        for (Map.Entry<String, String> entry : texts.entrySet()) {
            put(entry.getKey(), entry.getValue());
        }
        return this;
    }

    Json findings(List<Finding> findings) throws IOException {
        return list("findings", it -> {
            for (Finding finding : findings) {
                it.object(one -> one.put("code", finding.code())
                        .put("level", finding.level().word())
                        .put("text", finding.text()));
            }
        });
    }
}
