package org.twinbar.study;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.ReadAs;
import org.twinbar.exchange.Spelling;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Mark;
import org.twinbar.quantity.QuantityException;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.judged.Curve;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.CurveFile;
import org.twinbar.study.table.TypedNumber;
import org.twinbar.study.table.Upload;

/**
 * Moving marks on curves: a mark stands where a person puts it, with a reason, until they let the
 * method find it again. It enters the budget as a found one does.
 */
public final class Marking {

    private final Workspace workspace;

    Marking(Workspace workspace) {
        this.workspace = workspace;
    }

    /** A mark on the curve of a specimen of a test. */
    public record On(String method, String specimen, String mark) {}

    /**
     * Puts a mark on the row that lies nearest to a place.
     *
     * @param at the place along what runs across the curve, in its unit where none is named
     * @throws InputException where the specimen has no curve, the test no such mark, the place is
     *     none or lies off the curve, or there is no reason
     */
    public void put(Act act, StudyName study, On on, String at, String why) {
        workspace.change(act, study, draft -> put(draft, on, at, why));
    }

    /** Lets the method find a mark again. */
    public void findAgain(Act act, StudyName study, On on, String why) {
        workspace.change(act, study, draft -> {
            State state = draft.state();
            MovedMarks.Of mark = mark(draft, state, on);
            if (!state.moved().isMoved(mark)) {
                throw new InputException("the %s of %s is where the method finds it already"
                        .formatted(on.mark().replace('_', ' '), on.specimen()));
            }
            draft.say(
                    Aspect.MARK,
                    MovedMarks.foundAgain(mark),
                    Optional.of(required(why)),
                    state.moved().last(mark));
        });
    }

    private static void put(Draft draft, On on, String at, String why) {
        State state = draft.state();
        MovedMarks.Of mark = mark(draft, state, on);
        Curve curve = draft.specimen(on.method(), on.specimen())
                .curve()
                .orElseThrow(() -> new InputException(
                        "specimen '%s' has no curve to put a mark on".formatted(on.specimen())));
        double place = place(at, curve.across());
        double[] along = along(draft, on, curve);
        int row = nearest(along, place, curve.across());
        draft.say(
                Aspect.MARK,
                MovedMarks.put(
                        mark,
                        row,
                        "%s %s"
                                .formatted(along[row], curve.across().unit().symbol())
                                .strip()),
                Optional.of(required(why)),
                state.moved().last(mark));
    }

    private static MovedMarks.Of mark(Draft draft, State state, On on) {
        Description description = OwnMethods.named(draft.methods(), on.method()).description();
        List<String> names = description.marks().stream().map(Mark::name).toList();
        if (!names.contains(on.mark())) {
            throw new InputException("the %s test has no mark '%s' among %s%s"
                    .formatted(
                            on.method(),
                            on.mark(),
                            String.join(", ", names),
                            Spelling.hint(on.mark(), names)));
        }
        State.OfSpecimen specimen = draft.specimen(state, on.method(), on.specimen());
        return new MovedMarks.Of(specimen.test(), specimen.code(), on.mark());
    }

    private static String required(String why) {
        if (why.isBlank()) {
            throw new InputException("say why the mark is moved");
        }
        return why.strip();
    }

    private static double place(String at, Channel across) {
        try {
            return TypedNumber.parse(at, across.unit());
        } catch (QuantityException e) {
            throw new InputException(
                    "the place '%s' on the curve: %s".formatted(at, e.getMessage()));
        }
    }

    private static double[] along(Draft draft, On on, Curve curve) {
        List<Channel> channels =
                OwnMethods.named(draft.methods(), on.method()).description().channels();
        Map<Channel, double[]> read = CurveFile.read(
                        Upload.of(curve.file().name(), draft.bytes(curve.file())),
                        ReadAs.found(),
                        channels)
                .channels();
        double[] along = read.get(curve.across());
        if (along == null) {
            throw new IllegalStateException(curve.across().name() + " was not recorded");
        }
        return along;
    }

    private static int nearest(double[] along, double place, Channel across) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        int nearest = -1;
        for (int row = 0; row < along.length; row++) {
            if (Double.isFinite(along[row])) {
                lowest = Math.min(lowest, along[row]);
                highest = Math.max(highest, along[row]);
                boolean nearer = nearest < 0
                        || Math.abs(along[row] - place) < Math.abs(along[nearest] - place);
                nearest = nearer ? row : nearest;
            }
        }
        if (nearest < 0 || !(place >= lowest && place <= highest)) {
            throw new InputException("the place %s lies off the curve, which runs from %s to %s %s"
                    .formatted(place, lowest, highest, across.unit().symbol()));
        }
        return nearest;
    }
}
