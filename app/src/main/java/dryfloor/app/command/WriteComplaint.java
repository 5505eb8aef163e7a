package dryfloor.app.command;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** Why a file could not be written, in words. */
final class WriteComplaint {

  private WriteComplaint() {}

  /**
   * Refuses what is no name for a file.
   *
   * @throws FileSystemException if the name is empty or that of a folder
   */
  static void refuseFolder(Path target) throws FileSystemException {
    if (target.toString().isEmpty()) {
      throw new FileSystemException("", null, "its name is empty");
    }
    if (Files.isDirectory(target)) {
      throw new FileSystemException(target.toString(), null, "it is a folder; name a file in it");
    }
  }

  static String of(IOException failure) {
    return switch (failure) {
      case NoSuchFileException missing -> "its folder does not exist";
      case AccessDeniedException denied -> "you may not write there";
      case FileSystemException other ->
          Optional.ofNullable(other.getReason())
              .orElseGet(() -> String.valueOf(other.getMessage()));
      case IOException other -> String.valueOf(other.getMessage());
    };
  }
}
