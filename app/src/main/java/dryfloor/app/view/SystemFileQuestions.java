package dryfloor.app.view;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Asks with the system's own panel, which also asks before a file is written over. */
final class SystemFileQuestions implements FileQuestions {

  @Override
  public Optional<Path> toOpen(Window owner, Optional<Path> near) {
    FileChooser chooser = chooser(Kind.DRAWING, near);
    return Optional.ofNullable(chooser.showOpenDialog(owner)).map(File::toPath);
  }

  @Override
  public Optional<Path> toWrite(Window owner, Kind kind, String name, Optional<Path> near) {
    FileChooser chooser = chooser(kind, near);
    chooser.setInitialFileName(name);
    return Optional.ofNullable(chooser.showSaveDialog(owner)).map(File::toPath);
  }

  @Override
  public Optional<Path> toFill(Window owner, Optional<Path> near) {
    DirectoryChooser chooser = new DirectoryChooser();
    folderOf(near).ifPresent(folder -> chooser.setInitialDirectory(folder.toFile()));
    return Optional.ofNullable(chooser.showDialog(owner)).map(File::toPath);
  }

  private static Optional<Path> folderOf(Optional<Path> near) {
    return near.flatMap(file -> Optional.ofNullable(file.toAbsolutePath().getParent()))
        .filter(Files::isDirectory);
  }

  private static FileChooser chooser(Kind kind, Optional<Path> near) {
    FileChooser chooser = new FileChooser();
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter(kind.word(), "*." + kind.ending()));
    folderOf(near).ifPresent(folder -> chooser.setInitialDirectory(folder.toFile()));
    return chooser;
  }
}
