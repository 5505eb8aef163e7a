package dryfloor.model.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Gets the text of a file, or says why it can't be had. */
final class FileText {

  /** Forty components take about eight kilobytes, so no installation comes near this. */
  static final long LARGEST_FILE = 16L * 1024 * 1024;

  private FileText() {}

  static Optional<String> read(Path file, Problems problems) {
    try {
      if (!Files.isRegularFile(file)) {
        problems.add(
            FilePlace.WHOLE_FILE,
            Files.exists(file) ? file + " is no ordinary file" : "there is no file " + file,
            "name an installation file that exists; pipes and devices are not read");
        return Optional.empty();
      }
      long size = Files.size(file);
      if (size > LARGEST_FILE) {
        problems.add(
            FilePlace.WHOLE_FILE,
            "the file has " + size / (1024 * 1024) + " MB",
            "an installation file has at most 16 MB; this is some other file");
        return Optional.empty();
      }
      return decode(Files.readAllBytes(file), problems);
    } catch (IOException e) {
      problems.add(
          FilePlace.WHOLE_FILE,
          "the file " + file + " can't be read: " + e.getMessage(),
          "check that it exists and that you may read it");
      return Optional.empty();
    }
  }

  static Optional<String> decode(byte[] bytes, Problems problems) {
    int start = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
    ByteBuffer input = ByteBuffer.wrap(bytes, start, bytes.length - start);
    CharBuffer text = CharBuffer.allocate(bytes.length);
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    CoderResult result = decoder.decode(input, text, true);
    text.flip();
    if (result.isError()) {
      problems.add(
          FilePlace.inText(text.toString(), text.length()),
          "the file is not UTF-8 text",
          "save it as UTF-8 (in most editors under \"save as\" or \"encoding\")");
      return Optional.empty();
    }
    return Optional.of(text.toString());
  }

  private static boolean startsWith(byte[] bytes, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (bytes.length <= i || (bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }
}
