package org.twinbar.report.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.twinbar.report.Curves;
import org.twinbar.report.Report;
import org.twinbar.report.Sheet;
import org.twinbar.study.Still;
import org.twinbar.study.judged.JudgedStudy;

/** The kit of a judged study; the same study and palettes give the same files. */
public final class Kit {

    private final JudgedStudy study;
    private final Sheet sheet;
    private final List<Palette> palettes;
    private final List<KitFile> files = new ArrayList<>();
    private final Map<String, String> alternatives = new TreeMap<>();

    private Kit(JudgedStudy study, List<Palette> palettes) {
        this.study = study;
        this.sheet = Report.sheet(study);
        this.palettes = palettes;
    }

    /**
     * Returns the files of the kit, none of which is drawn yet.
     *
     * @param palettes the lights that pictures are made for
     */
    public static List<KitFile> of(JudgedStudy study, List<Palette> palettes) {
        return of(study, palettes, List.of());
    }

    /**
     * Returns the files of the kit, with a sheet to vote on where there are photos of several
     * groups.
     *
     * @param stills photos of specimens, one each
     */
    public static List<KitFile> of(JudgedStudy study, List<Palette> palettes, List<Still> stills) {
        Kit kit = new Kit(study, palettes);
        kit.verdicts();
        kit.tables();
        kit.curves();
        BlindSheet blind = BlindSheet.of(kit.sheet, stills, study.maker().seed());
        kit.files.addAll(blind.files(palettes));
        kit.alternatives.putAll(blind.alternatives());
        kit.words();
        return List.copyOf(kit.files);
    }

    private void verdicts() {
        int number = 0;
        for (TablePoster.Row row : TablePoster.rows(sheet)) {
            number++;
            for (Frame frame : Frame.values()) {
                picture(
                        "verdict-%s-%s".formatted(number, frame.word()),
                        VerdictPoster.of(frame, sheet, row.claim(), row.answer()));
            }
        }
    }

    private void tables() {
        List<TablePoster.Row> rows = TablePoster.rows(sheet);
        for (int from = 0; from < rows.size(); from += TablePoster.ROWS) {
            int to = Math.min(rows.size(), from + TablePoster.ROWS);
            picture(
                    "table-%s".formatted(1 + from / TablePoster.ROWS),
                    TablePoster.of(sheet, rows.subList(from, to)));
        }
    }

    private void picture(String name, Poster poster) {
        alternatives.put(name, poster.words());
        String svg = poster.svg();
        for (Palette palette : palettes) {
            String file = "%s-%s".formatted(name, palette.word());
            files.add(KitFile.text(file + ".svg", palette.resolved(svg)));
            files.add(new KitFile(
                    file + ".png",
                    () -> Bitmap.png(
                            palette.resolved(svg),
                            poster.frame().width(),
                            poster.frame().height())));
        }
    }

    private void curves() {
        int number = 0;
        for (Map.Entry<String, Curves> recorded : Report.curves(study).entrySet()) {
            number++;
            Sheet.Answer answer = sheet.answers().stream()
                    .filter(it -> it.anchor().equals(recorded.getKey()))
                    .findFirst()
                    .orElseThrow();
            MovingCurves moving = new MovingCurves(recorded.getValue(), answer, sheet);
            String name = "curves-%s".formatted(number);
            alternatives.put(name, moving.words());
            for (Palette palette : palettes) {
                files.add(new KitFile(
                        "%s-%s.gif".formatted(name, palette.word()), () -> moving.gif(palette)));
            }
        }
    }

    private void words() {
        KitWords words = new KitWords(study, sheet);
        files.add(KitFile.text("description.txt", words.description()));
        files.add(KitFile.text("table.md", words.markdown()));
        files.add(KitFile.text("table.txt", words.plain()));
        files.add(KitFile.text("shots.md", words.shots()));
        StringBuilder alternative = new StringBuilder();
        alternatives.forEach((name, said) ->
                alternative.append(name).append("\n  ").append(said).append("\n\n"));
        files.add(KitFile.text("alternative-text.txt", alternative.toString()));
    }
}
