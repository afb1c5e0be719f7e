package roundwright;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The real program under a tracer (strace) that notes every use of a socket. */
public final class Traced {
    /** A socket of the machine itself, by which a window reaches its screen, is no way out of it. */
    private static final List<String> WITHIN = List.of("AF_UNIX", "AF_LOCAL");

    private Traced() {}

    /** Whether there is a tracer that may be used here. */
    public static boolean possible() throws InterruptedException {
        try {
            return new ProcessBuilder("strace", "-qqq", "-o", "/dev/null", "true")
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException none) {
            return false;
        }
    }

    /** Runs the program in a machine of its own until it ends, and says which calls it made for a network. */
    public static List<String> networkCalls(Path folder, List<String> options, String... arguments)
            throws IOException, InterruptedException {
        Path trace = folder.resolve("trace.txt");
        List<String> command = new ArrayList<>(List.of("strace", "-f", "-qqq", "-o", trace.toString()));
        command.addAll(List.of("-e", "trace=%network"));
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), "roundwright.Roundwright"));
        command.addAll(List.of(arguments));
        Process program = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile())
                .start();
        int status = program.waitFor();
        if (status != 0) {
            throw new AssertionError("ended with " + status + ": " + Files.readString(folder.resolve("said.txt")));
        }
        try (Stream<String> lines = Files.lines(trace)) {
            return lines.filter(Traced::reachesOut).toList();
        }
    }

    /**
     * A connection, an address, a listening or sending of anything but the machine's own kind. (The machine under the program makes a
     * socket or two when it looks which kinds there are, and lets them go without giving them an address.)
     */
    static boolean reachesOut(String call) {
        boolean uses = call.matches(".*\\b(connect|bind|listen|accept4?|sendto|sendmsg|sendmmsg)\\(.*");
        boolean addressed = call.contains("AF_");
        return uses && (call.contains("listen(") || addressed && WITHIN.stream().noneMatch(call::contains));
    }
}
