package dryfloor.app.command;

import dryfloor.app.sample.SampleInstallation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Drawings as files, for commands to read. */
final class DrawingFiles {

  /** A drawing without a drop of water. */
  static final String ONE_DRY_TRAY =
      """
      {
        "dryfloor": 1,
        "name": "One dry tray",
        "water": { "salinity": "35 g/kg" },
        "storeys": [{ "id": "ground", "elevation": "0 m", "height": "3 m" }],
        "floors": [
          { "id": "hall", "storey": "ground", "area": "5 m2", "sill": "20 mm", "sillLength": "1 m" }
        ],
        "vessels": [
          {
            "id": "tray",
            "role": "basin",
            "shape": { "box": { "length": "1 m", "width": "1 m", "height": "80 mm" } },
            "standsIn": "hall"
          }
        ]
      }
      """;

  private DrawingFiles() {}

  static Path sound(Path folder, String name) throws IOException {
    return Files.writeString(folder.resolve(name), SampleInstallation.text());
  }

  static Path wrong(Path folder, String name) throws IOException {
    String text = SampleInstallation.text().replace("\"level\": \"262 mm\"", "\"level\": \"262\"");
    return Files.writeString(folder.resolve(name), text);
  }
}
