package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Saving never loses the old file. */
class SavingTest {

  private final Installation house =
      SampleFiles.read(SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP));

  @TempDir private Path folder;

  @Test
  void aSavedFileIsReadAgain() throws IOException {
    Path file = folder.resolve("house.json");
    InstallationWriter.save(house, file, Units.METRIC);
    assertThat(InstallationFile.read(file)).isInstanceOf(Reading.Read.class);
    assertThat(names()).containsExactly("house.json");
  }

  @Test
  void theOldFileIsKeptBesideTheNewOne() throws IOException {
    Path file = folder.resolve("house.json");
    Files.writeString(file, "what was there before");
    InstallationWriter.save(house, file, Units.METRIC);
    assertThat(folder.resolve("house.json.bak")).hasContent("what was there before");
    assertThat(names()).containsExactly("house.json", "house.json.bak");
  }

  @Test
  void whoMayReadTheFileIsNotChanged() throws IOException {
    Path file = folder.resolve("house.json");
    Files.writeString(file, "what was there before");
    Assumptions.assumeTrue(Files.getFileStore(file).supportsFileAttributeView("posix"));
    Set<PosixFilePermission> shared = PosixFilePermissions.fromString("rw-rw-r--");
    Files.setPosixFilePermissions(file, shared);
    InstallationWriter.save(house, file, Units.METRIC);
    assertThat(Files.getPosixFilePermissions(file)).isEqualTo(shared);
  }

  @Test
  void aLinkStaysALink() throws IOException {
    Path file = folder.resolve("house.json");
    Files.writeString(file, "what was there before");
    Path link = Files.createSymbolicLink(folder.resolve("current.json"), file);
    InstallationWriter.save(house, link, Units.METRIC);
    assertThat(link).isSymbolicLink();
    assertThat(InstallationFile.read(file)).isInstanceOf(Reading.Read.class);
  }

  @Test
  void theOldFileStaysWhenTheNewOneCannotTakeItsPlace() throws IOException {
    Path file = folder.resolve("house.json");
    Files.createDirectory(file);
    Files.writeString(file.resolve("inside"), "still here");
    assertThatThrownBy(() -> InstallationWriter.save(house, file, Units.METRIC))
        .isInstanceOf(IOException.class);
    assertThat(file.resolve("inside")).hasContent("still here");
  }

  @Test
  void theOldFileStaysWhenTheDrawingCannotBeWritten() throws IOException {
    Path file = folder.resolve("house.json");
    Files.writeString(file, "what was there before");
    Installation broken =
        new Installation(
            house.name(),
            house.conditions(),
            List.of(),
            house.floors(),
            house.vessels(),
            house.weirs(),
            house.junctions(),
            house.supplies(),
            house.drains(),
            house.runs(),
            house.circulationPumps(),
            house.circuits(),
            house.controls(),
            house.failureSettings());
    assertThatThrownBy(() -> InstallationWriter.save(broken, file, Units.METRIC))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(file).hasContent("what was there before");
    assertThat(names()).containsExactly("house.json");
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
