package roundwright.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Counts lines: code that is read often comes in short files and short methods. */
class SizeTest {
    private static final Path SOURCES = Path.of("src/main/java");

    /** Methods that may be longer than forty lines, each with its reason. */
    private static final Set<String> LONG_BY_NAME = Set.of();

    private record Size(String name, int lines) {}

    private static final List<Size> FILES = new ArrayList<>();
    private static final List<Size> METHODS = new ArrayList<>();

    @BeforeAll
    static void measure() throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<Path> paths;
        try (Stream<Path> walk = Files.walk(SOURCES)) {
            paths = walk.filter(path -> path.toString().endsWith(".java") && !path.endsWith("package-info.java"))
                    .toList();
        }
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, files, null, List.of("-proc:none"), null, files.getJavaFileObjectsFromPaths(paths));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree unit : task.parse()) {
                measure(unit, positions);
            }
        }
        FILES.sort((left, right) -> Integer.compare(right.lines(), left.lines()));
        METHODS.sort((left, right) -> Integer.compare(right.lines(), left.lines()));
    }

    private static void measure(CompilationUnitTree unit, SourcePositions positions) throws IOException {
        String file = unit.getSourceFile().getName();
        LineMap lines = unit.getLineMap();
        FILES.add(new Size(file, (int)
                unit.getSourceFile().getCharContent(true).toString().lines().count()));
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitMethod(MethodTree method, Void nothing) {
                if (method.getBody() != null) {
                    long from = lines.getLineNumber(positions.getStartPosition(unit, method.getBody()));
                    long to = lines.getLineNumber(positions.getEndPosition(unit, method.getBody()));
                    METHODS.add(new Size(file + "#" + method.getName(), (int) Math.max(1, to - from - 1)));
                }
                return super.visitMethod(method, nothing);
            }
        }.scan(unit, null);
    }

    @Test
    void noFileIsOverFiveHundredLines() {
        assertEquals(
                List.of(), FILES.stream().filter(size -> size.lines() > 500).toList());
    }

    @Test
    void nineFilesOfTenAreUnderThreeHundredLinesAndHalfUnderEighty() {
        assertTrue(at(FILES, 0.10) <= 300, "the ninth of ten files has " + at(FILES, 0.10) + " lines");
        assertTrue(at(FILES, 0.50) <= 80, "the middle file has " + at(FILES, 0.50) + " lines");
    }

    @Test
    void noMethodIsOverFortyLines() {
        assertEquals(
                List.of(),
                METHODS.stream()
                        .filter(size -> size.lines() > 40)
                        .filter(size -> LONG_BY_NAME.stream().noneMatch(size.name()::endsWith))
                        .toList());
    }

    @Test
    void nineMethodsOfTenAreUnderTwentyLinesAndHalfUnderSeven() {
        assertTrue(at(METHODS, 0.10) <= 20, "the ninth of ten methods has " + at(METHODS, 0.10) + " lines");
        assertTrue(at(METHODS, 0.50) <= 6, "the middle method has " + at(METHODS, 0.50) + " lines");
    }

    private static int at(List<Size> descending, double share) {
        return descending.get((int) (descending.size() * share)).lines();
    }
}
