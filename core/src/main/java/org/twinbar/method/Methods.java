package org.twinbar.method;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/** The methods at hand: those that come with Twinbar, and a person's own. */
public record Methods(List<TestMethod> all) {

    public Methods {
        all = all.stream()
                .sorted(Comparator.comparing(method -> method.description().name()))
                .toList();
    }

    /** Returns the methods with a service entry. */
    public static Methods builtIn() {
        return new Methods(
                ServiceLoader.load(TestMethod.class, TestMethod.class.getClassLoader()).stream()
                        .map(ServiceLoader.Provider::get)
                        .toList());
    }

    public Methods with(List<TestMethod> more) {
        List<TestMethod> together = new ArrayList<>(all);
        together.addAll(more);
        return new Methods(together);
    }

    public Optional<TestMethod> named(String name) {
        return all.stream()
                .filter(method -> method.description().name().equals(name))
                .findFirst();
    }
}
