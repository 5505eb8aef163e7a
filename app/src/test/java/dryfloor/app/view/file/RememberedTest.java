package dryfloor.app.view.file;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.view.learn.Round;
import dryfloor.app.view.learn.Score;
import dryfloor.app.view.learn.Scores;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the program remembers between two starts, and where. */
class RememberedTest {

  private static final Path HOME = Path.of("/home/somebody");

  @TempDir private Path folder = Path.of("");

  @Test
  void settingsAreReadAsTheyWereWritten() throws IOException {
    SettingsFile file = new SettingsFile(folder.resolve("new"));
    WindowState window = new WindowState(10, 20, 900, 700, true, List.of(0.2, 0.7));
    Settings settings =
        new Settings(
            RecentFiles.NONE.with(folder.resolve("a.json")),
            Optional.of(window),
            Optional.of(new Appearance(true, Units.US, 17, Optional.of(true))),
            new Scores(
                Map.of(
                    "The examples",
                    new Score(Optional.of(new Round(840, 12, 12)), new Round(90, 2, 12), 3))));

    file.write(settings);

    assertThat(file.read()).isEqualTo(settings);
  }

  @Test
  void brokenSettingsAreAsAtAFirstStart() throws IOException {
    Files.writeString(folder.resolve("settings.json"), "{ \"window\": { \"x\": 1");

    assertThat(new SettingsFile(folder).read()).isEqualTo(Settings.FIRST);
  }

  @Test
  void scoresThatNobodyCanHaveEarnedAreForgotten() throws IOException {
    Files.writeString(
        folder.resolve("settings.json"),
        """
        {"lessons":[
          {"set":"more points than there are","last":{"points":201,"done":2,"of":12}},
          {"set":"","last":{"points":1,"done":1,"of":1}},
          {"set":"a best round that was not finished",
           "best":{"points":300,"done":4,"of":5},"last":{"points":5,"done":1,"of":5},"finished":7},
          {"set":"nothing answered","last":{"points":0,"done":0,"of":5}}]}
        """);

    assertThat(new SettingsFile(folder).read().scores().sets())
        .containsOnlyKeys("a best round that was not finished")
        .containsValue(new Score(Optional.empty(), new Round(5, 1, 5), 0));
  }

  @Test
  void aWindowThatNobodyCouldSeeIsForgotten() throws IOException {
    Files.writeString(
        folder.resolve("settings.json"),
        "{\"window\":{\"x\":0,\"y\":0,\"width\":0,\"height\":900,\"dividers\":[]}}");

    assertThat(new SettingsFile(folder).read().window()).isEmpty();
  }

  @Test
  void theLastOfTenRecentFilesComesFirstAndNoneTwice() {
    RecentFiles recent = RecentFiles.NONE;
    for (int i : IntStream.range(0, 12).toArray()) {
      recent = recent.with(folder.resolve(i + ".json"));
    }
    recent = recent.with(folder.resolve("5.json"));

    assertThat(recent.paths()).hasSize(RecentFiles.MOST).doesNotHaveDuplicates();
    assertThat(recent.last()).contains(folder.resolve("5.json").toAbsolutePath());
  }

  @Test
  void settingsAreWhereTheSystemWantsThem() {
    assertThat(SettingsFolder.of(Map.of(), "Linux", HOME))
        .isEqualTo(HOME.resolve(".config/dryfloor"));
    assertThat(SettingsFolder.of(Map.of("XDG_CONFIG_HOME", "/c"), "Linux", HOME))
        .isEqualTo(Path.of("/c/dryfloor"));
    assertThat(SettingsFolder.of(Map.of("XDG_CONFIG_HOME", "relative"), "Linux", HOME))
        .isEqualTo(HOME.resolve(".config/dryfloor"));
    assertThat(SettingsFolder.of(Map.of("APPDATA", "/r"), "Windows 11", HOME))
        .isEqualTo(Path.of("/r/Dryfloor"));
    assertThat(SettingsFolder.of(Map.of(), "Mac OS X", HOME))
        .isEqualTo(HOME.resolve("Library/Application Support/Dryfloor"));
    assertThat(SettingsFolder.of(Map.of("DRYFLOOR_SETTINGS", "/s"), "Linux", HOME))
        .isEqualTo(Path.of("/s"));
  }

  @Test
  void aFileOfTwoProgramsIsNoticedAndFreeAgainWhenOneLetsGo() throws IOException {
    Path file = Files.writeString(folder.resolve("a.json"), "{}");
    OpenWindows<String> one = new OpenWindows<>(folder.resolve("open"));
    OpenWindows<String> other = new OpenWindows<>(folder.resolve("open"));

    assertThat(one.shows("window", file)).isTrue();
    assertThat(one.showing(folder.resolve(".").resolve("a.json"))).contains("window");
    assertThat(other.shows("their window", file)).isFalse();
    other.shut("their window");
    one.shut("window");
    assertThat(one.showing(file)).isEmpty();
    assertThat(other.shows("their window", file)).isTrue();
    other.shut("their window");
  }
}
