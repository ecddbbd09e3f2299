package org.twinbar.method;

import java.util.List;
import java.util.Optional;

/**
 * The simulated specimens of one method: a class beside the method's tests, named as the method's
 * class with {@code Sweeps} behind it.
 */
public interface Sweeps {

    List<Sweep> sweeps();

    /** Of what can only be bounded. */
    default List<BoundSweep> bounds() {
        return List.of();
    }

    /** The sweeps of a method; none where nobody wrote any. */
    static List<Sweep> of(TestMethod method) {
        return written(method).map(Sweeps::sweeps).orElse(List.of());
    }

    /** The sweeps of what a method can only bound; none where nobody wrote any. */
    static List<BoundSweep> boundsOf(TestMethod method) {
        return written(method).map(Sweeps::bounds).orElse(List.of());
    }

    private static Optional<Sweeps> written(TestMethod method) {
        String name = method.getClass().getName() + "Sweeps";
        try {
            return Optional.of(
                    (Sweeps) Class.forName(name).getDeclaredConstructor().newInstance());
        } catch (ClassNotFoundException e) {
            return Optional.empty();
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(name + " cannot be made", e);
        }
    }
}
