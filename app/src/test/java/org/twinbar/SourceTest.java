package org.twinbar;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Rules of style that need the sources' syntax rather than their lines. */
class SourceTest {

    private static final int LONGEST_METHOD = 70;

    /** Conversions whose digits or decimal mark follow the locale; the others print the same. */
    private static final Pattern NUMBERS_IN_FORMAT =
            Pattern.compile("%(\\d+\\$)?[-#+ 0,(]*\\d*(\\.\\d+)?[doxXeEfgGaAtT]");

    private static final List<String> LONG_METHODS = new ArrayList<>();
    private static final List<String> LOCAL_NUMBERS = new ArrayList<>();
    private static int methods;

    @BeforeAll
    static void readTheSources() throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, files, null, null, null, files.getJavaFileObjectsFromPaths(sources()));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree unit : task.parse()) {
                unit.accept(new Reader(unit, positions), null);
            }
        }
    }

    @Test
    void findsTheMethods() {
        assertThat(methods).isGreaterThan(10);
    }

    @Test
    void methodsAreShort() {
        assertThat(LONG_METHODS).as("methods over %d lines", LONGEST_METHOD).isEmpty();
    }

    @Test
    void numbersAreNotFormattedForTheMachinesLocale() {
        assertThat(LOCAL_NUMBERS)
                .as("numbers formatted without a locale print otherwise on another machine")
                .isEmpty();
    }

    private static List<Path> sources() throws IOException {
        Path root =
                Path.of(System.getProperty("basedir", "app")).toAbsolutePath().getParent();
        List<Path> found = new ArrayList<>();
        for (String module : List.of("core", "app")) {
            try (Stream<Path> files = Files.walk(root.resolve(module).resolve("src/main"))) {
                files.filter(file -> file.toString().endsWith(".java")).forEach(found::add);
            }
        }
        return found;
    }

    private static final class Reader extends TreeScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final SourcePositions positions;

        private Reader(CompilationUnitTree unit, SourcePositions positions) {
            this.unit = unit;
            this.positions = positions;
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            methods++;
            if (line(positions.getEndPosition(unit, method)) - firstLine(method)
                    >= LONGEST_METHOD) {
                LONG_METHODS.add(place(method) + " " + method.getName());
            }
            return super.visitMethod(method, nothing);
        }

        /**
         * Where the body begins, or the head where there is none: Javadoc and annotations don't
         * count.
         */
        private long firstLine(MethodTree method) {
            Tree from = method.getBody() == null ? method : method.getBody();
            return line(positions.getStartPosition(unit, from));
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
            ExpressionTree format = null;
            if (call.getMethodSelect() instanceof MemberSelectTree member) {
                String name = member.getIdentifier().toString();
                if (name.equals("formatted")) {
                    format = member.getExpression();
                } else if (member.toString().equals("String.format")) {
                    format = call.getArguments().get(0);
                }
            }
            if (format instanceof LiteralTree text
                    && NUMBERS_IN_FORMAT
                            .matcher(String.valueOf(text.getValue()).replace("%%", ""))
                            .find()) {
                LOCAL_NUMBERS.add(place(call) + " " + text);
            }
            return super.visitMethodInvocation(call, nothing);
        }

        private String place(Tree tree) {
            return Path.of(unit.getSourceFile().toUri()).getFileName() + ":"
                    + line(positions.getStartPosition(unit, tree));
        }

        private long line(long position) {
            return unit.getLineMap().getLineNumber(position);
        }
    }
}
