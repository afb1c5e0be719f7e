package roundwright.sheet;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A real browser without a window, spoken to by the open protocol of its developers' tools. */
final class Browser implements AutoCloseable {
    private static final Pattern LISTENING = Pattern.compile("ws://\\S+");
    private static final Pattern SESSION = Pattern.compile("\"(?:targetId|sessionId)\":\"([^\"]+)\"");
    private static final long PATIENCE_SECONDS = 40;

    private final Process process;
    private final WebSocket socket;
    private final BlockingQueue<String> answers = new LinkedBlockingQueue<>();
    private int asked;
    private String session = "";

    private Browser(Process process, String address) {
        this.process = process;
        this.socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .connectTimeout(Duration.ofSeconds(PATIENCE_SECONDS))
                .buildAsync(URI.create(address), new Listener())
                .join();
    }

    /** The browser of this machine; empty where there is none. */
    static Optional<Path> installed() {
        return Stream.of(System.getenv("PATH").split(":"))
                .flatMap(folder -> Stream.of("chromium", "chromium-browser", "google-chrome")
                        .map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Opens a page; with or without scripts. */
    static Browser open(Path browser, Path home, Path page, boolean scripts) throws Exception {
        Process process = new ProcessBuilder(List.of(
                        browser.toString(),
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-dev-shm-usage",
                        "--no-first-run",
                        "--user-data-dir=" + home,
                        "--remote-debugging-port=0",
                        "--window-size=390,844",
                        "about:blank"))
                .redirectErrorStream(true)
                .start();
        Browser opened = new Browser(process, address(process));
        opened.session(page, scripts);
        return opened;
    }

    private static String address(Process process) throws IOException {
        BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            Matcher listening = LISTENING.matcher(line);
            if (listening.find()) {
                return listening.group();
            }
        }
        throw new IOException("the browser did not start");
    }

    private void session(Path page, boolean scripts) throws Exception {
        String target = value(ask("Target.createTarget", "\"url\":\"about:blank\""));
        session = value(ask("Target.attachToTarget", "\"flatten\":true,\"targetId\":\"" + target + "\""));
        ask("Emulation.setScriptExecutionDisabled", "\"value\":" + !scripts);
        ask("Page.navigate", "\"url\":" + json(page.toUri().toString()));
        for (int i = 0;
                i < 200 && !evaluate("document.readyState + location.protocol").contains("completefile:");
                i++) {
            Thread.sleep(50);
        }
    }

    private static String value(String answer) {
        Matcher matcher = SESSION.matcher(answer);
        if (!matcher.find()) {
            throw new IllegalStateException(answer);
        }
        return matcher.group(1);
    }

    static String json(String text) {
        return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
    }

    /** The answer of the browser to an expression, as it sends it. */
    String evaluate(String expression) throws Exception {
        return ask("Runtime.evaluate", "\"returnByValue\":true,\"expression\":" + json(expression));
    }

    /** Types a number into the field of a round, as a person does. */
    void type(String part, int round, int count) throws Exception {
        evaluate(
                "(function(){var all=document.querySelectorAll('input[data-round]');for(var i=0;i<all.length;i++){var one=all[i];"
                        + "if(one.getAttribute('data-part')===" + json(part) + "&&one.getAttribute('data-round')==='"
                        + round
                        + "'){one.value='" + count + "';one.dispatchEvent(new Event('input'));}}})()");
    }

    private String ask(String method, String parameters) throws Exception {
        int id = ++asked;
        String who = session.isEmpty() ? "" : ",\"sessionId\":\"" + session + "\"";
        socket.sendText(
                        "{\"id\":" + id + ",\"method\":\"" + method + "\",\"params\":{" + parameters + "}" + who + "}",
                        true)
                .join();
        String answer = "";
        while (!answer.startsWith("{\"id\":" + id + ",")) {
            answer = answers.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
            if (answer == null) {
                throw new IOException("the browser does not answer " + method);
            }
        }
        return answer;
    }

    @Override
    public void close() throws InterruptedException {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly().waitFor();
    }

    /** Puts the pieces of an answer together. */
    private final class Listener implements WebSocket.Listener {
        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean last) {
            text.append(data);
            if (last) {
                answers.add(text.toString());
                text.setLength(0);
            }
            from.request(1);
            return null;
        }
    }
}
