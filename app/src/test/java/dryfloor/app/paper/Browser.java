package dryfloor.app.paper;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A real browser without a window, spoken to over its debugging protocol. */
final class Browser implements AutoCloseable {

  private static final long PATIENCE_SECONDS = 60;
  private static final JsonMapper JSON = JsonMapper.shared();

  private final Process process;
  private final WebSocket socket;
  private final BlockingQueue<JsonNode> messages;
  private final List<JsonNode> events = new ArrayList<>();
  private String session = "";
  private int number;

  private Browser(Process process, WebSocket socket, BlockingQueue<JsonNode> messages) {
    this.process = process;
    this.socket = socket;
    this.messages = messages;
  }

  /** Where it is installed, if it is. */
  static Optional<Path> find() {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return Stream.of(path.split(java.io.File.pathSeparator, -1))
        .flatMap(folder -> Stream.of("chromium", "chromium-browser").map(Path.of(folder)::resolve))
        .filter(Files::isExecutable)
        .findFirst();
  }

  static Browser start(Path program, Path profile) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                program.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-background-networking",
                "--remote-debugging-port=0",
                "--user-data-dir=" + profile,
                "about:blank")
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    BlockingQueue<JsonNode> messages = new LinkedBlockingQueue<>();
    WebSocket socket =
        HttpClient.newHttpClient()
            .newWebSocketBuilder()
            .buildAsync(URI.create(address(process)), new Ear(messages))
            .join();
    Browser browser = new Browser(process, socket, messages);
    String target =
        browser.ask("Target.createTarget", Map.of("url", "about:blank")).get("targetId").asString();
    browser.session =
        browser
            .ask("Target.attachToTarget", Map.of("targetId", target, "flatten", true))
            .get("sessionId")
            .asString();
    for (String domain : List.of("Page", "Network", "Runtime", "Log")) {
      browser.ask(domain + ".enable", Map.of());
    }
    return browser;
  }

  /** It says where it listens among other things, which are read on so that it is never held up. */
  private static String address(Process process) throws IOException {
    BufferedReader lines =
        new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8));
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      int at = line.indexOf("ws://");
      if (at >= 0) {
        Thread.ofVirtual().start(() -> lines.lines().forEach(other -> {}));
        return line.substring(at).strip();
      }
    }
    throw new IOException("the browser ended before it listened");
  }

  /** Asks for something and waits for the answer. */
  JsonNode ask(String method, Map<String, Object> parameters) throws InterruptedException {
    number++;
    Map<String, Object> message =
        session.isEmpty()
            ? Map.of("id", number, "method", method, "params", parameters)
            : Map.of("id", number, "method", method, "params", parameters, "sessionId", session);
    socket.sendText(JSON.writeValueAsString(message), true).join();
    while (true) {
      JsonNode answer = next();
      if (answer.has("id") && answer.get("id").asInt() == number) {
        if (answer.has("error")) {
          throw new AssertionError(method + ": " + answer.get("error"));
        }
        return answer.get("result");
      }
      events.add(answer);
    }
  }

  /** Opens a page, so many points wide, and waits until it stands. */
  void open(Path page, int width) throws InterruptedException {
    ask(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", 800, "deviceScaleFactor", 1, "mobile", false));
    events.clear();
    ask("Page.navigate", Map.of("url", page.toUri().toString()));
    while (events.stream().noneMatch(event -> isNamed(event, "Page.loadEventFired"))) {
      events.add(next());
    }
  }

  /** What an expression comes to on the page. */
  JsonNode value(String expression) throws InterruptedException {
    return ask("Runtime.evaluate", Map.of("expression", expression, "returnByValue", true))
        .get("result")
        .get("value");
  }

  /** What has happened since the page was opened. */
  List<JsonNode> events(String name) {
    return events.stream().filter(event -> isNamed(event, name)).toList();
  }

  private static boolean isNamed(JsonNode event, String name) {
    return event.has("method") && event.get("method").asString().equals(name);
  }

  private JsonNode next() throws InterruptedException {
    JsonNode message = messages.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
    if (message == null) {
      throw new AssertionError("the browser is silent");
    }
    return message;
  }

  @Override
  public void close() {
    socket.abort();
    process.destroy();
    process.onExit().completeOnTimeout(process, PATIENCE_SECONDS, TimeUnit.SECONDS).join();
    if (process.isAlive()) {
      process.destroyForcibly();
    }
  }

  /** Puts pieces together to messages. */
  private static final class Ear implements WebSocket.Listener {

    private final BlockingQueue<JsonNode> messages;
    private final StringBuilder text = new StringBuilder();

    Ear(BlockingQueue<JsonNode> messages) {
      this.messages = messages;
    }

    @Override
    public @Nullable CompletionStage<?> onText(
        WebSocket webSocket, CharSequence data, boolean last) {
      text.append(data);
      if (last) {
        messages.add(JSON.readTree(text.toString()));
        text.setLength(0);
      }
      webSocket.request(1);
      return null;
    }
  }
}
