package dryfloor.app.view;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Scene;
import javafx.scene.input.TransferMode;

/** Files that are dragged into a window. */
final class FileDrop {

  private FileDrop() {}

  static void onto(Scene scene, Consumer<List<Path>> received) {
    scene.setOnDragOver(
        event -> {
          if (event.getDragboard().hasFiles()) {
            event.acceptTransferModes(TransferMode.COPY);
            event.consume();
          }
        });
    scene.setOnDragDropped(
        event -> {
          if (event.getDragboard().hasFiles()) {
            List<Path> files = event.getDragboard().getFiles().stream().map(File::toPath).toList();
            received.accept(files);
            event.setDropCompleted(true);
            event.consume();
          }
        });
  }
}
