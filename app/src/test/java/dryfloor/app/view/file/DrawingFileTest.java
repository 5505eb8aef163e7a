package dryfloor.app.view.file;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.model.Installation;
import dryfloor.model.file.InstallationWriter;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Opening and saving: nothing is written over unseen, and what failed left the old file alone. */
class DrawingFileTest {

  @TempDir private Path folder = Path.of("");

  private final Installation first = SampleDrawings.named("First");
  private final Installation second = SampleDrawings.named("Second");

  @Test
  void whatIsSavedIsOpenedAgain() {
    Path path = folder.resolve("a.json");

    Saving saving = DrawingFile.untitled(first).saveAs(first, path);

    assertThat(saving).isInstanceOf(Saving.Saved.class);
    Opening.Opened opened = SampleDrawings.opened(Opening.of(path));
    assertThat(opened.drawing().name()).isEqualTo("First");
    assertThat(opened.file().hasUnsaved(opened.drawing())).isFalse();
    assertThat(opened.file().hasUnsaved(second)).isTrue();
  }

  @Test
  void aFileThatOthersHaveWrittenIsNotWrittenOver() throws IOException {
    Path path = folder.resolve("a.json");
    Saving.Saved mine = saved(DrawingFile.untitled(first).saveAs(first, path));
    DrawingFile.untitled(second).saveAs(second, path);
    String theirs = Files.readString(path);

    assertThat(mine.file().isChangedByOthers()).isTrue();
    assertThat(mine.file().save(first)).isEqualTo(new Saving.ChangedByOthers(path));
    assertThat(Files.readString(path)).isEqualTo(theirs);
  }

  @Test
  void savingOverItAfterAllKeepsTheirTextBesideIt() throws IOException {
    Path path = folder.resolve("a.json");
    Saving.Saved mine = saved(DrawingFile.untitled(first).saveAs(first, path));
    DrawingFile.untitled(second).saveAs(second, path);

    saved(mine.file().saveAs(first, path));

    assertThat(Files.readString(path)).contains("First");
    assertThat(Files.readString(folder.resolve("a.json.bak"))).contains("Second");
  }

  @Test
  void savingTwiceInARowIsNobodyElsesWriting() {
    Path path = folder.resolve("a.json");
    Saving.Saved once = saved(DrawingFile.untitled(first).saveAs(first, path));

    assertThat(once.file().save(second)).isInstanceOf(Saving.Saved.class);
  }

  @Test
  void aMissingFolderIsNamedAndNothingElseHappens() {
    Path path = folder.resolve("none").resolve("a.json");

    assertThat(DrawingFile.untitled(first).saveAs(first, path))
        .isEqualTo(new Saving.Failed(path, Saving.Trouble.NO_FOLDER, ""));
    assertThat(DrawingFile.untitled(first).saveAs(first, folder))
        .isEqualTo(new Saving.Failed(folder, Saving.Trouble.IS_A_FOLDER, ""));
  }

  @Test
  void aFileInInchesIsSavedInInches() throws IOException {
    Path path = folder.resolve("inches.json");
    InstallationWriter.save(first, path, Units.US);

    Opening.Opened opened = SampleDrawings.opened(Opening.of(path));
    assertThat(opened.file().units()).isEqualTo(Units.US);
    saved(opened.file().save(opened.drawing()));

    assertThat(SampleDrawings.opened(Opening.of(path)).file().units()).isEqualTo(Units.US);
  }

  @Test
  void aNewerFileIsRefusedWithThePlaceAndTheRemedy() throws IOException {
    Path path = folder.resolve("newer.json");
    Files.writeString(path, "{\n  \"dryfloor\": 7\n}\n");

    assertThat(Opening.of(path))
        .isInstanceOfSatisfying(
            Opening.Refused.class,
            refused -> {
              assertThat(refused.problems().getFirst().line()).isEqualTo(2);
              assertThat(refused.problems().getFirst().remedy()).contains("newer Dryfloor");
            });
  }

  private static Saving.Saved saved(Saving saving) {
    return switch (saving) {
      case Saving.Saved saved -> saved;
      case Saving.ChangedByOthers changed -> throw new AssertionError(changed.toString());
      case Saving.Failed failed -> throw new AssertionError(failed.toString());
    };
  }
}
