package org.twinbar.method;

import java.util.List;

/**
 * The simulated specimens of one method: a class beside the method's tests, named as the method's
 * class with {@code Sweeps} behind it.
 */
public interface Sweeps {

    List<Sweep> sweeps();

    /** The sweeps of a method; none where nobody wrote any. */
    static List<Sweep> of(TestMethod method) {
        String name = method.getClass().getName() + "Sweeps";
        try {
            return ((Sweeps) Class.forName(name).getDeclaredConstructor().newInstance()).sweeps();
        } catch (ClassNotFoundException e) {
            return List.of();
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(name + " cannot be made", e);
        }
    }
}
