package dryfloor.app.view.file;

import dryfloor.model.unit.Units;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The settings on the disk, {@code settings.json}. What can't be read there is as at a first start:
 * nobody should have to mend a file that the program wrote for itself.
 */
public final class SettingsFile {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final Path file;

  /** Settings in this folder, which is made when needed. */
  public SettingsFile(Path folder) {
    file = folder.resolve("settings.json");
  }

  /** What is remembered. */
  public Settings read() {
    try {
      JsonNode root = JSON.readTree(Files.readString(file, StandardCharsets.UTF_8));
      return new Settings(
          recent(root.path("recentFiles")),
          window(root.path("window")),
          appearance(root.path("appearance")),
          ScoresNode.read(root.path("lessons")));
    } catch (IOException | JacksonException e) {
      return Settings.FIRST;
    }
  }

  /** Remembers. */
  public void write(Settings settings) throws IOException {
    ObjectNode root = JSON.createObjectNode();
    ArrayNode recent = root.putArray("recentFiles");
    settings.recent().paths().forEach(path -> recent.add(path.toString()));
    settings.window().ifPresent(window -> write(root.putObject("window"), window));
    settings.appearance().ifPresent(look -> write(root.putObject("appearance"), look));
    ScoresNode.write(root.putArray("lessons"), settings.scores());
    Files.createDirectories(file.toAbsolutePath().getParent());
    AtomicText.write(file, JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n");
  }

  private static void write(ObjectNode node, WindowState window) {
    node.put("x", window.x()).put("y", window.y());
    node.put("width", window.width()).put("height", window.height());
    node.put("maximized", window.maximized());
    ArrayNode dividers = node.putArray("dividers");
    window.dividers().forEach(dividers::add);
  }

  private static void write(ObjectNode node, Appearance appearance) {
    node.put("dark", appearance.dark());
    node.put("units", appearance.units().name().toLowerCase(Locale.ROOT));
    node.put("letters", appearance.letters());
    appearance.still().ifPresent(still -> node.put("still", still));
  }

  private static Optional<Appearance> appearance(JsonNode node) {
    double letters = node.path("letters").asDouble(Double.NaN);
    String written = node.path("units").asString("");
    return Arrays.stream(Units.values())
        .filter(units -> units.name().toLowerCase(Locale.ROOT).equals(written))
        .filter(units -> Double.isFinite(letters))
        .map(
            units ->
                new Appearance(
                    node.path("dark").asBoolean(false), units, letters, chosen(node.path("still"))))
        .findFirst();
  }

  private static Optional<Boolean> chosen(JsonNode node) {
    return node.isBoolean() ? Optional.of(node.booleanValue()) : Optional.empty();
  }

  private static RecentFiles recent(JsonNode node) {
    List<Path> paths = new ArrayList<>();
    for (JsonNode path : node) {
      try {
        paths.add(Path.of(path.asString()));
      } catch (InvalidPathException otherSystem) {
        // A folder of settings carried over from a system that names files differently.
      }
    }
    return new RecentFiles(paths);
  }

  private static Optional<WindowState> window(JsonNode node) {
    List<Double> dividers = new ArrayList<>();
    node.path("dividers").forEach(share -> dividers.add(share.asDouble(-1)));
    WindowState window =
        new WindowState(
            node.path("x").asDouble(Double.NaN),
            node.path("y").asDouble(Double.NaN),
            node.path("width").asDouble(0),
            node.path("height").asDouble(0),
            node.path("maximized").asBoolean(false),
            dividers);
    return window.isSensible() ? Optional.of(window) : Optional.empty();
  }
}
