package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeFileTest {

  @TempDir private Path folder = Path.of("");

  @Test
  void whatADeadProgramLeftIsClearedAwayByTheNextSaveOfThatFile() throws IOException {
    Path file = Files.writeString(folder.resolve("shop.json"), "old");
    Path left = left("shop.json." + UUID.randomUUID() + ".new", Duration.ofHours(2));
    Path beingSaved = left("shop.json." + UUID.randomUUID() + ".new", Duration.ofMinutes(1));
    Path another = left("other.json." + UUID.randomUUID() + ".new", Duration.ofHours(2));
    Path own = left("shop.json.new", Duration.ofHours(2));

    SafeFile.replace(file, "new");

    assertThat(file).hasContent("new");
    assertThat(folder.resolve("shop.json.bak")).hasContent("old");
    assertThat(left).doesNotExist();
    assertThat(beingSaved).exists();
    assertThat(another).exists();
    assertThat(own).exists();
  }

  private Path left(String name, Duration ago) throws IOException {
    Path file = Files.writeString(folder.resolve(name), "half");
    return Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(ago)));
  }
}
