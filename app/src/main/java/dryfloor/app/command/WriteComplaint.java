package dryfloor.app.command;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;

/** Why a file could not be written, in words. */
final class WriteComplaint {

  private WriteComplaint() {}

  static String of(IOException failure) {
    return switch (failure) {
      case NoSuchFileException missing -> "its folder does not exist";
      case AccessDeniedException denied -> "you may not write there";
      case IOException other -> String.valueOf(other.getMessage());
    };
  }
}
