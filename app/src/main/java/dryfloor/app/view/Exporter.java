package dryfloor.app.view;

import dryfloor.app.drawing.Elevation;
import dryfloor.app.drawing.Plan;
import dryfloor.app.drawing.SvgWriter;
import dryfloor.app.report.CsvValues;
import dryfloor.app.report.MovingScene;
import dryfloor.app.view.export.PixelPicture;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.image.WritableImage;

/** Writes what a window shows, at the moment that it shows, to files of other kinds. */
final class Exporter {

  private static final String NOTICE = "export";
  private static final String NORMAL = "normal";

  /** Spreadsheets know by this that a file is UTF-8. */
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private final Program program;
  private final DrawingWindow window;

  Exporter(Program program, DrawingWindow window) {
    this.program = program;
    this.window = window;
  }

  void svg() {
    export(
        FileQuestions.Kind.SVG,
        shown -> {
          Elevation elevation = elevation(shown);
          return () -> SvgWriter.write(elevation).getBytes(StandardCharsets.UTF_8);
        });
  }

  void png() {
    export(
        FileQuestions.Kind.PNG,
        shown -> {
          WritableImage image = PixelPicture.paint(elevation(shown));
          return () -> PixelPicture.png(image);
        });
  }

  void csv() {
    export(
        FileQuestions.Kind.CSV,
        shown ->
            () ->
                (BYTE_ORDER_MARK
                        + CsvValues.of(shown.wording(), shown.end().subtitle(), shown.outcome()))
                    .getBytes(StandardCharsets.UTF_8));
  }

  private Elevation elevation(MovingScene shown) {
    Plan plan = Plan.of(shown.wording().installation());
    return Elevation.of(plan, shown.at(window.work().moment().get()));
  }

  /**
   * Writes a file.
   *
   * @param content takes what it needs from the screen at once and makes the bytes later, beside it
   */
  private void export(FileQuestions.Kind kind, Function<MovingScene, Supplier<byte[]>> content) {
    Optional<Showing> shown = window.main().showing();
    if (shown.isEmpty()) {
      window.notices().tell(NOTICE, Words.of("export.nothingYet"));
      return;
    }
    program
        .questions()
        .toWrite(
            window.stage(),
            kind,
            SuggestedName.of(window, id(shown.get()), kind),
            window.file().path())
        .ifPresent(path -> write(path, content.apply(shown.get().film())));
  }

  private String id(Showing shown) {
    return window.work().chosen().get().filter(id -> shown.silence().isEmpty()).orElse(NORMAL);
  }

  private void write(Path path, Supplier<byte[]> content) {
    if (window.file().path().filter(path.toAbsolutePath().normalize()::equals).isPresent()) {
      window.notices().tell(NOTICE, Words.of("export.drawingItself", path));
      return;
    }
    program
        .files()
        .run(() -> written(path, content), sentence -> window.notices().tell(NOTICE, sentence));
  }

  private static String written(Path path, Supplier<byte[]> content) {
    try {
      Files.write(path, content.get());
      return Words.of("export.written", path);
    } catch (IOException e) {
      return Words.of("export.failed", path, e);
    }
  }
}
