package org.twinbar.report.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.ReadAs;
import org.twinbar.exchange.Source;
import org.twinbar.exchange.Table;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Methods;
import org.twinbar.specimen.Bed;
import org.twinbar.specimen.Plate;
import org.twinbar.specimen.PrintOrientation;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.StandardShapes;
import org.twinbar.specimen.ToPrint;

/** Paper for the bench, read back from the PDF: its words, and its squares as a telephone does. */
class SheetsTest {

    private static final String STUDY = "Sealed against the spray";
    private static final BenchSheets SHEETS = BenchSheets.on(Paper.A4);

    private static final Optional<Bed> NO_BED = Optional.empty();

    private static final Pieces PIECES = pieces(
            "specimen,test_order,print_run,position,mix,group,kind,shape,orientation",
            "A07,3,1,1,1,coated,flat bars,iso527-1a,flat",
            "C11,1,1,2,,plain,flat bars,iso527-1a,flat",
            "F30,2,2,1,1,coated,flat bars,iso527-1a,flat",
            "H42,5,2,2,,plain,flat bars,iso527-1a,flat",
            "K518,4,1,3,2,coated,flat bars,iso527-1a,flat",
            "M77,6,1,4,2,coated,flat bars,iso527-1a,flat");

    private static Stream<Description> methods() {
        return Methods.builtIn().all().stream().map(it -> it.description());
    }

    @Test
    void setsARunSheetInTestOrderThatAPhoneReads() throws IOException {
        byte[] pdf = SHEETS.test(PIECES, method("tensile"), Map.of(), List.of());
        assertThat(codes(pdf)).containsExactly("C11", "F30", "A07", "K518", "H42", "M77");
        String text = text(pdf);
        assertThat(text)
                .containsSubsequence("C11", "F30", "A07", "K518", "H42", "M77")
                .contains(
                        "Tensile test: run sheet",
                        STUDY,
                        "Date",
                        "By whom",
                        "Width, mm",
                        "caliper, to 0.01",
                        "Curve file",
                        "gauge",
                        "shoulder",
                        "Gauge length of the",
                        "wear safety glasses",
                        "width and thickness are measured at 1 to 3");
    }

    /** Whoever tests must not learn a group from the paper; whoever treats has to. */
    @Test
    void tellsGroupsToWhoeverTreatsAlone() throws IOException {
        byte[] labels = Labels.pdf(PIECES, LabelSheet.of(Paper.A4, 3, 8), 1);
        assertThat(text(SHEETS.test(PIECES, method("tensile"), Map.of(), List.of())))
                .doesNotContain("coated", "plain");
        assertThat(text(labels)).doesNotContain("coated", "plain");
        assertThat(text(SHEETS.treat(PIECES)))
                .contains("coated", "plain", "This sheet tells groups", "Mix 1", "Mix 2", "No mix");
    }

    @Test
    void setsASheetForEachRunInPlacesAndForEachMix() throws IOException {
        byte[] print = SHEETS.print(PIECES, NO_BED);
        assertThat(pages(print)).isEqualTo(2);
        assertThat(codes(print)).containsExactly("A07", "C11", "K518", "M77", "F30", "H42");
        assertThat(text(print))
                .contains("Print run 1", "Print run 2", "Layer height", "Nozzle and bed burn")
                .doesNotContain("coated");
        byte[] treat = SHEETS.treat(PIECES);
        assertThat(codes(treat)).containsExactly("F30", "A07", "K518", "M77", "C11", "H42");
        assertThat(text(treat)).contains("nitrile gloves", "A to be weighed");
    }

    /** A nozzle can only be changed between runs, by somebody who knows which run takes which. */
    @Test
    void tellsWhoeverPrintsWhatARunIsSetTo() throws IOException {
        Pieces runs = pieces(
                "specimen,print_run,group,treatment",
                "A1,1,fine,0.4 mm nozzle",
                "B2,2,coarse,0.8 mm nozzle",
                "C3,3,fine,0.4 mm nozzle",
                "D4,4,coarse,0.8 mm nozzle");
        assertThat(text(SHEETS.print(runs, NO_BED)))
                .contains("The whole run: fine, 0.4 mm nozzle", "The whole run: coarse, 0.8 mm");
        assertThat(text(SHEETS.print(PIECES, NO_BED))).doesNotContain("The whole run");
    }

    /** Every method's sheet has all that it needs of a specimen, and its cautions. */
    @ParameterizedTest
    @MethodSource("methods")
    void setsTheRunSheetOfEveryMethod(Description method) throws IOException {
        byte[] pdf = SHEETS.test(PIECES, method, Map.of(), List.of());
        String text = joined(text(pdf));
        assertThat(text).contains(joined(method.title()));
        method.cautions().forEach(it -> assertThat(text).contains(joined(it.text())));
        method.asks().stream()
                .filter(it -> it.need() == org.twinbar.method.Ask.Need.REQUIRED)
                .flatMap(it -> it.ways().get(0).stream())
                .filter(it -> it instanceof Input)
                .forEach(it -> assertThat(text).contains(joined(it.label())));
    }

    @Test
    void leavesOutWhatIsSaidAlreadyAndTakesWhatIsWanted() throws IOException {
        String text = joined(text(SHEETS.test(
                PIECES, method("flexure"), Map.of("span", "64 mm"), List.of("thickness"))));
        assertThat(text)
                .contains(joined("Distance between the supports: 64 mm"), "Thickness,in")
                .doesNotContain("Width");
        assertThatThrownBy(
                        () -> SHEETS.test(PIECES, method("flexure"), Map.of(), List.of("thicknes")))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("flexure asks for no 'thicknes'")
                .hasMessageContaining("thickness");
    }

    @Test
    void drawsEveryShapeWithItsPlaces() {
        for (Shape shape : StandardShapes.all()) {
            String svg = ShapePicture.svg(shape);
            assertThat(svg).contains("code", ">1</text>").doesNotContain("NaN", "Infinity");
            assertThat(ShapePicture.legend(shape)).contains(shape.panel().where());
        }
    }

    @Test
    void drawsTheBedWithEveryCode() throws IOException {
        Shape bar = StandardShapes.named("iso527-1a").orElseThrow();
        for (PrintOrientation orientation : PrintOrientation.values()) {
            List<ToPrint> specimens = Stream.of("A07", "K518")
                    .map(it -> ToPrint.of(bar, Optional.of(it), orientation))
                    .toList();
            String map = BedMap.svg(Plate.of(new Bed(220, 220, 5), specimens, 0.2));
            assertThat(map)
                    .contains(">A07</text>", ">K518</text>", ">front edge of the bed</text>");
            assertThat(map).doesNotContain("NaN", "Infinity");
        }
        byte[] pdf = SHEETS.print(PIECES, Optional.of(new Bed(220, 220, 5)));
        assertThat(text(pdf)).contains("The bed from above");
        assertThat(pages(pdf)).isEqualTo(2);
        assertThatThrownBy(() -> SHEETS.print(PIECES, Optional.of(new Bed(180, 60, 5))))
                .hasMessageContaining("holds 2 of the 4 specimens");
        assertThatThrownBy(() ->
                        SHEETS.print(pieces("specimen", "A1"), Optional.of(new Bed(180, 60, 5))))
                .hasMessage("specimen 'A1' has no known shape, so no place on a bed");
    }

    @Test
    void setsLabelsInTheSizesThatAreSold() throws IOException {
        for (LabelSheet sheet : List.of(
                LabelSheet.of(Paper.A4, 3, 8),
                LabelSheet.of(Paper.A4, 5, 13),
                LabelSheet.of(Paper.LETTER, 3, 10),
                LabelSheet.of(Paper.A4, 4, 5),
                LabelSheet.strip(40, 12))) {
            byte[] pdf = Labels.pdf(PIECES, sheet, 1);
            assertThat(pages(pdf)).isEqualTo(sheet.perPage() == 1 ? 6 : 1);
            assertThat(Scanned.codes(pdf, 220))
                    .containsExactly("C11", "F30", "A07", "K518", "H42", "M77");
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getPage(0).getMediaBox().getWidth() * 25.4 / 72)
                        .isCloseTo(
                                (float) sheet.pageWidth(),
                                org.assertj.core.data.Offset.offset(0.1));
            }
        }
    }

    @Test
    void squaresSayAnAddressWhereTheLabelHasRoomForIt() throws IOException {
        String address = "http://192.168.178.120:8477/studies/"
                + "0f8e6bb0-5d0c-4a5e-9a3e-0d6d3b1f2c11/rig?specimen=";
        byte[] large = Labels.pdf(PIECES, LabelSheet.of(Paper.A4, 3, 8), 1, address::concat);
        assertThat(Scanned.codes(large, 220))
                .hasSize(6)
                .contains(address + "C11", address + "K518");
        assertThat(text(large)).contains("C11", "K518").doesNotContain("192.168");
        byte[] small = Labels.pdf(PIECES, LabelSheet.strip(40, 12), 1, address::concat);
        assertThat(Scanned.codes(small, 220))
                .containsExactly("C11", "F30", "A07", "K518", "H42", "M77");
    }

    @Test
    void beginsWhereALabelIsLeftAndGoesOnToTheNextPage() throws IOException {
        byte[] pdf = Labels.pdf(PIECES, LabelSheet.of(Paper.A4, 2, 2), 3);
        assertThat(pages(pdf)).isEqualTo(2);
        assertThatThrownBy(() -> Labels.pdf(PIECES, LabelSheet.of(Paper.A4, 2, 2), 5))
                .hasMessage("the first label lies on a place from 1 to 4, not on 5");
    }

    /** By hand: 3 × 63.5 + 2 × 2.5 leaves 14.5 of 210; 7 × 38.1 leaves 30.3 of 297. */
    @Test
    void placesLabelsAsByHand() {
        LabelSheet sheet = LabelSheet.of(Paper.A4, 3, 7);
        assertThat(sheet.left(0)).isEqualTo(7.25);
        assertThat(sheet.left(2)).isEqualTo(7.25 + 2 * 66);
        assertThat(sheet.top(3)).isCloseTo(15.15 + 38.1, org.assertj.core.data.Offset.offset(1e-9));
    }

    @Test
    void refusesInOneSentence() {
        refuses("there is no column 'specimen' among code", "code", "A1");
        refuses("line 3, column specimen: 'A1' stands there twice", "specimen,x", "A1,1", "A1,2");
        refuses("the specimen has no code", "specimen,x", ",1");
        refuses("'soon' is no place in an order", "specimen,order", "A1,soon");
        assertThatThrownBy(() -> LabelSheet.of(Paper.A4, 3, 8, 80, 37, 0, 0))
                .isInstanceOf(InputException.class)
                .hasMessage("3 × 8 labels take 240 by 296 mm, and the page has 210 by 297 mm");
        assertThatThrownBy(() -> LabelSheet.strip(40, 6)).hasMessageContaining("can't be read");
        assertThatThrownBy(() -> LabelSheet.of(Paper.A4, 0, 8)).hasMessageContaining("1 to 20");
        assertThatThrownBy(() -> pieces("specimen,test", "A1,impact").testedBy("tensile"))
                .hasMessage("no specimen is for the tensile test, but for impact");
    }

    private static void refuses(String says, String... lines) {
        assertThatThrownBy(() -> pieces(lines))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(says);
    }

    private static Pieces pieces(String... lines) {
        byte[] bytes = (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
        return Pieces.of(Table.read(Source.of("made.csv", bytes), ReadAs.found()), STUDY);
    }

    private static Description method(String name) {
        return Methods.builtIn().named(name).orElseThrow().description();
    }

    private static String joined(String text) {
        return text.replaceAll("\\s+", "");
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static int pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    /** Reads all squares, page by page, from left to right and from the top down. */
    private static List<String> codes(byte[] pdf) throws IOException {
        return Scanned.codes(pdf, 150);
    }
}
