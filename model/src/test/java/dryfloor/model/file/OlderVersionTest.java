package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A file of an older version still opens. Version 1 being the first, the tests pretend that there
 * was once a version 1 that called the name of the installation its title, and that today's format
 * is version 2.
 */
class OlderVersionTest {

  private static final FileVersion SECOND =
      new FileVersion(2, List.of(new Upgrade(1, OlderVersionTest::titleBecomesName)));

  private static final String OLD =
      SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP)
          .replaceFirst("\"name\": \"Display in the hall", "\"title\": \"Display in the hall");

  @Test
  void aFileOfTheOlderVersionIsBroughtUp() {
    Reading reading = InstallationFile.read(OLD, SECOND, new Problems());
    assertThat(reading).isInstanceOf(Reading.Read.class);
    assertThat(((Reading.Read) reading).installation().name()).startsWith("Display in the hall");
  }

  @Test
  void aMistakeInAnOlderFileIsToldWhereItWasWritten() {
    String broken = OLD.replace("\"away\": \"72 h\"", "\"away\": \"72 kg\"");
    Reading reading = InstallationFile.read(broken, SECOND, new Problems());
    assertThat(reading).isInstanceOf(Reading.Rejected.class);
    assertThat(((Reading.Rejected) reading).problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.path()).isEqualTo("away");
              assertThat(problem.line()).isEqualTo(6);
            });
  }

  @Test
  void aFileOfTheNewestVersionIsLeftAsItIs() {
    Reading reading =
        InstallationFile.read(
            OLD.replace("\"dryfloor\": 1", "\"dryfloor\": 2"), SECOND, new Problems());
    assertThat(reading).isInstanceOf(Reading.Rejected.class);
    assertThat(((Reading.Rejected) reading).problems())
        .extracting(Problem::path)
        .containsExactly("name", "title");
  }

  @Test
  void everyOlderVersionHasItsUpgrade() {
    for (int version = 1; version < FileVersion.NEWEST.newest(); version++) {
      assertThat(FileVersion.NEWEST.upgrades()).extracting(Upgrade::from).contains(version);
    }
  }

  private static Located.Structure titleBecomesName(Located.Structure root) {
    List<Located.Member> members = new ArrayList<>();
    for (Located.Member member : root.members()) {
      members.add(
          member.name().equals("title")
              ? new Located.Member(member.place(), "name", member.value())
              : member);
    }
    return new Located.Structure(root.place(), members);
  }
}
