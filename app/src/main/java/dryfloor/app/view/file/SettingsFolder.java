package dryfloor.app.view.file;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * Where the program keeps what it remembers. {@code DRYFLOOR_SETTINGS} names another folder; else
 * it is where the system wants such things: {@code $XDG_CONFIG_HOME/dryfloor} or {@code
 * ~/.config/dryfloor}, {@code %APPDATA%\Dryfloor}, {@code ~/Library/Application Support/Dryfloor}.
 */
public final class SettingsFolder {

  private SettingsFolder() {}

  /**
   * The folder.
   *
   * @param environment variables of the user
   * @param system name of the operating system
   * @param home folder of the user
   */
  public static Path of(Map<String, String> environment, String system, Path home) {
    return variable(environment, "DRYFLOOR_SETTINGS")
        .orElseGet(() -> usual(environment, system, home));
  }

  private static Path usual(Map<String, String> environment, String system, Path home) {
    if (system.startsWith("Windows")) {
      return variable(environment, "APPDATA").orElse(home).resolve("Dryfloor");
    }
    if (system.startsWith("Mac")) {
      return home.resolve("Library").resolve("Application Support").resolve("Dryfloor");
    }
    return variable(environment, "XDG_CONFIG_HOME")
        .filter(Path::isAbsolute)
        .orElse(home.resolve(".config"))
        .resolve("dryfloor");
  }

  private static Optional<Path> variable(Map<String, String> environment, String name) {
    return Optional.ofNullable(environment.get(name))
        .filter(value -> !value.isBlank())
        .map(Path::of);
  }
}
