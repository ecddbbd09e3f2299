package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.zip.Inflater;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The small font is unpacked again and read by the font reader of the JDK. */
class WebFontTest {

    private static final String TEXT = "Größe ± µm ≥ 30.81 − “coated” kJ/m²";
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    @ParameterizedTest
    @EnumSource(Fonts.Weight.class)
    void drawsItsCharactersAsTheWholeFontDoesAndNoOthers(Fonts.Weight weight) throws Exception {
        Set<Integer> characters = TEXT.codePoints().boxed().collect(Collectors.toSet());
        byte[] small = WebFont.of(Fonts.screen(weight), characters);
        assertThat(small.length).isLessThan(60_000);
        Font font = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(unpacked(small)))
                .deriveFont(100f);
        assertThat(font.canDisplayUpTo(TEXT)).isEqualTo(-1);
        assertThat(font.canDisplay('Q')).isFalse();
        Font whole = Fonts.of(weight, 100);
        for (char letter : "Gröeµmctd".toCharArray()) {
            Rectangle2D expected = outline(whole, letter);
            assertThat(outline(font, letter)).as("" + letter).isEqualTo(expected);
        }
        double one = font.getStringBounds("1", CONTEXT).getWidth();
        assertThat(font.getStringBounds("0", CONTEXT).getWidth()).isEqualTo(one);
    }

    private static Rectangle2D outline(Font font, char letter) {
        return font.createGlyphVector(CONTEXT, String.valueOf(letter))
                .getOutline()
                .getBounds2D();
    }

    private static byte[] unpacked(byte[] woff) throws Exception {
        ByteBuffer in = ByteBuffer.wrap(woff);
        int tables = in.getShort(12);
        ByteBuffer head = ByteBuffer.allocate(12 + 16 * tables);
        head.putInt(in.getInt(4)).putShort((short) tables);
        head.position(12);
        ByteArrayOutputStream data = new ByteArrayOutputStream();
        for (int i = 0; i < tables; i++) {
            int entry = 44 + 20 * i;
            byte[] plain = new byte[in.getInt(entry + 12)];
            byte[] stored = new byte[in.getInt(entry + 8)];
            in.get(in.getInt(entry + 4), stored);
            if (stored.length < plain.length) {
                Inflater inflater = new Inflater();
                inflater.setInput(stored);
                assertThat(inflater.inflate(plain)).isEqualTo(plain.length);
            } else {
                plain = stored;
            }
            head.putInt(in.getInt(entry)).putInt(in.getInt(entry + 16));
            head.putInt(head.capacity() + data.size()).putInt(plain.length);
            data.writeBytes(plain);
            data.writeBytes(new byte[(4 - plain.length % 4) % 4]);
        }
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes(head.array());
        file.writeBytes(data.toByteArray());
        return file.toByteArray();
    }
}
