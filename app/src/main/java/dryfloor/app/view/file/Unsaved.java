package dryfloor.app.view.file;

import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A drawing with changes that its file does not hold, as a journal keeps it.
 *
 * @param path of its file; none if it was never saved
 * @param stamp of the file when it was last read or written
 * @param text the drawing as the text of a file
 */
public record Unsaved(Optional<Path> path, Stamp stamp, String text) {

  private static final String HEAD = "dryfloor journal 1";
  private static final int HEAD_LINES = 3;

  /** The drawing; nothing where it has mistakes that no file may have. */
  public Optional<Installation> drawing() {
    return switch (InstallationFile.readText(text)) {
      case Reading.Read read -> Optional.of(read.installation());
      case Reading.Rejected rejected -> Optional.empty();
    };
  }

  /** The file that it belongs to, with nothing said about what that holds. */
  public DrawingFile file() {
    Optional<Installation> saved =
        path.flatMap(
            file ->
                Opening.of(file) instanceof Opening.Opened opened
                    ? Optional.of(opened.drawing())
                    : Optional.empty());
    return new DrawingFile(path, saved, stamp, WrittenUnits.of(text));
  }

  String written() {
    String place =
        path.map(file -> URLEncoder.encode(file.toString(), StandardCharsets.UTF_8)).orElse("");
    return String.join("\n", HEAD, place, stamp.digest(), text);
  }

  static Optional<Unsaved> read(String written) {
    List<String> lines = List.of(written.split("\n", HEAD_LINES + 1));
    if (lines.size() <= HEAD_LINES || !lines.getFirst().equals(HEAD)) {
      return Optional.empty();
    }
    try {
      String place = URLDecoder.decode(lines.get(1), StandardCharsets.UTF_8);
      return Optional.of(
          new Unsaved(
              place.isEmpty() ? Optional.empty() : Optional.of(Path.of(place)),
              new Stamp(lines.get(2)),
              lines.get(HEAD_LINES)));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }
}
